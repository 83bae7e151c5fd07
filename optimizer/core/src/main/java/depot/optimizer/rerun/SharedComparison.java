package depot.optimizer.rerun;

import depot.optimizer.plan.PlanSettings;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.QuantityPrices;
import depot.optimizer.problem.QuantityPrices.Tier;
import depot.optimizer.problem.SharedLimit;
import depot.optimizer.scenario.Depot;
import depot.optimizer.scenario.Phase;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.scenario.SolveSettings;
import depot.optimizer.sweep.FleetAssembly;
import depot.optimizer.sweep.change.Couplings;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** In what the depots of a fleet that shares limits, or has several phases, differ from what they were in an earlier run. */
final class SharedComparison {

    /** A reason beside those of {@link Difference}. */
    static final String LIMITS = "what the depots share";

    private static final String PHASES = "phases";

    private final EarlierRun earlier;
    private final Scenario scenario;
    private final FleetAssembly before;
    private final FleetAssembly after;
    private final FleetAssembly named;
    private final FleetAssembly namedBefore;
    private final boolean sameTimes;
    private final boolean sameTiers;
    private final Set<String> known;

    /**
     * @param scenario in which there is what was there when the earlier run was planned
     */
    SharedComparison(EarlierRun earlier, Scenario scenario) {
        this.earlier = earlier;
        this.scenario = scenario;
        SolveSettings asked = scenario.solve();
        // How hard the solver looks is no part of the problem; how handovers are rounded is.
        SolveSettings alike = new SolveSettings(
                asked.relativeGap(),
                asked.nodeLimit(),
                asked.timeLimitSeconds(),
                asked.threads(),
                asked.seed(),
                earlier.scenario().solve().handoverMinutes());
        before = new FleetAssembly(Couplings.unnamed(earlier.scenario().withSolve(alike)));
        after = new FleetAssembly(Couplings.unnamed(scenario));
        named = new FleetAssembly(scenario);
        namedBefore = new FleetAssembly(earlier.scenario());
        sameTimes = times(earlier.scenario()).equals(times(scenario));
        sameTiers = tiers(earlier.scenario(), namedBefore).equals(tiers(scenario, named));
        known = new LinkedHashSet<>(
                earlier.scenario().depots().stream().map(Depot::id).toList());
    }

    /** Whether the earlier plan is the answer to the very question that is asked now. */
    boolean same() {
        return known.size() == scenario.depots().size()
                && scenario.depots().stream()
                        .allMatch(depot -> known.contains(depot.id())
                                && reasons(depot.id()).isEmpty())
                && goodEnough();
    }

    /** Whether quantity prices and phases are as they were. */
    boolean sameTiers() {
        return sameTiers && sameTimes;
    }

    /** In what a depot differs, in plain words; empty: in nothing. */
    List<String> reasons(String depot) {
        if (!known.contains(depot) || earlier.depot(depot).isEmpty()) {
            return List.of("depot");
        }
        Set<String> reasons = new LinkedHashSet<>();
        List<DepotProblem> old = before.rollout(depot).phases();
        List<DepotProblem> now = after.rollout(depot).phases();
        if (!sameTimes) {
            reasons.add(PHASES);
        }
        for (int f = 0; f < Math.min(old.size(), now.size()); f++) {
            Difference.between(old.get(f), now.get(f)).forEach(difference -> reasons.add(difference.words()));
        }
        boolean sameLimits =
                namedBefore.rollout(depot).limits().equals(named.rollout(depot).limits());
        if (!sameLimits || !sameTiers) {
            reasons.add(LIMITS);
        }
        return List.copyOf(reasons);
    }

    private static List<String> times(Scenario scenario) {
        List<String> times = new ArrayList<>();
        for (Phase phase : scenario.coupling().phases()) {
            times.add(phase.id() + " " + phase.year());
        }
        return times;
    }

    private static List<Tier> tiers(Scenario scenario, FleetAssembly assembly) {
        QuantityPrices quantities = new QuantityPrices(scenario);
        return assembly.limits().stream()
                .filter(limit -> limit.kind() == SharedLimit.Kind.QUANTITY)
                .flatMap(limit -> quantities.tiers(limit).stream())
                .toList();
    }

    /** Whether the plan is what is asked for now, or the answer to the same question. */
    private boolean goodEnough() {
        PlanSettings then = earlier.plan().settings();
        SolveSettings asked = scenario.solve();
        boolean same = then.relativeGap() == asked.relativeGap()
                && then.nodeLimit() == asked.nodeLimit()
                && then.seed() == asked.seed();
        return same || earlier.plan().certificate().gap() <= asked.relativeGap();
    }
}
