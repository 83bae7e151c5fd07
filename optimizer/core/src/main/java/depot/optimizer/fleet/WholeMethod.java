package depot.optimizer.fleet;

import depot.optimizer.mip.Limits;
import depot.optimizer.model.DayTerms;
import depot.optimizer.model.Tightening;
import depot.optimizer.plan.BoundProof;
import depot.optimizer.plan.FleetCost;
import depot.optimizer.problem.DepotRollout;
import depot.optimizer.problem.QuantityPrices;
import depot.optimizer.problem.SharedLimits;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.scenario.SolveSettings;
import depot.optimizer.solve.WholeFleet;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Plans a small fleet as one model, tightening days that the replay finds late as depots by themselves are. */
final class WholeMethod {

    private WholeMethod() {}

    static FleetPlan solve(Scenario scenario, List<DepotRollout> rollouts) {
        List<List<Tightening>> tightenings = new ArrayList<>();
        rollouts.forEach(rollout -> tightenings.add(
                new ArrayList<>(Collections.nCopies(rollout.days().size(), Tightening.NONE))));
        double bound = Double.NEGATIVE_INFINITY;
        for (int tightened = 0; ; tightened++) {
            List<List<DayTerms>> terms = new ArrayList<>();
            for (int d = 0; d < rollouts.size(); d++) {
                terms.add(WholeFleet.terms(rollouts.get(d), tightenings.get(d)));
            }
            WholeFleet.Solution solution = new WholeFleet(
                            scenario.name(), rollouts, SharedLimits.of(scenario), new QuantityPrices(scenario), terms)
                    .solve(scenario.solve());
            // Tightening takes plans away, so that only the bound of the problem as it is holds for every plan.
            bound = tightened == 0 ? solution.bound() : bound;
            List<ProvenDepot> depots = new ArrayList<>();
            boolean tighten = false;
            for (int d = 0; d < rollouts.size(); d++) {
                ProvenDepot.Attempt attempt = ProvenDepot.attempt(
                        scenario, rollouts.get(d), solution.plans().get(d), tightenings.get(d));
                tighten |= attempt.tightened();
                boolean last = attempt.tightened() && tightened == ProvenDepot.MOST_TIGHTENINGS;
                depots.add(
                        last
                                ? ProvenDepot.inTime(
                                        scenario,
                                        rollouts.get(d),
                                        solution.plans().get(d))
                                : attempt.proven());
            }
            if (!tighten || tightened == ProvenDepot.MOST_TIGHTENINGS) {
                return finished(scenario, rollouts, solution, depots, bound);
            }
        }
    }

    private static FleetPlan finished(
            Scenario scenario,
            List<DepotRollout> rollouts,
            WholeFleet.Solution solution,
            List<ProvenDepot> depots,
            double bound) {
        List<FleetColumn> columns = new ArrayList<>();
        for (int d = 0; d < depots.size(); d++) {
            ProvenDepot depot = depots.get(d);
            columns.add(
                    new FleetColumn(d, depot.rollout().cost(), depot.rollout().use(), depot));
        }
        FleetMaster.Choice asSolved = choice(columns, solution.fleetCosts());
        FleetMaster.Choice choice = solution.fleetCosts().isEmpty()
                ? asSolved
                : asWritten(scenario, columns).orElse(asSolved);
        return FinishedFleet.of(scenario, rollouts, choice, bound, BoundProof.NONE);
    }

    private static FleetMaster.Choice choice(List<FleetColumn> columns, List<FleetCost> fleetCosts) {
        double cost = columns.stream().mapToDouble(FleetColumn::cost).sum()
                + fleetCosts.stream().mapToDouble(FleetCost::presentCost).sum();
        return new FleetMaster.Choice(cost, columns, fleetCosts);
    }

    /**
     * With the quantity prices that the depots' plans reach. The model may buy a piece and leave an owned one idle; a plan uses the owned one, so that fewer
     * count as bought, and the others are spare pieces.
     */
    private static Optional<FleetMaster.Choice> asWritten(Scenario scenario, List<FleetColumn> columns) {
        FleetMaster master = new FleetMaster(
                SharedLimits.of(scenario), new QuantityPrices(scenario), columns.size(), PriceSearch.PENALTY, Map.of());
        SolveSettings settings = scenario.solve();
        return master.choose(
                columns, new Limits(0, settings.nodeLimit(), settings.timeLimitSeconds(), settings.seed()));
    }
}
