package depot.optimizer.report.table;

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

    private ReplayTables() {}

    /** replay.csv: one row per depot and group of season days that run alike. */
    public static CsvTable days(ReplayReport report, String currency) {
        CsvTable table = new CsvTable(
                "replay.csv",
                "depot",
                "kind_of_day",
                "season_days",
                "days_per_year",
                "result",
                "short_wh",
                "least_energy_left_wh",
                "least_left_crew",
                "least_left_trip",
                "least_left_stop",
                "least_left_pack_family",
                "least_margin_minutes",
                "least_margin_charger",
                "highest_share_of_a_limit_percent",
                "highest_share_circuit",
                "energy_kwh_per_day",
                "energy_cost_per_day",
                "planned_energy_cost_per_day",
                "currency",
                "demand_kw",
                "rules_broken");
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
        row.text(depot.depot())
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
        CsvTable table = new CsvTable(
                "circuit_load.csv",
                "depot",
                "kind_of_day",
                "season_days",
                "circuit",
                "peak_time",
                "peak_amps",
                "limit_amps",
                "share_of_limit_percent",
                "margin_amps");
        for (DepotReplay depot : report.depots()) {
            for (DayReplay day : depot.days()) {
                for (Peak peak : day.peaks()) {
                    table.row(row -> row.text(depot.depot())
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
        CsvTable table = new CsvTable(
                "load_timing.csv",
                "depot",
                "kind_of_day",
                "season_days",
                "charger",
                "circuit",
                "load_time",
                "ready_time",
                "collect_time",
                "margin_minutes",
                "packs");
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
        row.text(depot.depot())
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
        CsvTable table = new CsvTable(
                "violations.csv",
                "depot",
                "kind_of_day",
                "season_day",
                "rule",
                "at_fault",
                "time",
                "measured",
                "limit",
                "message");
        for (Violation violation : report.violations()) {
            table.row(row -> {
                row.text(violation.depot())
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
        return table;
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
