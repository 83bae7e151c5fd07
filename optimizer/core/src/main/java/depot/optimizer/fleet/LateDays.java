package depot.optimizer.fleet;

import depot.optimizer.model.Tightening;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.UnitFeed;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.replay.DayReplay;
import depot.optimizer.replay.DepotReplay;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** What is taken off the days of a depot whose replay found loads behind units late, or packs on the way not empty. */
final class LateDays {

    /** Share of a unit's room that stays after a late day: this less the share of its energy that was missing, within limits. */
    private static final double MOST_KEEP = 0.96;

    private static final double LEAST_KEEP = 0.85;

    /** A unit of which more than this share of its energy was missing had no room to feed a charger at all; it says so in place of what it keeps. */
    private static final double STARVED_SHARE = 0.9;

    private static final double STARVED = 0;

    /** Share of what the supply and the demand paid for leave for units that stays after each late day. */
    private static final double DEPOT_KEEP = 0.96;

    /** Share of the energy that empties packs on the way that stays after each day on which they were not empty. */
    private static final double ROAD_KEEP = 0.7;

    private LateDays() {}

    /** Whether less room for units, or for emptying packs on the way, may bring a day to be met. */
    static boolean curable(DayReplay day) {
        return !day.missingWhByCircuit().isEmpty() || !day.crewsLacking().isEmpty();
    }

    /**
     * Takes off what one more late replay asks for.
     *
     * @param tightenings of the days of all phases; changed
     * @param from place of the first day of the plan's phase in them
     */
    static void tighten(
            List<Tightening> tightenings, int from, DepotProblem problem, DepotPlan plan, DepotReplay replay) {
        Map<Integer, Double> keep = keep(problem, plan, replay);
        for (int d = 0; d < problem.days().size(); d++) {
            tightenings.set(from + d, tighter(tightenings.get(from + d), keep, lacking(d, replay)));
        }
    }

    /** Share of their room that units keep, by circuit; those that were in time on every day are left out. */
    private static Map<Integer, Double> keep(DepotProblem problem, DepotPlan plan, DepotReplay replay) {
        Map<Integer, Double> shares = new TreeMap<>();
        for (DayReplay day : replay.failedDays()) {
            for (int k = 0; k < problem.circuits().size(); k++) {
                String circuit = problem.circuits().get(k).circuit().id();
                double missing = day.missingWhByCircuit().getOrDefault(circuit, 0.0);
                if (missing > 0) {
                    double drawn = plan.days().get(day.day()).feeds().stream()
                            .filter(feed -> feed.circuit().equals(circuit))
                            .mapToDouble(UnitFeed::wattHours)
                            .sum();
                    double late = missing / Math.max(missing, drawn);
                    shares.merge(k, late > STARVED_SHARE ? STARVED : Math.max(LEAST_KEEP, MOST_KEEP - late), Math::min);
                }
            }
        }
        return shares;
    }

    /** Crews that lacked energy on a day of the plan. */
    private static Set<String> lacking(int day, DepotReplay replay) {
        return replay.failedDays().stream()
                .filter(run -> run.day() == day)
                .flatMap(run -> run.crewsLacking().stream())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static Tightening tighter(Tightening before, Map<Integer, Double> keep, Set<String> lacking) {
        Map<String, Double> roads = new TreeMap<>(before.roadShare());
        lacking.forEach(crew -> roads.merge(crew, ROAD_KEEP, (old, more) -> old * more));
        if (keep.containsValue(STARVED) && !before.wholeChargers()) {
            // Less room for the unit would not help: the model has to learn that a charger is fed whole.
            return new Tightening(before.circuitShare(), before.depotShare(), Map.copyOf(roads), true);
        }
        Map<Integer, Double> shares = new TreeMap<>(before.circuitShare());
        keep.forEach((circuit, share) -> shares.merge(circuit, Math.max(LEAST_KEEP, share), (old, more) -> old * more));
        double supply = keep.isEmpty() ? before.depotShare() : before.depotShare() * DEPOT_KEEP;
        return new Tightening(Map.copyOf(shares), supply, Map.copyOf(roads), before.wholeChargers());
    }
}
