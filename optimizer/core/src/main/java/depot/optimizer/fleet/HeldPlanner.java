package depot.optimizer.fleet;

import depot.optimizer.model.Tightening;
import depot.optimizer.plan.Certificate;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.DepotProblems;
import depot.optimizer.replay.DepotReplay;
import depot.optimizer.replay.FleetReplay;
import depot.optimizer.scenario.Depot;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.solve.HeldPurchases;
import depot.optimizer.solve.RepricedPlan;
import depot.optimizer.solve.VisitUse;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;

/**
 * Plans the days of a depot with what an earlier plan bought, and replays them. Days that the replay finds late are tightened and planned again. Visits
 * are for as many packs as in the earlier plan.
 */
public final class HeldPlanner {
    private HeldPlanner() {}

    /**
     * The plan and its replay.
     *
     * @param scenario with the depot in it
     * @param bought a plan of the depot, made for this or another scenario
     * @throws depot.optimizer.solve.NoPlanException when a day has no plan within the limits
     */
    public static DepotResult replan(Scenario scenario, Depot depot, DepotPlan bought) {
        DepotProblem problem = new DepotProblems(scenario).of(depot);
        return replan(scenario, problem, bought, VisitUse.packs(problem, bought));
    }

    /**
     * The same when visits are for other numbers of packs.
     *
     * @param problem of the depot in the scenario
     * @param visits packs that the depot's crews may count on elsewhere, and that it has to charge for guests, by
     *     {@link depot.optimizer.problem.Visit.Service#key()}; none where it has no entry
     * @throws depot.optimizer.solve.NoPlanException when a day has no plan within the limits
     */
    public static DepotResult replan(
            Scenario scenario, DepotProblem problem, DepotPlan bought, Map<String, Integer> visits) {
        HeldPurchases held = new HeldPurchases(problem, bought, visits);
        List<Tightening> tightenings =
                new ArrayList<>(Collections.nCopies(problem.days().size(), Tightening.NONE));
        for (int tightened = 0; ; tightened++) {
            DepotPlan plan = held.plan(List.copyOf(tightenings));
            DepotReplay replay = FleetReplay.runDepot(scenario, plan);
            if (replay.failedDays().stream().noneMatch(LateDays::curable)
                    || tightened == ProvenDepot.MOST_TIGHTENINGS) {
                DepotResult found = plan.units().isEmpty() || !replay.proven()
                        ? new DepotResult(plan, replay)
                        : ProvenDepot.asMeasured(scenario, problem, plan, replay);
                return VisitUse.keeps(problem, bought, visits) ? better(scenario, problem, bought, found) : found;
            }
            LateDays.tighten(tightenings, 0, problem, plan, replay);
        }
    }

    /** The days that came with the purchases, where they still fit and are better than those found: a day's search stops within a gap. */
    private static DepotResult better(Scenario scenario, DepotProblem problem, DepotPlan bought, DepotResult found) {
        DepotPlan repriced = RepricedPlan.of(problem, bought);
        double cost = repriced.stop().certificate().cost();
        if (cost >= found.plan().stop().certificate().cost()) {
            return found;
        }
        Certificate unbounded = Certificate.of(cost, 0, problem.settings().relativeGap());
        DepotPlan asBought = repriced.withStop(found.plan().stop().withCertificate(unbounded));
        DepotReplay replay = FleetReplay.runDepot(scenario, asBought);
        return replay.proven() && shortWh(replay) <= shortWh(found.replay())
                ? new DepotResult(asBought, replay)
                : found;
    }

    static double shortWh(DepotReplay replay) {
        return replay.days().stream()
                .mapToDouble(day -> day.shortWh() * day.daysPerYear())
                .sum();
    }
}
