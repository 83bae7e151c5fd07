package depot.optimizer.report.page;

import depot.optimizer.plan.SeasonDay;
import depot.optimizer.replay.DayReplay;
import depot.optimizer.replay.DayReplay.Outcome;
import depot.optimizer.replay.DayReplay.TripMargin;
import depot.optimizer.replay.DepotReplay;
import depot.optimizer.replay.LoadTiming;
import depot.optimizer.replay.Violation;
import depot.optimizer.report.table.Words;
import depot.optimizer.report.text.Clock;
import depot.optimizer.report.text.DayNames;
import depot.optimizer.report.text.Figures;
import java.util.List;
import java.util.Optional;

/** What the replay found, day by day. */
final class ReplayViews {

    private ReplayViews() {}

    static DepotPage.ReplayPart of(DepotReplay replay) {
        List<BusiestDay> busiest = BusiestDay.of(replay);
        return new DepotPage.ReplayPart(
                summary(replay),
                LoadCharts.loads(busiest),
                LoadCharts.packs(replay.days()),
                PeakViews.ofDepot(busiest),
                margins(replay),
                violations(replay));
    }

    /** Days a year with that outcome. */
    static double days(List<DepotReplay> depots, Outcome outcome) {
        return depots.stream()
                .flatMap(depot -> depot.days().stream())
                .filter(day -> day.outcome() == outcome)
                .mapToDouble(DayReplay::daysPerYear)
                .sum();
    }

    /** Such as "150 of 168 days a year". */
    static String daysMet(List<DepotReplay> depots) {
        return number(days(depots, Outcome.MET)) + " of " + days(allDays(depots)) + " a year";
    }

    /** Such as "150 of 168". */
    static String daysMetShort(List<DepotReplay> depots) {
        return number(days(depots, Outcome.MET)) + " of " + number(allDays(depots));
    }

    private static double allDays(List<DepotReplay> depots) {
        return depots.stream()
                .flatMap(depot -> depot.days().stream())
                .mapToDouble(DayReplay::daysPerYear)
                .sum();
    }

    private static String days(double number) {
        return Figures.count(number(number), "day");
    }

    /** Such as "1,836", or "12.5" where half days add up. */
    private static String number(double days) {
        return Figures.read(days, Math.abs(days - Math.rint(days)) < 0.05 ? 0 : 1);
    }

    private static String summary(DepotReplay replay) {
        List<DepotReplay> depot = List.of(replay);
        String days =
                "The replay ran every kind of day minute by minute, pack by pack: %s met.".formatted(daysMet(depot));
        double shorts = days(depot, Outcome.SHORT);
        double failed = days(depot, Outcome.FAILED);
        return days
                + (shorts > 0 ? " On %s a year it falls short as planned.".formatted(days(shorts)) : "")
                + (failed > 0 ? " On %s a year it breaks a rule.".formatted(days(failed)) : "")
                + (replay.costs().agrees()
                        ? " The cost, worked out again, agrees."
                        : " The cost, worked out again, differs: "
                                + String.join("; ", replay.costs().differences()));
    }

    private static TableView margins(DepotReplay replay) {
        TableView.Builder table = TableView.of("margins", "Smallest margins on each kind of day")
                .words("Kind of day", "Result")
                .numbers("Energy left on board, least (Wh)")
                .words("After")
                .numbers("Time between ready and collected, least (min)")
                .words("Charger")
                .numbers("Energy short (Wh)");
        for (DayReplay day : replay.days()) {
            Optional<TripMargin> least = day.lowestMargin();
            Optional<LoadTiming> tightest = day.tightestLoad();
            table.row(
                    (day.day() + 1) + ": " + DayNames.of(day.occurrences()),
                    Words.of(day.outcome()),
                    least.map(margin -> Figures.read(margin.wattHours(), 0)).orElse("-"),
                    least.map(ReplayViews::words).orElse("-"),
                    tightest.map(ReplayViews::minutes).orElse("-"),
                    tightest.map(ReplayViews::words).orElse("-"),
                    Figures.read(day.shortWh(), 0));
        }
        return table.build();
    }

    private static String words(TripMargin margin) {
        return "%s, trip %d, stop %d (%s)".formatted(margin.crew(), margin.trip(), margin.stop(), margin.family());
    }

    private static String minutes(LoadTiming load) {
        return load.readyMinute() == LoadTiming.NEVER ? "never ready" : Integer.toString(load.marginMinutes());
    }

    private static String words(LoadTiming load) {
        return "%s, collected at %s".formatted(load.charger(), Clock.time(load.collectMinute()));
    }

    private static TableView violations(DepotReplay replay) {
        TableView.Builder table = TableView.of("violations", "Rules that the plan breaks")
                .words("At fault", "Rule", "Day", "Time", "What was found");
        for (Violation violation : replay.allViolations()) {
            table.row(
                    violation.subject(),
                    Words.of(violation.kind()),
                    violation.occurrence().map(ReplayViews::day).orElse("every day"),
                    violation.minute() == Violation.NO_MINUTE ? "-" : Clock.time(violation.minute()),
                    violation.message());
        }
        return table.build();
    }

    private static String day(SeasonDay day) {
        return DayNames.of(day);
    }
}
