package depot.optimizer.report.table;

import static depot.optimizer.report.table.CommonColumns.CHARGER;
import static depot.optimizer.report.table.CommonColumns.CIRCUIT;
import static depot.optimizer.report.table.CommonColumns.CURRENCY;
import static depot.optimizer.report.table.CommonColumns.DAYS_PER_YEAR;
import static depot.optimizer.report.table.CommonColumns.DEPOT;
import static depot.optimizer.report.table.CommonColumns.KIND_OF_DAY;
import static depot.optimizer.report.table.CommonColumns.PHASE;
import static depot.optimizer.report.table.CommonColumns.SEASON_DAYS;
import static depot.optimizer.report.table.OutputColumn.amount;
import static depot.optimizer.report.table.OutputColumn.count;
import static depot.optimizer.report.table.OutputColumn.number;
import static depot.optimizer.report.table.OutputColumn.oneOf;
import static depot.optimizer.report.table.OutputColumn.time;
import static depot.optimizer.report.table.OutputColumn.timeOr;
import static depot.optimizer.report.table.OutputColumn.words;

import depot.optimizer.replay.DayReplay;
import depot.optimizer.replay.DayReplay.Peak;
import depot.optimizer.replay.DayReplay.TripMargin;
import depot.optimizer.replay.DepotReplay;
import depot.optimizer.replay.LoadTiming;
import depot.optimizer.replay.ReplayReport;
import depot.optimizer.replay.Violation;
import depot.optimizer.report.text.DayNames;
import depot.optimizer.report.text.Figures;
import java.util.Optional;

/** What the replay found: replay.csv, circuit_load.csv, load_timing.csv and violations.csv. */
public final class ReplayTables {

    private static final TableLayout DAYS = TableLayout.of(
            "replay.csv",
            "depot and kind of day",
            PHASE,
            DEPOT,
            KIND_OF_DAY,
            SEASON_DAYS,
            DAYS_PER_YEAR,
            oneOf("result", Words.outcomes(), "whether the work of the day was covered"),
            number("short_wh", "Wh", "work that the packs did not cover"),
            number("least_energy_left_wh", "Wh", "least energy left at any stop; below 0: it ran short")
                    .orBlank(),
            words("least_left_crew", "crew that had it left").orBlank(),
            count("least_left_trip", "", "number of its trip").orBlank(),
            count("least_left_stop", "", "number of the stop").orBlank(),
            words("least_left_pack_family", "family of its packs").orBlank(),
            count("least_margin_minutes", "min", "shortest time between packs being ready and being collected")
                    .orBlank(),
            words("least_margin_charger", "charger that they were in").orBlank(),
            number("highest_share_of_a_limit_percent", "%", "highest current of a circuit or supply, of its limit")
                    .orBlank(),
            words("highest_share_circuit", "circuit or supply that had it").orBlank(),
            number("energy_kwh_per_day", "kWh", "energy drawn from the mains for charging"),
            amount("energy_cost_per_day", "its cost as the replay measured it"),
            amount("planned_energy_cost_per_day", "its cost as planned"),
            CURRENCY,
            number("demand_kw", "kW", "highest average draw of the depot that a demand charge is paid for"),
            count("rules_broken", "rules", "rows of violations.csv that belong to it"));

    private static final TableLayout CIRCUIT_LOAD = TableLayout.of(
            "circuit_load.csv",
            "depot, kind of day and circuit or supply",
            PHASE,
            DEPOT,
            KIND_OF_DAY,
            SEASON_DAYS,
            words("circuit", "key of the circuit, or the supply"),
            time("peak_time", "when it carried most"),
            number("peak_amps", "A", "most that it carried"),
            number("limit_amps", "A", "most that it may carry at that time"),
            number("share_of_limit_percent", "%", "the peak as a share of the limit; blank: nothing may be drawn")
                    .orBlank(),
            number("margin_amps", "A", "limit less peak"));

    private static final TableLayout LOAD_TIMING = TableLayout.of(
            "load_timing.csv",
            "loading of a charger",
            PHASE,
            DEPOT,
            KIND_OF_DAY,
            SEASON_DAYS,
            CHARGER,
            CIRCUIT,
            time("load_time", "when packs were put in"),
            timeOr("never", "ready_time", "when the last of them was charged as far as planned"),
            time("collect_time", "when they were taken out"),
            count("margin_minutes", "min", "from ready to collected; blank: never ready")
                    .orBlank(),
            count("packs", "packs", "packs in it"));

    private static final TableLayout VIOLATIONS = TableLayout.of(
            "violations.csv",
            "broken rule; only the heading for a proven plan",
            PHASE,
            DEPOT,
            count("kind_of_day", "", "number of the kind of day of the depot, from 1; blank: every day")
                    .orBlank(),
            words("season_day", "day on which it was broken"),
            oneOf("rule", Words.rules(), "the rule"),
            words("at_fault", "what broke it, such as a charger or a circuit"),
            time("time", "when; blank: not at one moment").orBlank(),
            number("measured", "as in column message", "what the replay measured; blank: nothing to measure")
                    .orBlank(),
            number("limit", "as in column message", "what the rule allows; blank: nothing to measure")
                    .orBlank(),
            words("message", "what happened, in words with units"));

    private ReplayTables() {}

