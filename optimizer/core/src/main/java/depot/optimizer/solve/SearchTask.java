package depot.optimizer.solve;

import depot.optimizer.mip.Limits;
import depot.optimizer.mip.MipModel;
import depot.optimizer.mip.Outcome;
import depot.optimizer.model.CapacityVars;
import depot.optimizer.model.DayTerms;
import depot.optimizer.model.ShortagePolicy;
import depot.optimizer.problem.DayKind;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.DepotRollout;
import depot.optimizer.problem.DepotRollout.RolloutDay;
import depot.optimizer.problem.SharedLimit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeMap;

/**
 * What a depot is searched for.
 *
 * @param prices of shared limits, which the depot's plans pay beside their own cost
 * @param tolerance how far cost and bound may be apart; 0: as the gap asked for allows
 * @param ranges how much of some shared limits plans may use
 * @param terms one for each day of each phase
 * @param policy that of all terms
 * @param tightened how often the days were tightened before
 */
record SearchTask(
        DepotRollout rollout,
        SharedPrices prices,
        double tolerance,
        Map<SharedLimit, UseRange> ranges,
        List<DayTerms> terms,
        ShortagePolicy policy,
        int tightened) {

    SearchTask withTerms(List<DayTerms> others, ShortagePolicy otherPolicy, int times) {
        return new SearchTask(rollout, prices, tolerance, ranges, others, otherPolicy, times);
    }

    SearchTask priced(SharedPrices others, double otherTolerance, Map<SharedLimit, UseRange> within) {
        return new SearchTask(rollout, others, otherTolerance, within, terms, policy, tightened);
    }

    /** The days of all phases, each by itself. */
    List<DayProblem> days() {
        List<DayProblem> days = new ArrayList<>();
        int firstValue = 0;
        int phase = 0;
        for (int d = 0; d < rollout.days().size(); d++) {
            for (; phase < rollout.days().get(d).phase(); phase++) {
                firstValue += purchases(rollout.phases().get(phase));
            }
            days.add(new DayProblem(rollout, d, firstValue, terms.get(d)));
        }
        return days;
    }

    private static int purchases(DepotProblem problem) {
        return CapacityVars.relaxed(new MipModel("shape"), problem, Set.of())
                .all()
                .size();
    }

    /** The master with some days in full. */
    MasterProblem master(SortedSet<Integer> full, CutPool cuts) {
        MipModel model = new MipModel(rollout.depot().id());
        MasterProblem master = new MasterProblem(model, rollout, full, cuts.all(), terms, Set.of());
        master.price(prices);
        ranges.forEach(master::restrict);
        return master;
    }

    /** Too many days in several phases for a master of all phases to be searched: each phase is looked at by itself. */
    boolean byPhase() {
        return rollout.phases().size() > 1 && rollout.manyDays();
    }

    double gap() {
        return rollout.settings().relativeGap();
    }

    /** How far cost and bound may be apart. */
    double allowed(double cost) {
        return tolerance > 0 ? tolerance : gap() * Math.abs(cost);
    }

    Limits limits(double relativeGap, long nodeLimit) {
        return new Limits(
                relativeGap,
                gap() > 0 ? tolerance * relativeGap / gap() : 0,
                nodeLimit,
                rollout.settings().timeLimitSeconds(),
                rollout.settings().seed());
    }

    /**
     * Lets an outcome pass that is not infeasible, or may be.
     *
     * @throws NeedsCannotBeMetException when shortage is refused and no purchases meet every need
     */
    void refuseInfeasible(Outcome outcome) {
        if (outcome.stop() == Outcome.Stop.INFEASIBLE && policy == ShortagePolicy.REFUSE) {
            throw new NeedsCannotBeMetException(rollout.depot().id());
        }
    }

    NoPlanException noPlan(Outcome outcome) {
        return new NoPlanException("depot " + rollout.depot().id() + ": no plan within the limits (" + outcome.stop()
                + "); raise the node or time limit");
    }

    /** In each phase the day with the most energy to carry, measured in packs at its temperature: a good first guess at what binds. */
    List<Integer> heaviestDays() {
        Map<Integer, Integer> heaviest = new TreeMap<>();
        double[] most = new double[rollout.phases().size()];
        for (int d = 0; d < rollout.days().size(); d++) {
            RolloutDay day = rollout.days().get(d);
            double load = load(rollout.kind(day));
            if (!heaviest.containsKey(day.phase()) || load > most[day.phase()]) {
                most[day.phase()] = load;
                heaviest.put(day.phase(), d);
            }
        }
        return List.copyOf(heaviest.values());
    }

    private static double load(DayKind kind) {
        return kind.trips().stream()
                .flatMap(trip -> trip.needs().stream())
                .mapToDouble(need -> need.totalWh() / kind.packCapacityFactor())
                .sum();
    }
}
