package depot.optimizer.sweep.change;

import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.MovedPieces;
import depot.optimizer.scenario.Coupling;
import depot.optimizer.scenario.Crew;
import depot.optimizer.scenario.Owned;
import depot.optimizer.scenario.Phase;
import depot.optimizer.scenario.RouteStop;
import depot.optimizer.scenario.Scenario;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Depots in one phase of a fleet's plan by themselves: the crews that work from them with packs in that phase, whatever their home, and nothing shared
 * but the bays that crews of the one use in passing at the other. They begin when the phase begins and last for the rest of the horizon.
 */
public final class StandingPhase {
    private StandingPhase() {}

    /**
     * The scenario of one depot.
     *
     * @param plan of the depot for the phase
     * @param first its plan for the first phase, which says what was moved
     */
    public static Scenario of(Scenario scenario, DepotPlan plan, DepotPlan first) {
        return of(scenario, List.of(plan), List.of(first));
    }

    /**
     * The scenario of several depots.
     *
     * @param plans of the depots for the phase
     * @param firsts their plans for the first phase, which say what was moved
     */
    public static Scenario of(Scenario scenario, List<DepotPlan> plans, List<DepotPlan> firsts) {
        ScenarioCopy copy = new ScenarioCopy(scenario);
        Map<String, String> bases = new LinkedHashMap<>();
        plans.forEach(plan -> withPacks(scenario, plan).forEach(crew -> bases.put(crew.id(), plan.depot())));
        copy.crews = scenario.crews().stream()
                .filter(crew -> bases.containsKey(crew.id()))
                .map(crew -> at(crew, bases.get(crew.id())))
                .toList();
        copy.crewBases = List.of();
        Map<String, String> homes = scenario.crews().stream().collect(Collectors.toMap(Crew::id, Crew::depot));
        copy.stops = scenario.stops().stream()
                .filter(stop -> bases.containsKey(stop.crew()))
                .map(stop -> stop(stop, homes.get(stop.crew()), bases.get(stop.crew())))
                .toList();
        copy.work = scenario.work().stream()
                .filter(work -> bases.containsKey(work.crew()))
                .toList();
        copy.owned = firsts.stream()
                .flatMap(first -> owned(scenario, first.depot(), first.moves()).stream())
                .toList();
        copy.depots = scenario.depots().stream()
                .filter(depot -> plans.stream().anyMatch(plan -> plan.depot().equals(depot.id())))
                .toList();
        copy.coupling = Coupling.NONE;
        copy.horizonYears = scenario.horizonYears()
                - scenario.coupling().phase(plans.get(0).phase()).year();
        return copy.scenario();
    }

    /** The plan as one of that scenario; its costs are not. */
    public static DepotPlan plan(DepotPlan plan) {
        return new DepotPlan(
                plan.depot(),
                Phase.NOW.id(),
                plan.stop(),
                List.of(),
                List.of(),
                List.of(),
                plan.supplyUpgraded(),
                plan.circuitsBuilt(),
                plan.units(),
                plan.chargers(),
                plan.banks(),
                plan.packs(),
                plan.kits(),
                List.of(),
                plan.days(),
                plan.costs());
    }

    private static List<Crew> withPacks(Scenario scenario, DepotPlan plan) {
        return plan.crews(scenario).stream()
                .filter(crew -> !plan.onPetrol().contains(crew.id()))
                .toList();
    }

    private static Crew at(Crew crew, String depot) {
        return new Crew(
                crew.id(), depot, crew.packPlaces(), crew.payloadKg(), crew.vehicleWatts(), crew.petrolCostPerYear());
    }

    /** Stops at home are stops where the crew works from. A crew that does not work from its home has no visits: another depot is any place to it. */
    private static RouteStop stop(RouteStop stop, String home, String base) {
        if (home.equals(base)) {
            return stop;
        }
        return new RouteStop(
                stop.season(),
                stop.days(),
                stop.crew(),
                stop.stop(),
                stop.place().equals(home) ? base : "stop at " + stop.place(),
                stop.arriveMinute(),
                stop.leaveMinute(),
                stop.siteWatts());
    }

    /** What the depot owns less what has gone from it; what came is among the pieces of the plan. */
    private static List<Owned> owned(Scenario scenario, String depot, List<MovedPieces> moves) {
        List<Owned> rows = new ArrayList<>();
        for (Owned row : scenario.owned()) {
            if (row.depot().equals(depot)) {
                int gone = row.crew().isPresent()
                        ? 0
                        : moves.stream()
                                .filter(moved -> moved.item().equals(row.item()) && moved.count() < 0)
                                .mapToInt(moved -> -moved.count())
                                .sum();
                if (row.count() > gone) {
                    rows.add(new Owned(row.depot(), row.circuit(), row.crew(), row.item(), row.count() - gone));
                }
            }
        }
        return rows;
    }
}