    /** replay.csv: one row per depot and group of season days that run alike. */
    public static CsvTable days(ReplayReport report, String currency) {
        CsvTable table = new CsvTable(DAYS);
        for (DepotReplay depot : report.depots()) {
            depot.days().forEach(day -> table.row(row -> day(row, depot, day, currency)));
        }
        return table;
    }

    private static void day(CsvTable.Row row, DepotReplay depot, DayReplay day, String currency) {
        Optional<TripMargin> least = day.lowestMargin();
        Optional<LoadTiming> tightest = day.tightestLoad();
        Optional<Peak> highest = day.peaks().stream()
                .filter(peak -> peak.limitAmps() > 0)
                .max((a, b) -> Double.compare(share(a), share(b)));
        row.text(depot.phase())
                .text(depot.depot())
                .count(day.day() + 1)
                .text(DayNames.of(day.occurrences()))
                .number(day.daysPerYear(), 3)
                .text(Words.of(day.outcome()))
                .number(day.shortWh(), 1)
                .text(least.map(margin -> Figures.plain(margin.wattHours(), 1)).orElse(""))
                .text(least.map(TripMargin::crew).orElse(""))
                .text(least.map(margin -> Integer.toString(margin.trip())).orElse(""))
                .text(least.map(margin -> Integer.toString(margin.stop())).orElse(""))
                .text(least.map(TripMargin::family).orElse(""))
                .text(tightest.map(ReplayTables::margin).orElse(""))
                .text(tightest.map(LoadTiming::charger).orElse(""))
                .text(highest.map(peak -> Figures.plain(100 * share(peak), 1)).orElse(""))
                .text(highest.map(Peak::circuit).orElse(""))
                .number(
                        day.energy().stream()
                                .mapToDouble(DayReplay.EnergySpan::kwh)
                                .sum(),
                        4)
                .text(Figures.plain(day.energyCost(), 4))
                .text(Figures.plain(day.plannedEnergyCost(), 4))
                .text(currency)
                .number(day.demandKw(), 3)
                .count(day.violations().size());
    }

    /** circuit_load.csv: highest load of each circuit and supply on each day. */
    public static CsvTable circuitLoad(ReplayReport report) {
        CsvTable table = new CsvTable(CIRCUIT_LOAD);
        for (DepotReplay depot : report.depots()) {
            for (DayReplay day : depot.days()) {
                for (Peak peak : day.peaks()) {
                    table.row(row -> row.text(depot.phase())
                            .text(depot.depot())
                            .count(day.day() + 1)
                            .text(DayNames.of(day.occurrences()))
                            .text(peak.circuit())
                            .time(peak.minute())
                            .number(peak.amps(), 3)
                            .number(peak.limitAmps(), 3)
                            .text(peak.limitAmps() > 0 ? Figures.plain(100 * share(peak), 1) : "")
                            .number(peak.limitAmps() - peak.amps(), 3));
                }
            }
        }
        return table;
    }

    /** load_timing.csv: when each loading was ready, and how long before it was collected. */
    public static CsvTable loadTiming(ReplayReport report) {
        CsvTable table = new CsvTable(LOAD_TIMING);
        for (DepotReplay depot : report.depots()) {
            for (DayReplay day : depot.days()) {
                for (LoadTiming load : day.loads()) {
                    table.row(row -> timing(row, depot, day, load));
                }
            }
        }
        return table;
    }

    private static void timing(CsvTable.Row row, DepotReplay depot, DayReplay day, LoadTiming load) {
        row.text(depot.phase())
                .text(depot.depot())
                .count(day.day() + 1)
                .text(DayNames.of(day.occurrences()))
                .text(load.charger())
                .text(load.circuit())
                .time(load.loadMinute());
        if (load.readyMinute() == LoadTiming.NEVER) {
            row.text("never");
        } else {
            row.time(load.readyMinute());
        }
        row.time(load.collectMinute()).text(margin(load)).count(load.packs());
    }

    /** violations.csv: rules that the plan breaks; only the heading for a proven plan. */
    public static CsvTable violations(ReplayReport report) {
        CsvTable table = new CsvTable(VIOLATIONS);
        report.fleet().forEach(violation -> violation(table, "", violation));
        for (DepotReplay depot : report.depots()) {
            depot.allViolations().forEach(violation -> violation(table, depot.phase(), violation));
        }
        return table;
    }

    private static void violation(CsvTable table, String phase, Violation violation) {
        table.row(row -> {
            row.text(phase)
                    .text(violation.depot())
                    .text(violation.day() == Violation.EVERY_DAY ? "" : Integer.toString(violation.day() + 1))
                    .text(violation.occurrence().map(DayNames::of).orElse("every day"))
                    .text(Words.of(violation.kind()))
                    .text(violation.subject());
            if (violation.minute() == Violation.NO_MINUTE) {
                row.empty();
            } else {
                row.time(violation.minute());
            }
            row.text(finite(violation.measured()))
                    .text(finite(violation.limit()))
                    .text(violation.message());
        });
    }

    private static double share(Peak peak) {
        return peak.amps() / peak.limitAmps();
    }

    private static String margin(LoadTiming load) {
        return load.readyMinute() == LoadTiming.NEVER ? "" : Integer.toString(load.marginMinutes());
    }

    private static String finite(double value) {
        return Double.isFinite(value) ? Figures.plain(value, 3) : "";
    }
}
