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
import java.util.List;
import java.util.stream.Stream;

/**
 * A depot in one phase of a fleet's plan by itself: the crews that work from it with packs in that phase, whatever their home, and nothing shared. It
 * begins when the phase begins and lasts for the rest of the horizon. Crews that visit other depots do not fit into it.
 */
public final class StandingPhase {
    private StandingPhase() {}

    /**
     * The scenario of that depot.
     *
     * @param plan of the depot for the phase
     * @param first its plan for the first phase, which says what was moved
     */
    public static Scenario of(Scenario scenario, DepotPlan plan, DepotPlan first) {
        ScenarioCopy copy = new ScenarioCopy(scenario);
        List<Crew> here = withPacks(scenario, plan);
        copy.crews = here.stream().map(crew -> at(crew, plan.depot())).toList();
        copy.crewBases = List.of();
        copy.stops = scenario.stops().stream()
                .flatMap(stop -> stop(here, stop, plan))
                .toList();
        copy.work = scenario.work().stream()
                .filter(work -> here.stream().anyMatch(crew -> crew.id().equals(work.crew())))
                .toList();
        copy.owned = owned(scenario, plan.depot(), first.moves());
        copy.depots = scenario.depots().stream()
                .filter(depot -> depot.id().equals(plan.depot()))
                .toList();
        copy.coupling = Coupling.NONE;
        copy.horizonYears = scenario.horizonYears()
                - scenario.coupling().phase(plan.phase()).year();
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

    /** Stops at home are stops where the crew works from. */
    private static Stream<RouteStop> stop(List<Crew> here, RouteStop stop, DepotPlan plan) {
        return here.stream()
                .filter(crew -> crew.id().equals(stop.crew()))
                .map(crew -> stop.place().equals(crew.depot())
                        ? new RouteStop(
                                stop.season(),
                                stop.days(),
                                stop.crew(),
                                stop.stop(),
                                plan.depot(),
                                stop.arriveMinute(),
                                stop.leaveMinute(),
                                stop.siteWatts())
                        : stop);
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
