package depot.optimizer.advice.thumb;

import depot.optimizer.plan.SeasonDay;
import depot.optimizer.problem.DayKind;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.Trip;
import depot.optimizer.scenario.Crew;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.scenario.Tool;
import depot.optimizer.scenario.Work;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * How many packs each crew gets: tool hours over the hours that a new pack lasts, rounded up, and the spare ones. The hours are those of the crew's
 * longest day, or of its longest part of a day where it is back at the depot in between. Bad days, cold and worn packs are what spare packs are for.
 */
final class CrewPacks {

    /** Digits beyond this are rounding. */
    private static final double ROUNDING = 1e-9;

    private final DepotProblem problem;
    private final ThumbSettings settings;
    private final Map<String, FamilyChoice> families;
    private final Map<String, Tool> tools;
    private final List<Work> work;

    /**
     * @param families what is bought for each pack family
     */
    CrewPacks(Scenario scenario, DepotProblem problem, ThumbSettings settings, Map<String, FamilyChoice> families) {
        this.problem = problem;
        this.settings = settings;
        this.families = families;
        tools = scenario.tools().stream().collect(Collectors.toMap(Tool::id, Function.identity()));
        work = scenario.work();
    }

    /** Whether a crew can hand packs in and take them back between two trips of a day. */
    boolean backAtLunch(Crew crew) {
        return problem.days().stream().anyMatch(day -> backAtLunch(day, crew));
    }

    private static boolean backAtLunch(DayKind day, Crew crew) {
        List<Trip> trips = trips(day, crew);
        for (int t = 1; t < trips.size(); t++) {
            if (trips.get(t).departure() <= trips.get(t - 1).arrival()) {
                return false;
            }
        }
        return trips.size() > 1;
    }

    private static List<Trip> trips(DayKind day, Crew crew) {
        return day.trips().stream()
                .filter(trip -> trip.crew().equals(crew.id()))
                .toList();
    }

    /** Packs of a crew by family, spare ones included; families that it does not use are left out. */
    Map<String, Integer> of(Crew crew) {
        Map<String, Integer> packs = new LinkedHashMap<>();
        families.forEach((family, choice) -> {
            int asked = problem.days().stream()
                    .mapToInt(day -> asked(day, crew, family, choice))
                    .max()
                    .orElse(0);
            if (asked > 0) {
                packs.put(family, asked + roundedUp(asked * settings.spareShare()));
            }
        });
        return packs;
    }

    private int asked(DayKind day, Crew crew, String family, FamilyChoice choice) {
        double most = 0;
        double all = 0;
        int together = 0;
        for (Trip trip : trips(day, crew)) {
            double runtimes = runtimes(day.occurrences().get(0), trip, family, choice);
            most = Math.max(most, runtimes);
            all += runtimes;
            together = Math.max(
                    together,
                    trip.needs().stream()
                            .filter(need -> need.family().equals(family))
                            .mapToInt(Trip.FamilyNeed::toolsAtOnce)
                            .max()
                            .orElse(0));
        }
        return Math.max(together, roundedUp(backAtLunch(day, crew) ? most : all));
    }

    /** Tool hours of a trip in hours that a new pack lasts with each tool. */
    private double runtimes(SeasonDay day, Trip trip, String family, FamilyChoice choice) {
        double runtimes = 0;
        for (Work row : work) {
            Tool tool = tools.get(row.tool());
            boolean here = row.crew().equals(trip.crew())
                    && row.season().equals(day.season())
                    && row.days().contains(day.day())
                    && trip.stops().stream().anyMatch(stop -> stop.stop() == row.stop());
            if (here && tool.family().equals(family)) {
                double packWh = choice.pack().capacityWh() * choice.pack().usableShare();
                runtimes += row.toolHours() * tool.averageWatts() / packWh;
            }
        }
        return runtimes;
    }

    private static int roundedUp(double packs) {
        return (int) Math.ceil(packs - ROUNDING);
    }
}
