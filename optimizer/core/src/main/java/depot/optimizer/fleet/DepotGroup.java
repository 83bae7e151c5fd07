package depot.optimizer.fleet;

import depot.optimizer.fleet.DepotPricing.Question;
import depot.optimizer.mip.Engine;
import depot.optimizer.mip.Limits;
import depot.optimizer.model.Tightening;
import depot.optimizer.problem.DepotRollout;
import depot.optimizer.problem.QuantityPrices;
import depot.optimizer.problem.SharedLimit;
import depot.optimizer.problem.SharedLimit.Kind;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.solve.RolloutPlan;
import depot.optimizer.solve.SharedPrices;
import depot.optimizer.solve.UseRange;
import depot.optimizer.solve.WholeFleet;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntToDoubleFunction;

/** Some depots planned together as one model, while the others keep the plans that they have. */
final class DepotGroup {

    private final Scenario scenario;
    private final List<DepotRollout> rollouts;
    private final List<SharedLimit> limits;
    private final List<Integer> depots;
    private final List<FleetColumn> others;

    /**
     * @param rollouts of all depots
     * @param depots places of those that are planned together
     * @param others plans of all other depots
     */
    DepotGroup(
            Scenario scenario,
            List<DepotRollout> rollouts,
            List<SharedLimit> limits,
            List<Integer> depots,
            List<FleetColumn> others) {
        this.scenario = scenario;
        this.rollouts = rollouts;
        this.limits = limits;
        this.depots = List.copyOf(depots);
        this.others = List.copyOf(others);
    }

    /**
     * What came of it.
     *
     * @param plans of the depots, replayed, in their order; empty: none were found
     * @param late which of them were late with the schedules of the model
     * @param bound the fleet costs no less with any plans of these depots and those of the others
     */
    record Found(List<ProvenDepot> plans, List<Boolean> late, double bound) {}

    /** Places of the depots that are planned together. */
    List<Integer> depots() {
        return depots;
    }

    /**
     * Looks for plans with which the fleet costs no more than an amount.
     *
     * @param most cost of the whole fleet
     */
    Found below(double most, Limits work) {
        List<DepotRollout> together = depots.stream().map(rollouts::get).toList();
        double costOfOthers = others.stream().mapToDouble(FleetColumn::cost).sum();
        // All depots together are worth a bound; of a few of them only better plans are wanted, and those quickly.
        // What the fleet pays beside its depots, and takes off for all of its pieces, is part of the model.
        WholeFleet.Below below = new WholeFleet(
                        scenario.name(),
                        together,
                        limits,
                        new QuantityPrices(scenario),
                        together.stream().map(WholeFleet::terms).toList(),
                        usesOfOthers())
                .solveBelow(
                        most - costOfOthers,
                        others.isEmpty() ? Engine.TRIED_BRANCH_AND_CUT : Engine.BRANCH_AND_CUT,
                        work);
        List<ProvenDepot> plans = new ArrayList<>();
        List<Boolean> late = new ArrayList<>();
        below.solution().ifPresent(solution -> {
            for (int i = 0; i < together.size(); i++) {
                DepotRollout rollout = together.get(i);
                RolloutPlan plan = solution.plans().get(i);
                ProvenDepot.Attempt attempt = ProvenDepot.attempt(scenario, rollout, plan, untightened(rollout));
                late.add(attempt.tightened());
                plans.add(attempt.tightened() ? ProvenDepot.inTime(scenario, rollout, plan) : attempt.proven());
            }
        });
        return new Found(List.copyOf(plans), List.copyOf(late), below.bound() + costOfOthers);
    }

    private static List<Tightening> untightened(DepotRollout rollout) {
        return new ArrayList<>(Collections.nCopies(rollout.days().size(), Tightening.NONE));
    }

    private Map<SharedLimit, Double> usesOfOthers() {
        Map<SharedLimit, Double> uses = new LinkedHashMap<>();
        for (SharedLimit limit : others.isEmpty() ? List.<SharedLimit>of() : limits) {
            uses.put(
                    limit,
                    others.stream().mapToDouble(column -> column.use(limit)).sum());
        }
        return uses;
    }

    /**
     * Questions to the depots whose plans were late: within what such a plan uses, a search of their own may find one that is in time and costs less.
     *
     * @param allowed how far cost and bound of a depot may be apart
     */
    List<Question> within(Found found, IntToDoubleFunction allowed) {
        List<Question> questions = new ArrayList<>();
        for (int i = 0; i < found.plans().size(); i++) {
            ProvenDepot plan = found.plans().get(i);
            if (found.late().get(i)) {
                int depot = depots.get(i);
                questions.add(new Question(
                        depot,
                        SharedPrices.NONE,
                        allowed.applyAsDouble(depot),
                        ranges(plan.rollout().use())));
            }
        }
        return questions;
    }

    private static Map<SharedLimit, UseRange> ranges(Map<SharedLimit, Double> use) {
        Map<SharedLimit, UseRange> ranges = new LinkedHashMap<>();
        use.forEach((limit, amount) ->
                ranges.put(limit, limit.kind() == Kind.CREW ? UseRange.exactly(amount) : UseRange.upTo(amount)));
        return ranges;
    }
}
