package depot.optimizer.report.table;

import static depot.optimizer.report.table.CommonColumns.DEPOT;
import static depot.optimizer.report.table.CommonColumns.PHASE;
import static depot.optimizer.report.table.OutputColumn.count;
import static depot.optimizer.report.table.OutputColumn.number;
import static depot.optimizer.report.table.OutputColumn.oneOf;
import static depot.optimizer.report.table.OutputColumn.time;
import static depot.optimizer.report.table.OutputColumn.words;

import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.Plan;
import depot.optimizer.replay.DepotReplay;
import depot.optimizer.replay.ReplayReport;
import depot.optimizer.report.table.CircuitLine.Greatest;
import depot.optimizer.report.table.CircuitLine.Unit;
import depot.optimizer.report.table.CircuitLine.Work;
import depot.optimizer.report.text.DayNames;
import depot.optimizer.report.text.Figures;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** circuit_schedule.csv: the circuits and supplies of a plan, for a licensed electrician to check. */
public final class CircuitScheduleTable {

    /** Chargers are loaded together at a handover and then draw together. */
    private static final int NO_DIVERSITY = 1;

    private static final TableLayout LAYOUT = TableLayout.of(
            "circuit_schedule.csv",
            "circuit that is there or is to be built, and supply; a planning aid for a licensed electrician to check",
            PHASE,
            DEPOT,
            words("circuit", "key of the circuit, or the supply"),
            oneOf("work_wanted", Stream.of(Work.values()).map(Work::words).toList(), "what has to be done to it"),
            number("volts", "V", "its voltage, line to line on three phases"),
            count("phases", "", "1 or 3"),
            number("breaker_amps", "A", "rating of its breaker, after the work"),
            number("continuous_factor", "", "share of the rating that may be drawn for hours, as charging does"),
            number("usable_amps", "A", "rating times that share"),
            number("other_loads_amps", "A", "most that it feeds beside charging at any moment of the week"),
            number("plate_amps", "A", "plate currents of all chargers and power banks on it, added up"),
            number("diversity_factor", "", "1: none is applied, as chargers are loaded and draw together"),
            words("load_sharing_unit", "key of the type of its unit; blank: none")
                    .orBlank(),
            number("unit_setting_amps", "A", "most that the unit may draw while the circuit feeds nothing else")
                    .orBlank(),
            number(
                            "unit_setting_beside_other_loads_amps",
                            "A",
                            "most that the unit may draw while the other loads are at their highest")
                    .orBlank(),
            number("counted_amps", "A", "what counts against the limit: the plates, or what units let through of them"),
            number("margin_amps", "A", "usable, less other loads and what counts"),
            count("outlets_used", "", "outlets in use"),
            count("outlets", "", "outlets there are, those of the unit where there is one; blank: the supply")
                    .orBlank(),
            number("plug_limit_amps", "A", "most that one plug may carry; blank: no less than the breaker")
                    .orBlank(),
            number("greatest_replay_amps", "A", "most in the replay: charging on a circuit, everything on a supply")
                    .orBlank(),
            number("greatest_replay_limit_amps", "A", "what was allowed at that moment")
                    .orBlank(),
            time("greatest_replay_time", "when that was").orBlank(),
            words("greatest_replay_days", "days on which it was").orBlank());

    private CircuitScheduleTable() {}

    /**
     * The table of a whole plan.
     *
     * @throws IllegalArgumentException if the replay is of another plan
     */
    public static CsvTable of(Catalog catalog, Plan plan, ReplayReport report) {
        CsvTable table = new CsvTable(LAYOUT);
        for (DepotPlan depot : plan.depots()) {
            for (CircuitLine line : CircuitLines.of(catalog, depot, replay(report, depot))) {
                table.row(row -> line(row, depot, line));
            }
        }
        return table;
    }

    private static DepotReplay replay(ReplayReport report, DepotPlan depot) {
        return report.depots().stream()
                .filter(replay -> replay.depot().equals(depot.depot()))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(
                        "Depot '%s' is in the plan and not in its replay.".formatted(depot.depot())));
    }

    private static void line(CsvTable.Row row, DepotPlan depot, CircuitLine line) {
        Optional<Greatest> greatest = line.greatest();
        row.text(depot.phase())
                .text(depot.depot())
                .text(line.name())
                .text(line.work().words())
                .number(line.volts(), 1)
                .count(line.phases())
                .number(line.breakerAmps(), 2)
                .number(line.continuousFactor(), 3)
                .number(line.usableAmps(), 2)
                .number(line.otherLoadsAmps(), 2)
                .number(line.plateAmps(), 2)
                .count(NO_DIVERSITY)
                .text(line.unit().map(unit -> unit.type().id()).orElse(""))
                .text(line.unit()
                        .map(Unit::settingAmps)
                        .map(CircuitScheduleTable::amps)
                        .orElse(""))
                .text(line.unit()
                        .map(Unit::besideOtherLoadsAmps)
                        .map(CircuitScheduleTable::amps)
                        .orElse(""))
                .number(line.countedAmps(), 2)
                .number(line.marginAmps(), 2)
                .count(line.plugs())
                .text(
                        line.outlets().isPresent()
                                ? Integer.toString(line.outlets().getAsInt())
                                : "")
                .text(amps(line.plugAmps()))
                .text(greatest.map(found -> amps(found.peak().amps())).orElse(""))
                .text(greatest.map(found -> amps(found.peak().limitAmps())).orElse(""));
        greatest.ifPresentOrElse(found -> row.time(found.peak().minute()), row::empty);
        row.text(greatest.map(found -> DayNames.of(found.day().occurrences())).orElse(""));
    }

    private static String amps(double amps) {
        return Figures.plain(amps, 2);
    }

    private static String amps(OptionalDouble amps) {
        return amps.isPresent() ? amps(amps.getAsDouble()) : "";
    }
}
