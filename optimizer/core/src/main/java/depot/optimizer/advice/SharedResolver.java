package depot.optimizer.advice;

import depot.optimizer.advice.Answer.Ending;
import depot.optimizer.fleet.VariedRollout;
import depot.optimizer.plan.BoundProof.DepotBound;
import depot.optimizer.plan.BoundProof.PricedLimit;
import depot.optimizer.plan.Certificate;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.Plan;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.DepotRollout;
import depot.optimizer.problem.PieceLimit;
import depot.optimizer.problem.SharedLimit;
import depot.optimizer.replay.DepotReplay;
import depot.optimizer.replay.FleetReplay;
import depot.optimizer.replay.Violation;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.solve.NoPlanException;
import depot.optimizer.solve.SharedPrices;
import depot.optimizer.sweep.FleetAssembly;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;

/**
 * Solves one depot of a fleet again with something changed, twice. With what the other depots use of all limits held as it is, the depot's plan is one
 * that the fleet could have: what it costs is the most that the change can cost the fleet. At the certificate's prices of the limits, the depot's bound
 * replaces its part of the fleet's bound (Lagrangian relaxation): that holds for all plans of the fleet, whatever the other depots do.
 *
 * <p>A plan that was made as one model has no such prices. What more room is worth to its fleet is then bounded by planning the fleet anew as one model.
 */
final class SharedResolver implements Resolving {

    private final Scenario scenario;
    private final Plan fleet;
    private final String depot;
    private final FleetAssembly assembly;
    private final Map<String, List<DepotPlan>> plans;
    private final ReplayedPlan base;

    /**
     * @param fleet the plan asked about
     * @param assembly of the scenario
     */
    SharedResolver(Scenario scenario, Plan fleet, String depot, FleetAssembly assembly) {
        this.scenario = scenario;
        this.fleet = fleet;
        this.depot = depot;
        this.assembly = assembly;
        plans = FleetAssembly.byDepot(fleet);
        base = new ReplayedPlan(
                plans.get(depot),
                FleetReplay.runPhases(scenario, plans.get(depot)),
                Optional.of(fleet),
                FleetReplay.runFleet(scenario, fleet));
    }

    @Override
    public ReplayedPlan base() {
        return base;
    }

    @Override
    public Scenario scenario() {
        return scenario;
    }

    @Override
    public List<DepotProblem> problems() {
        return assembly.rollout(depot).phases();
    }

    @Override
    public Answer harder(List<List<PieceLimit>> limits) {
        List<DepotProblem> phases = new ArrayList<>();
        for (int f = 0; f < limits.size(); f++) {
            phases.add(problems().get(f).with(limits.get(f)));
        }
        DepotRollout asked = new DepotRollout(phases, assembly.rollout(depot).limits());
        return answer(new Found(scenario, asked), Difference::harder);
    }

    @Override
    public Answer easier(Scenario changed) {
        DepotRollout easier = new FleetAssembly(changed).rollout(depot);
        if (easier.phases().equals(problems())) {
            return new Answer(Answer.ending(base, forbidden()), Optional.of(base), Optional.of(Difference.none()), "");
        }
        Found found = new Found(changed, easier);
        if (!easier.limits().isEmpty() && FleetAnew.asks(scenario, fleet)) {
            found.anew(easier);
        }
        return answer(found, Difference::easier);
    }

    private boolean forbidden() {
        return problems().get(0).shortageForbidden();
    }

    private Answer answer(Found found, BiFunction<Certificate, Certificate, Difference> difference) {
        Optional<ReplayedPlan> best = found.best();
        if (best.isEmpty()) {
            return new Answer(Ending.NONE_WITH_OTHERS_HELD, Optional.empty(), Optional.empty(), found.trouble);
        }
        ReplayedPlan plan = best.get();
        Ending ending = Answer.ending(plan, forbidden());
        boolean comparable = ending == Ending.MET || ending == Ending.SHORT;
        double cost = plan.fleet().orElseThrow().certificate().cost();
        Certificate proven = new Certificate(cost, Math.min(cost, found.bound), 0, false);
        return new Answer(
                ending,
                best,
                comparable ? Optional.of(difference.apply(fleet.certificate(), proven)) : Optional.empty(),
                Answer.trouble(plan));
    }

