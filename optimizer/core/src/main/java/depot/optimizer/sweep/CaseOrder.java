package depot.optimizer.sweep;

import depot.optimizer.sweep.PriceLines.Between;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** In which order cases are taken: first those that others wait for, then all that stand by themselves, then those between others. */
final class CaseOrder {

    private final List<CaseWork> works;
    private final CaseResult base;
    private final List<Map<Integer, Between>> waves;
    private final CaseResult[] found;

    /**
     * @param works one for each case
     * @param base the base plan as a case
     */
    CaseOrder(List<SweepCase> cases, List<CaseWork> works, CaseResult base) {
        this.works = works;
        this.base = base;
        waves = new PriceLines(
                        cases,
                        works.stream().map(each -> each instanceof ApartCase).toList())
                .waves();
        found = new CaseResult[works.size()];
    }

    /** Begins what waits for nothing. */
    void begin() {
        Set<Integer> first = new LinkedHashSet<>();
        Set<Integer> waiting = new LinkedHashSet<>();
        for (Map<Integer, Between> wave : waves) {
            wave.values().forEach(between -> first.addAll(List.of(between.low(), between.high())));
            waiting.addAll(wave.keySet());
        }
        for (int i = 0; i < works.size(); i++) {
            first.add(i);
        }
        first.removeAll(waiting);
        first.remove(PriceLines.BASE);
        first.forEach(place -> works.get(place).begin());
    }

    /** Begins the others as soon as they can be, and waits for all, in the order of the cases. */
    List<CaseResult> results() {
        for (Map<Integer, Between> wave : waves) {
            wave.forEach((place, between) -> begin(place, result(between.low()), result(between.high()), between));
        }
        List<CaseResult> results = new ArrayList<>();
        for (int i = 0; i < works.size(); i++) {
            results.add(result(i));
        }
        return results;
    }

    private void begin(int place, CaseResult low, CaseResult high, Between between) {
        if (low.planned() && high.planned() && works.get(place) instanceof ApartCase work) {
            work.begin(low, high, between.share());
        } else {
            works.get(place).begin();
        }
    }

    private CaseResult result(int place) {
        if (place == PriceLines.BASE) {
            return base;
        }
        if (found[place] == null) {
            found[place] = works.get(place).result();
        }
        return found[place];
    }
}
