package depot.optimizer.replay;

import depot.optimizer.plan.DayPlan;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.SeasonDay;
import depot.optimizer.replay.Violation.Kind;
import depot.optimizer.scenario.Season;
import java.util.Map;
import java.util.TreeMap;

/** The planned days cover every season day on which crews with packs work exactly once, count it as often as it comes, and start when the depot's cycle does. */
final class CalendarRules {
    private CalendarRules() {}

    static void check(DepotTables tables, DepotPlan plan, Violations violations) {
        Map<String, Integer> covered = new TreeMap<>();
        for (int index = 0; index < plan.days().size(); index++) {
            DayPlan day = plan.days().get(index);
            day.occurrences().forEach(o -> covered.merge(name(o), 1, Integer::sum));
            daysPerYear(tables, day, index, violations);
            if (day.startMinute() != tables.startMinute()) {
                violations.add(
                        Kind.CYCLE,
                        "day " + index,
                        day.startMinute(),
                        tables.startMinute(),
                        "day " + index + " starts at " + Violations.clock(day.startMinute())
                                + ", but the depot's earliest departure asks for "
                                + Violations.clock(tables.startMinute()));
            }
        }
        covered.forEach((name, times) -> {
            if (times > 1) {
                violations.add(Kind.CALENDAR, name, times, 1, name + " is planned " + times + " times");
            }
        });
        for (SeasonDay day : tables.routes().seasonDays()) {
            // Crews on petrol need no plan; before any crew can change a depot has none.
            boolean work = tables.routes().on(day).stream()
                    .anyMatch(route -> route.hasWork() && !tables.onPetrol().contains(route.crew()));
            if (work && !covered.containsKey(name(day))) {
                violations.add(Kind.CALENDAR, name(day), 0, 1, name(day) + " has work, but no plan");
            }
        }
    }

    private static void daysPerYear(DepotTables tables, DayPlan day, int index, Violations violations) {
        double expected = 0;
        for (SeasonDay occurrence : day.occurrences()) {
            Season season = tables.seasons().get(occurrence.season());
            if (season == null) {
                violations.missing("season", occurrence.season(), "day " + index);
            } else {
                expected += season.weeksPerYear();
            }
        }
        if (Math.abs(expected - day.daysPerYear()) > 1e-6 * Math.max(1, expected)) {
            violations.add(
                    Kind.CALENDAR,
                    "day " + index,
                    day.daysPerYear(),
                    expected,
                    "day " + index + " counts " + Violations.number(day.daysPerYear()) + " times a year instead of "
                            + Violations.number(expected));
        }
    }

    private static String name(SeasonDay day) {
        return day.season() + " " + day.day();
    }
}