    /** The plans of a changed depot, and what they say of the fleet. */
    private final class Found {
        private final Scenario changed;
        private final List<ReplayedPlan> candidates = new ArrayList<>();
        private Optional<ReplayedPlan> held = Optional.empty();
        private double bound = Double.NEGATIVE_INFINITY;
        private String trouble = "";

        private Found(Scenario changed, DepotRollout asked) {
            this.changed = changed;
            boolean alone = asked.limits().isEmpty();
            try {
                VariedRollout found = VariedRollout.plan(
                        changed, asked, SharedPrices.NONE, assembly.left(depot, plans, fleet.fleetCosts()));
                held = Optional.of(inFleet(found.phases()));
                candidates.add(held.get());
                bound = alone ? fleet.certificate().bound() - share() + found.bound() : bound;
            } catch (NoPlanException e) {
                trouble = e.getMessage();
            }
            if (!alone && fleet.proof().given()) {
                priced(asked);
            }
        }

        /**
         * Bounds of depots that share nothing add up. Where they are shares of the fleet's bound in proportion to cost (one model, or prices of what others
         * share), taking one off may leave more than the others cost at least, but no more than their plans are too dear, so that the difference holds.
         */
        private double share() {
            return plans.get(depot).stream()
                    .mapToDouble(plan -> plan.stop().certificate().bound())
                    .sum();
        }

        /** The depot's bound at the certificate's prices. */
        private double provenBound() {
            return fleet.proof().depots().stream()
                    .filter(part -> part.depot().equals(depot))
                    .mapToDouble(DepotBound::bound)
                    .sum();
        }

        /** The whole fleet as one model: its bound holds for all plans of the fleet, and what it finds is one of them. */
        private void anew(DepotRollout asked) {
            try {
                FleetAnew found = FleetAnew.of(changed, assembly, asked);
                candidates.add(found.seenFrom(depot));
                bound = found.certificate().bound();
            } catch (NoPlanException e) {
                trouble = trouble.isEmpty() ? e.getMessage() : trouble;
            }
        }

        private void priced(DepotRollout asked) {
            try {
                VariedRollout free = VariedRollout.plan(changed, asked, prices(asked), Map.of());
                bound = fleet.proof().bound() - provenBound() + free.bound();
                candidates.add(inFleet(free.phases()));
            } catch (NoPlanException e) {
                trouble = trouble.isEmpty() ? e.getMessage() : trouble;
            }
        }

        private SharedPrices prices(DepotRollout asked) {
            Map<SharedLimit, Double> prices = new LinkedHashMap<>();
            for (PricedLimit priced : fleet.proof().limits()) {
                asked.limits().stream()
                        .filter(limit -> limit.name().equals(priced.limit()))
                        .forEach(limit -> prices.put(limit, priced.price()));
            }
            return new SharedPrices(prices);
        }

        /** The cheapest that works; where none does, the one that was found with the others held. */
        private Optional<ReplayedPlan> best() {
            return candidates.stream()
                    .filter(plan -> plan.proven() && plan.covered())
                    .min((one, other) -> Double.compare(cost(one), cost(other)))
                    .or(() -> candidates.stream().filter(ReplayedPlan::proven).findFirst())
                    .or(() -> held);
        }

        private double cost(ReplayedPlan plan) {
            return plan.fleet().orElseThrow().certificate().cost();
        }

        private ReplayedPlan inFleet(List<DepotPlan> phases) {
            Map<String, List<DepotPlan>> all = new LinkedHashMap<>(plans);
            all.put(depot, phases);
            Plan whole = new FleetAssembly(changed)
                    .plan(fleet, all, fleet.certificate().bound());
            Map<String, List<DepotPlan>> settled = FleetAssembly.byDepot(whole);
            List<DepotReplay> replays = FleetReplay.runPhases(changed, settled.get(depot));
            List<Violation> together = new ArrayList<>(FleetReplay.runFleet(changed, whole));
            // A crew that comes or goes changes what its home does as well.
            settled.forEach((other, ofOther) -> {
                boolean moved = !other.equals(depot) && !away(ofOther).equals(away(plans.get(other)));
                if (moved) {
                    FleetReplay.runPhases(changed, ofOther).forEach(replay -> together.addAll(replay.allViolations()));
                }
            });
            return new ReplayedPlan(settled.get(depot), replays, Optional.of(whole), together);
        }

        private static List<List<String>> away(List<DepotPlan> phases) {
            return phases.stream().map(DepotPlan::away).toList();
        }
    }
}
