package depot.optimizer.sweep.change;

import depot.optimizer.scenario.Crew;
import depot.optimizer.scenario.CrewBase;
import depot.optimizer.scenario.RouteStop;
import depot.optimizer.scenario.Work;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Changes of how much work there is. */
final class CrewChanges {
    private CrewChanges() {}

    static void workHours(ScenarioCopy copy, Change change) {
        double factor = change.value().doubleValue();
        copy.work = copy.work.stream()
                .map(row -> change.isAbout(row.crew())
                        ? new Work(
                                row.season(),
                                row.days(),
                                row.crew(),
                                row.stop(),
                                row.tool(),
                                row.hours() * factor,
                                row.toolsAtOnce())
                        : row)
                .toList();
    }

    /** New crews with the vehicle, routes, work, bases and phases of a given one, and nothing of what it owns. */
    static void copies(ScenarioCopy copy, Change change) {
        Set<String> taken = copy.crews.stream().map(Crew::id).collect(Collectors.toSet());
        int copies = change.value().intValueExact();
        for (int number = 1; copies > 0; number++) {
            String id = change.of() + "-copy-" + number;
            if (taken.add(id)) {
                add(copy, change.of(), id);
                copies--;
            }
        }
    }

    private static void add(ScenarioCopy copy, String like, String id) {
        List<Crew> crews = new ArrayList<>(copy.crews);
        copy.crews.stream()
                .filter(crew -> crew.id().equals(like))
                .map(crew -> new Crew(
                        id,
                        crew.depot(),
                        crew.packPlaces(),
                        crew.payloadKg(),
                        crew.vehicleWatts(),
                        crew.petrolCostPerYear()))
                .forEach(crews::add);
        List<CrewBase> bases = new ArrayList<>(copy.crewBases);
        copy.crewBases.stream()
                .filter(base -> base.crew().equals(like))
                .map(base -> new CrewBase(id, base.depot(), base.costPerYear()))
                .forEach(bases::add);
        List<RouteStop> stops = new ArrayList<>(copy.stops);
        copy.stops.stream()
                .filter(stop -> stop.crew().equals(like))
                .map(stop -> new RouteStop(
                        stop.season(),
                        stop.days(),
                        id,
                        stop.stop(),
                        stop.place(),
                        stop.arriveMinute(),
                        stop.leaveMinute(),
                        stop.siteWatts()))
                .forEach(stops::add);
        List<Work> work = new ArrayList<>(copy.work);
        copy.work.stream()
                .filter(row -> row.crew().equals(like))
                .map(row ->
                        new Work(row.season(), row.days(), id, row.stop(), row.tool(), row.hours(), row.toolsAtOnce()))
                .forEach(work::add);
        CouplingChanges.convertLike(copy, like, id);
        copy.crews = crews;
        copy.crewBases = bases;
        copy.stops = stops;
        copy.work = work;
    }
}
