package depot.optimizer.fleet;

import depot.optimizer.fleet.DepotPricing.Question;
import depot.optimizer.problem.DepotRollout;
import depot.optimizer.problem.SharedLimit;
import depot.optimizer.solve.RolloutPlan;
import depot.optimizer.solve.SharedPrices;
import depot.optimizer.solve.UseRange;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Settles what visiting crews get: what the relaxations wanted, nothing, and then steps from the best choice to better ones. */
final class VisitSteps {

    /** Most numbers of packs on visits tried. */
    private static final int MOST_TRIED = 40;

    /** A step may leave so much more open than a whole search: it is the difference that counts. */
    private static final double LOOSER = 2;

    private final FleetStanding standing;
    private final DepotPricing pricing;
    private final VisitCounts visits;
    private final SharedPrices prices;
    private final Map<SharedLimit, Double> wanted;
    private final Set<Map<SharedLimit, Integer>> tried = new HashSet<>();
    private int count;

    VisitSteps(
            FleetStanding standing,
            DepotPricing pricing,
            List<DepotRollout> rollouts,
            List<SharedLimit> limits,
            PriceSearch.Found found) {
        this.standing = standing;
        this.pricing = pricing;
        visits = new VisitCounts(rollouts, limits);
        prices = visits.free(found.prices());
        wanted = found.wanted();
    }

    void improve() {
        if (visits.none() || standing.closed()) {
            return;
        }
        if (count == 0) {
            visits.around(wanted).forEach(packs -> settle(packs, Map.of()));
            standing.choose();
        }
        boolean better = true;
        while (better && standing.best().isPresent()) {
            double before = standing.cost();
            step(visits.countedOn(standing.best().get().columns()), before);
            better = standing.cost() < before;
            if (better) {
                standing.tell();
            }
        }
    }

    /** Tries numbers beside those of the best choice until one is cheaper. */
    private void step(Map<SharedLimit, Integer> now, double cost) {
        Iterator<Map<SharedLimit, Integer>> tries = visits.beside(now).iterator();
        while (tries.hasNext() && standing.cost() >= cost && count < MOST_TRIED && !standing.closed()) {
            Map<SharedLimit, Integer> packs = tries.next();
            if (tried.add(packs)) {
                count++;
                settle(packs, packs.equals(now) ? Map.of() : now);
                standing.takeBest();
            }
        }
    }

    /** Plans home and host of each visit with the same number of packs; where a crew counts on fewer after all, the host is planned for these. */
    private void settle(Map<SharedLimit, Integer> packs, Map<SharedLimit, Integer> before) {
        List<Map<SharedLimit, UseRange>> ranges = visits.ranges(packs, before);
        List<Question> questions = new ArrayList<>();
        for (int d = 0; d < ranges.size(); d++) {
            if (!ranges.get(d).isEmpty()) {
                questions.add(new Question(d, prices, LOOSER * standing.allowed(d), ranges.get(d)));
            }
        }
        List<Optional<ProvenDepot>> answers = pricing.possible(questions);
        List<FleetColumn> columns = new ArrayList<>();
        for (int i = 0; i < answers.size(); i++) {
            int depot = questions.get(i).depot();
            answers.get(i).ifPresent(proven -> {
                standing.pool().add(depot, proven);
                RolloutPlan plan = proven.rollout();
                columns.add(new FleetColumn(depot, plan.cost(), plan.use(), proven));
            });
        }
        Map<SharedLimit, Integer> fewer = new LinkedHashMap<>(packs);
        fewer.putAll(visits.countedOn(columns));
        if (!fewer.equals(packs) && tried.add(fewer)) {
            settle(fewer, packs);
        }
    }
}
