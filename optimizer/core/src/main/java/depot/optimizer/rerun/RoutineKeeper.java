package depot.optimizer.rerun;

import depot.optimizer.fleet.DepotResult;
import depot.optimizer.fleet.HeldPlanner;
import depot.optimizer.plan.Certificate;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.TripPlan;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.DepotProblems;
import depot.optimizer.rerun.RoutineChange.What;
import depot.optimizer.scenario.Depot;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.solve.NoPlanException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Looks for a plan that leaves more of the daily routine as it was. Purchases are those of the cheapest plan found, in its places and in the earlier
 * ones; in both, days of the earlier plan are kept where they are worth it and pass the replay. The plan taken costs least together with the weight of
 * its changes. This searches among those few plans and proves nothing about others: the bound is that of the cost alone.
 */
final class RoutineKeeper {

    private final Scenario scenario;
    private final double weightPerYear;
    private final Map<String, DepotProblem> problems = new HashMap<>();

    /**
     * @param scenario in which all that is held is there
     * @param weightPerYear what a changed line of the routine is weighed with, each season day by itself, in money a year
     */
    RoutineKeeper(Scenario scenario, double weightPerYear) {
        this.scenario = scenario;
        this.weightPerYear = weightPerYear;
    }

    /** A plan and what keeping the routine in it comes to. */
    record Kept(DepotPlan plan, RoutineTrade trade) {}

    /**
     * The plan that costs least together with the weight of its changes. Visits are for as many packs as in the cheapest plan, so that no other depot has
     * to do anything else.
     *
     * @param found the cheapest plan, its chargers named as before
     */
    Kept keep(DepotPlan found, DepotPlan earlier) {
        DepotProblem problem = problem(found);
        DayKeeper days = days(problem, earlier, DayVisits::kept);
        List<DepotPlan> candidates = new ArrayList<>(List.of(found, days.keep(found)));
        inOldPlaces(problem.depot(), found, earlier).ifPresent(plan -> {
            candidates.add(plan);
            candidates.add(days.keep(plan));
        });
        DepotPlan best = found;
        for (DepotPlan candidate : candidates) {
            if (weighed(candidate, earlier) < weighed(best, earlier)) {
                best = candidate;
            }
        }
        return kept(found, earlier, best);
    }

    /** The plan with earlier days wherever they are worth it, whatever other depots have to do for their visits. */
    Kept keepVisits(DepotPlan found, DepotPlan earlier) {
        DayKeeper days = days(problem(found), earlier, (plan, day, then) -> true);
        return kept(found, earlier, days.keep(found));
    }

    /** Cost of a plan and the weight of its changes. */
    double weighed(DepotPlan plan, DepotPlan earlier) {
        return plan.stop().certificate().cost() + perLine(problem(plan)) * lines(plan, earlier);
    }

    private DepotProblem problem(DepotPlan plan) {
        return problems.computeIfAbsent(plan.depot(), id -> {
            Depot depot = scenario.depots().stream()
                    .filter(each -> each.id().equals(id))
                    .findFirst()
                    .orElseThrow();
            return new DepotProblems(scenario).of(depot);
        });
    }

    private double perLine(DepotProblem problem) {
        return weightPerYear * problem.money().annuity();
    }

    private DayKeeper days(DepotProblem problem, DepotPlan earlier, DayKeeper.Fit fit) {
        return new DayKeeper(scenario, problem, earlier, perLine(problem), fit);
    }

    private Kept kept(DepotPlan found, DepotPlan earlier, DepotPlan best) {
        double cost = best.stop().certificate().cost();
        double bound = Math.min(cost, found.stop().certificate().bound());
        double gap = scenario.solve().relativeGap();
        DepotPlan plan = best.equals(found)
                ? found
                : best.withStop(found.stop()
                        .withCertificate(Certificate.of(cost, bound, gap))
                        .withReason("routine kept where it was worth it"));
        double more = cost - found.stop().certificate().cost();
        return new Kept(plan, new RoutineTrade(lines(found, earlier), lines(plan, earlier), more));
    }

    /** The days planned anew with the same purchases in the earlier places; empty: they are in them, or do not fit there. */
    private Optional<DepotPlan> inOldPlaces(Depot depot, DepotPlan found, DepotPlan earlier) {
        DepotPlan placed = OldPlaces.of(found, earlier);
        if (OldPlaces.same(placed, found)) {
            return Optional.empty();
        }
        try {
            DepotResult result = HeldPlanner.replan(scenario, depot, placed);
            boolean serves = result.replay().proven() && shortWh(result.plan()) <= shortWh(found);
            return serves ? Optional.of(PlaceKeeper.keep(result.plan(), earlier)) : Optional.empty();
        } catch (NoPlanException none) {
            return Optional.empty();
        }
    }

    private static int lines(DepotPlan plan, DepotPlan earlier) {
        List<RoutineChange> changes = Routine.changes(Optional.of(earlier), Optional.of(plan));
        return Routine.count(changes, What.LOAD) + Routine.count(changes, What.KIT);
    }

    private static double shortWh(DepotPlan plan) {
        return plan.days().stream()
                .flatMap(day -> day.trips().stream()
                        .flatMap(trip -> trip.shortages().stream())
                        .map(TripPlan.Shortage::wattHours)
                        .map(wattHours -> wattHours * day.daysPerYear()))
                .mapToDouble(Double::doubleValue)
                .sum();
    }
}
