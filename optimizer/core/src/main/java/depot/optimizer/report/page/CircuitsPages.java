package depot.optimizer.report.page;

import static depot.optimizer.report.page.CircuitViews.amps;

import depot.optimizer.plan.DepotPlan;
import depot.optimizer.report.table.CircuitLine;
import depot.optimizer.report.table.CircuitLine.Greatest;
import depot.optimizer.report.table.CircuitLine.Unit;
import depot.optimizer.report.table.CircuitLines;
import depot.optimizer.report.text.Clock;
import depot.optimizer.report.text.DayNames;
import depot.optimizer.report.text.Figures;
import java.util.ArrayList;
import java.util.List;

/** Makes the circuit schedule of a depot, for a licensed electrician. */
final class CircuitsPages {

    private CircuitsPages() {}

    static CircuitsPage of(PageMaker maker, DepotPlan plan) {
        List<CircuitLine> lines = CircuitLines.of(maker.catalog(), plan, maker.replay(plan));
        return new CircuitsPage(
                maker.title(plan),
                "Scenario " + maker.plan().scenario(),
                maker.sheetLinks(plan, Sheet.CIRCUITS),
                work(lines),
                rating(lines),
                load(lines),
                units(lines),
                pressed(lines),
                PlacementViews.table(maker.catalog(), plan));
    }

    private static List<String> work(List<CircuitLine> lines) {
        List<String> work = new ArrayList<>();
        for (CircuitLine line : lines) {
            String rated = "%s, breaker %s A".formatted(CircuitViews.wiring(line), amps(line.breakerAmps()));
            switch (line.work()) {
                case EXISTING -> {
                    // Stays as it is.
                }
                case NEW_CIRCUIT ->
                    work.add("Build circuit %s: %s, %s."
                            .formatted(
                                    line.name(),
                                    rated,
                                    Figures.count(line.outlets().orElse(0), "outlet")));
                case BIGGER_SUPPLY -> work.add("Make the supply bigger: %s.".formatted(rated));
            }
            line.unit()
                    .filter(unit -> !unit.owned())
                    .ifPresent(
                            unit -> work.add("Put in %s, on circuit %s; everything that charges there goes behind it."
                                    .formatted(WallPages.words(unit), line.name())));
        }
        return work;
    }

    private static TableView rating(List<CircuitLine> lines) {
        TableView.Builder table = TableView.of("rating", "Rating, and what may be drawn for hours")
                .words("Circuit", "Work wanted")
                .numbers("Volts (V)", "Phases", "Breaker (A)", "Continuous factor", "Usable for hours (A)")
                .numbers("Limit of one plug (A)", "Outlets used");
        lines.forEach(line -> add(
                table,
                line,
                line.work().words(),
                Figures.plain(line.volts(), 1),
                Integer.toString(line.phases()),
                amps(line.breakerAmps()),
                Figures.plain(line.continuousFactor(), 3),
                amps(line.usableAmps()),
                line.plugAmps().isPresent() ? amps(line.plugAmps().getAsDouble()) : "-",
                line.outlets().isPresent() ? CircuitViews.outlets(line) : Integer.toString(line.plugs())));
        return table.build();
    }

    private static TableView load(List<CircuitLine> lines) {
        TableView.Builder table = TableView.of("load", "What is connected, and the greatest current in the replay")
                .words("Circuit")
                .numbers(
                        "Other loads, at most (A)",
                        "Plates connected (A)",
                        "Of these let through (A)",
                        "Usable for hours (A)",
                        "Margin (A)",
                        "Greatest at once in the replay (A)",
                        "Allowed then (A)")
                .words("When");
        lines.forEach(line -> add(
                table,
                line,
                amps(line.otherLoadsAmps()),
                amps(line.plateAmps()),
                amps(line.countedAmps()),
                amps(line.usableAmps()),
                amps(line.marginAmps()),
                line.greatest().map(found -> amps(found.peak().amps())).orElse("-"),
                line.greatest().map(found -> amps(found.peak().limitAmps())).orElse("-"),
                line.greatest().map(CircuitsPages::when).orElse("-")));
        return table.build();
    }

    private static String when(Greatest greatest) {
        return Clock.time(greatest.peak().minute()) + ", "
                + DayNames.of(greatest.day().occurrences());
    }

    private static TableView units(List<CircuitLine> lines) {
        TableView.Builder table = TableView.of("units", "Load-sharing units and what they are set to")
                .words("Circuit", "Unit", "New or owned")
                .numbers("Outlets", "Setting, circuit otherwise idle (A)", "Setting beside the other loads (A)");
        for (CircuitLine line : lines) {
            line.unit().ifPresent(unit -> table.row(unitRow(line, unit)));
        }
        return table.build();
    }

    private static String[] unitRow(CircuitLine line, Unit unit) {
        return new String[] {
            line.name(),
            unit.type().id(),
            unit.owned() ? "owned" : "new",
            Integer.toString(unit.type().outlets()),
            amps(unit.settingAmps()),
            amps(unit.besideOtherLoadsAmps())
        };
    }

    private static String pressed(List<CircuitLine> lines) {
        return lines.stream()
                .filter(line -> line.supply() && line.marginAmps() < 0)
                .map(line ->
                        ("The load-sharing units together could draw more than the supply has left (%s A of %s A). The plan "
                                        + "counts on units that also hold the supply to its limit: they have to be told what it carries.")
                                .formatted(amps(line.countedAmps()), amps(line.leftAmps())))
                .findFirst()
                .orElse("");
    }

    /** The supply stands below the circuits, as their sum. */
    private static void add(TableView.Builder table, CircuitLine line, String... cells) {
        List<String> row = new ArrayList<>(List.of(line.supply() ? "Supply" : line.name()));
        row.addAll(List.of(cells));
        if (line.supply()) {
            table.total(row.toArray(String[]::new));
        } else {
            table.row(row.toArray(String[]::new));
        }
    }
}
