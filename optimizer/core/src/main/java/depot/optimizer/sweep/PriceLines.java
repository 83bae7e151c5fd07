package depot.optimizer.sweep;

import depot.optimizer.dictionary.ChangeKind;
import depot.optimizer.dictionary.SweepFields.Purchases;
import depot.optimizer.sweep.change.Change;
import depot.optimizer.sweep.change.Change.Subject;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Cases that differ from others in one price only. What a plan costs is linear in such a price, and which plans there are does not depend on it; so the
 * least cost is a concave function of the price, and lies above the straight line between bounds for a lower and a higher price. Cases between others
 * are therefore taken after them: their bound may be known without a search.
 */
final class PriceLines {

    /** Prices in which a plan's cost is linear; all of them are factors. */
    private static final Set<ChangeKind> LINEAR = EnumSet.of(
            ChangeKind.ITEM_PRICE,
            ChangeKind.BUILDING_PRICE,
            ChangeKind.ALL_MONEY,
            ChangeKind.ELECTRICITY_PRICE,
            ChangeKind.DEMAND_PRICE,
            ChangeKind.PETROL_PRICE);

    /** The base plan's place. */
    static final int BASE = -1;

    private final List<SweepCase> cases;
    private final List<Integer> onLines = new ArrayList<>();
    private final Set<Subject> subjects = new LinkedHashSet<>();

    /**
     * @param cases in the order of their results
     * @param apart for each, whether its depots share nothing
     */
    PriceLines(List<SweepCase> cases, List<Boolean> apart) {
        this.cases = List.copyOf(cases);
        for (int i = 0; i < cases.size(); i++) {
            if (apart.get(i) && linear(cases.get(i))) {
                onLines.add(i);
                cases.get(i).changes().forEach(change -> subjects.add(change.subject()));
            }
        }
    }

    /** A price of nothing is left out: with it there is no telling the cheapest hour, nor whether demand is billed, so that the plans to choose from differ. */
    private static boolean linear(SweepCase each) {
        return each.purchases() == Purchases.ANEW
                && !each.changes().isEmpty()
                && each.changes().stream().map(Change::subject).distinct().count()
                        == each.changes().size()
                && each.changes().stream()
                        .allMatch(change ->
                                LINEAR.contains(change.kind()) && change.value().signum() > 0);
    }

    /**
     * A case between two others.
     *
     * @param low place of the case with the lower price, or {@link #BASE}
     * @param high the same with the higher price
     * @param share how far it is from the lower to the higher, more than 0 and less than 1
     */
    record Between(int low, int high, double share) {}

    /**
     * The cases that stand between others, in the order in which they are to be taken: each wave lies between cases of the waves before it, the base plan
     * and cases that are in none.
     *
     * @return for each wave the cases' places, each with the two that are nearest
     */
    List<Map<Integer, Between>> waves() {
        Set<Integer> finished = new TreeSet<>(onLines);
        Set<Integer> left = new LinkedHashSet<>();
        for (int i : onLines) {
            if (between(i, onLines).isPresent()) {
                left.add(i);
                finished.remove(i);
            }
        }
        List<Map<Integer, Between>> waves = new ArrayList<>();
        while (!left.isEmpty()) {
            Map<Integer, Between> wave = new LinkedHashMap<>();
            for (int i : left) {
                between(i, finished).ifPresent(found -> wave.put(i, found));
            }
            if (wave.isEmpty()) {
                break;
            }
            waves.add(wave);
            finished.addAll(wave.keySet());
            left.removeAll(wave.keySet());
        }
        return waves;
    }

    /** The two nearest on the first price on which there are two. */
    private Optional<Between> between(int place, Iterable<Integer> others) {
        for (Subject subject : subjects) {
            int low = Integer.MIN_VALUE;
            int high = Integer.MIN_VALUE;
            double at = value(place, subject);
            for (int other : withBase(others)) {
                if (other != place && differOnlyIn(subject, place, other)) {
                    double value = value(other, subject);
                    if (value < at && (low == Integer.MIN_VALUE || value > value(low, subject))) {
                        low = other;
                    } else if (value > at && (high == Integer.MIN_VALUE || value < value(high, subject))) {
                        high = other;
                    }
                }
            }
            if (low != Integer.MIN_VALUE && high != Integer.MIN_VALUE) {
                double from = value(low, subject);
                return Optional.of(new Between(low, high, (at - from) / (value(high, subject) - from)));
            }
        }
        return Optional.empty();
    }

    private static List<Integer> withBase(Iterable<Integer> others) {
        List<Integer> all = new ArrayList<>(List.of(BASE));
        others.forEach(all::add);
        return all;
    }

    private boolean differOnlyIn(Subject subject, int one, int other) {
        return subjects.stream()
                .filter(each -> !each.equals(subject))
                .allMatch(each -> value(one, each) == value(other, each));
    }

    private double value(int place, Subject subject) {
        return place == BASE
                ? 1
                : cases.get(place).changes().stream()
                        .filter(change -> change.subject().equals(subject))
                        .mapToDouble(change -> change.value().doubleValue())
                        .findFirst()
                        .orElse(1);
    }
}
