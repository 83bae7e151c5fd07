package depot.optimizer.generate;

import depot.optimizer.scenario.Crew;
import depot.optimizer.scenario.RouteStop;
import depot.optimizer.scenario.Season;
import depot.optimizer.scenario.Work;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * A crew's route on one kind of day: the same in every season, with work that follows the season.
 *
 * @param lunchDepot depot where the crew is at lunch, if it is in one
 */
record DayRoute(Set<DayOfWeek> days, CrewHours hours, String lunchDepot, List<Site> sites) {
    private static final List<String> PLACES = List.of("Green", "Verge", "Bank", "Meadow", "Lane", "Wood", "Common");
    private static final double MAINS_WATTS = 2300;
    private static final int GAP_MINUTES = 20;

    /** A stop away from the depot. */
    private record Site(
            String place, int arriveMinute, int leaveMinute, double mainsWatts, List<WorkDraw.Task> tasks) {}

    static DayRoute draw(Set<DayOfWeek> days, CrewHours hours, String lunchDepot, WorkDraw tools, Dice dice) {
        List<Site> sites = new ArrayList<>();
        if (hours.lunch()) {
            int morning = dice.between(1, 2);
            List<List<WorkDraw.Task>> tasks = tools.draw(morning + 1, dice);
            addSites(sites, hours.leaveMinute(), hours.lunchAtMinute(), tasks.subList(0, morning), dice);
            addSites(sites, hours.lunchUntilMinute(), hours.backMinute(), tasks.subList(morning, morning + 1), dice);
        } else {
            addSites(sites, hours.leaveMinute(), hours.backMinute(), tools.draw(dice.between(2, 3), dice), dice);
        }
        return new DayRoute(days, hours, lunchDepot, List.copyOf(sites));
    }

    /** Fills a trip with stops of equal length, a drive before, between and after them. */
    private static void addSites(
            List<Site> sites, int leaveMinute, int backMinute, List<List<WorkDraw.Task>> tasks, Dice dice) {
        int drive = dice.stepped(15, 35, 5);
        int span = backMinute - leaveMinute - 2 * drive - GAP_MINUTES * (tasks.size() - 1);
        int length = span / tasks.size() / 5 * 5;
        int arriveMinute = leaveMinute + drive;
        for (List<WorkDraw.Task> atStop : tasks) {
            String place = dice.oneOf(PLACES) + " " + dice.between(1, 99);
            double mains = dice.percent(8) ? MAINS_WATTS : 0;
            sites.add(new Site(place, arriveMinute, arriveMinute + length, mains, atStop));
            arriveMinute += length + GAP_MINUTES;
        }
    }

    /** Rows of {@code stops.csv}. */
    List<RouteStop> stops(Season season, Crew crew) {
        List<RouteStop> rows = new ArrayList<>();
        addDepotStop(rows, season, crew, crew.depot(), hours.leaveMinute(), hours.leaveMinute());
        for (Site site : sites) {
            if (startsAfternoon(site)) {
                addDepotStop(rows, season, crew, lunchDepot, hours.lunchAtMinute(), hours.lunchUntilMinute());
            }
            rows.add(new RouteStop(
                    season.id(),
                    days,
                    crew.id(),
                    rows.size() + 1,
                    site.place(),
                    site.arriveMinute(),
                    site.leaveMinute(),
                    site.mainsWatts()));
        }
        addDepotStop(rows, season, crew, crew.depot(), hours.backMinute(), hours.backMinute());
        return rows;
    }

    private void addDepotStop(
            List<RouteStop> rows, Season season, Crew crew, String depot, int arriveMinute, int leaveMinute) {
        int number = rows.size() + 1;
        rows.add(new RouteStop(season.id(), days, crew.id(), number, depot, arriveMinute, leaveMinute, 0));
    }

    /** Rows of {@code work.csv}: a cold season's packs hold less, and its days have less work to the same degree. */
    List<Work> work(Season season, Crew crew) {
        List<Work> rows = new ArrayList<>();
        int number = 1;
        for (Site site : sites) {
            number += startsAfternoon(site) ? 2 : 1;
            double stopHours = (site.leaveMinute() - site.arriveMinute()) / 60.0;
            for (WorkDraw.Task task : site.tasks()) {
                double taskHours = task.hours(season.packCapacityFactor(), stopHours);
                rows.add(new Work(season.id(), days, crew.id(), number, task.tool(), taskHours, task.toolsAtOnce()));
            }
        }
        return rows;
    }

    /** The first site after lunch; a crew that is in a depot at lunch has one site in the afternoon. */
    private boolean startsAfternoon(Site site) {
        return hours.lunch() && site.arriveMinute() >= hours.lunchUntilMinute();
    }
}
