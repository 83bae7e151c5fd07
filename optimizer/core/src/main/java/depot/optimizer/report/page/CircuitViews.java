package depot.optimizer.report.page;

import depot.optimizer.report.table.CircuitLine;
import depot.optimizer.report.text.Figures;
import java.util.ArrayList;
import java.util.List;

/** Circuits and supply of a depot: what they may carry, and what is plugged in. */
final class CircuitViews {

    private CircuitViews() {}

    /** One row per usable circuit, then the supply. */
    static TableView table(List<CircuitLine> lines) {
        TableView.Builder table = TableView.of(
                        "circuits",
                        "Circuits and supply: what they may carry for hours, and the plate current plugged in")
                .words("Circuit", "Wiring")
                .numbers(
                        "Breaker (A)",
                        "For hours (A)",
                        "Other loads, at most (A)",
                        "Left for charging (A)",
                        "Plugged in (A)",
                        "Share used",
                        "Margin (A)",
                        "Outlets used");
        for (CircuitLine line : lines) {
            List<String> row = row(line);
            if (line.supply()) {
                table.total(row.toArray(String[]::new));
            } else {
                table.row(row.toArray(String[]::new));
            }
        }
        return table.build();
    }

    private static List<String> row(CircuitLine line) {
        double left = line.leftAmps();
        List<String> row = new ArrayList<>(List.of(
                name(line),
                wiring(line),
                amps(line.breakerAmps()),
                amps(line.usableAmps()),
                amps(line.otherLoadsAmps()),
                amps(left),
                amps(line.countedAmps()) + (line.unit().isPresent() ? " *" : ""),
                left == 0 ? "-" : Figures.percent(line.countedAmps() / left),
                amps(line.marginAmps())));
        row.add(line.outlets().isPresent() ? outlets(line) : "");
        return row;
    }

    /** Such as "wall (behind unit-16)" or "Supply (after its upgrade)". */
    private static String name(CircuitLine line) {
        String name = line.supply() ? "Supply" : line.name();
        String work =
                switch (line.work()) {
                    case EXISTING -> "";
                    case NEW_CIRCUIT -> " (to be built)";
                    case BIGGER_SUPPLY -> " (after its upgrade)";
                };
        return name
                + work
                + line.unit().map(unit -> " (behind " + unit.type().id() + ")").orElse("");
    }

    /** Such as "4 of 6". */
    static String outlets(CircuitLine line) {
        return line.plugs() + " of " + line.outlets().orElse(0);
    }

    /** Such as "400 V, 3 phases". */
    static String wiring(CircuitLine line) {
        return Figures.plain(line.volts(), 1) + " V, " + Figures.count(line.phases(), "phase");
    }

    static String amps(double amps) {
        return Figures.read(amps, 1);
    }
}
