package depot.optimizer.report.table;

import static depot.optimizer.report.table.CommonColumns.CHARGER;
import static depot.optimizer.report.table.CommonColumns.CHARGER_TYPE;
import static depot.optimizer.report.table.CommonColumns.CIRCUIT;
import static depot.optimizer.report.table.CommonColumns.DAYS_PER_YEAR;
import static depot.optimizer.report.table.CommonColumns.DEPOT;
import static depot.optimizer.report.table.CommonColumns.KIND_OF_DAY;
import static depot.optimizer.report.table.CommonColumns.PACK_TYPE;
import static depot.optimizer.report.table.CommonColumns.PHASE;
import static depot.optimizer.report.table.CommonColumns.SEASON_DAYS;
import static depot.optimizer.report.table.OutputColumn.count;
import static depot.optimizer.report.table.OutputColumn.number;
import static depot.optimizer.report.table.OutputColumn.time;
import static depot.optimizer.report.table.OutputColumn.words;

import depot.optimizer.plan.ChargerLoad;
import depot.optimizer.plan.ChargerPlacement;
import depot.optimizer.plan.DayPlan;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.Plan;
import depot.optimizer.plan.UnitFeed;
import depot.optimizer.report.text.DayNames;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** What is done in the depot on each kind of day: schedule.csv and unit_feeds.csv. */
public final class ScheduleTables {

    private static final TableLayout LOADS = TableLayout.of(
            "schedule.csv",
            "group of like packs in one loading of a charger, in the order in which they charge",
            PHASE,
            DEPOT,
            KIND_OF_DAY,
            SEASON_DAYS,
            DAYS_PER_YEAR,
            time("load_time", "when the packs are put in"),
            time("collect_time", "when they are taken out"),
            count("load_minute_after_midnight", "min", "the same as a number, for sorting"),
            count("collect_minute_after_midnight", "min", "the same as a number, for sorting"),
            CHARGER,
            CIRCUIT,
            count("outlet", "", "number of the outlet that the charger is plugged into"),
            CHARGER_TYPE,
            count("charging_order", "", "position of the group in the charger, from 1"),
            PACK_TYPE,
            words("pool", "key of the depot or crew whose packs they are"),
            count("charge_to_percent", "%", "80 or 100"),
            count("packs", "packs", "packs of the group"));

    private static final TableLayout FEEDS = TableLayout.of(
            "unit_feeds.csv",
            "slice in which a load-sharing unit may draw so much energy for loads that stay until the end of the cycle",
            PHASE,
            DEPOT,
            KIND_OF_DAY,
            SEASON_DAYS,
            CIRCUIT,
            time("from_time", "start of the slice"),
            time("to_time", "end of the slice"),
            number("energy_wh", "Wh", "energy that it may draw"),
            number("average_watts", "W", "the same as a draw that never changes"));

    private ScheduleTables() {}

    /** schedule.csv: one row per group of like packs in a loading of a charger, in the order in which they charge. */
    public static CsvTable loads(Plan plan) {
        CsvTable table = new CsvTable(LOADS);
        for (DepotPlan depot : plan.depots()) {
            Map<String, ChargerPlacement> chargers =
                    depot.chargers().stream().collect(Collectors.toMap(ChargerPlacement::id, Function.identity()));
            for (int kind = 1; kind <= depot.days().size(); kind++) {
                for (ChargerLoad load : depot.days().get(kind - 1).loads()) {
                    load(table, depot, kind, load, chargers.get(load.charger()));
                }
            }
        }
        return table;
    }

    /** unit_feeds.csv: what each load-sharing unit may draw, slice by slice. */
    public static CsvTable feeds(Plan plan) {
        CsvTable table = new CsvTable(FEEDS);
        for (DepotPlan depot : plan.depots()) {
            for (int kind = 1; kind <= depot.days().size(); kind++) {
                for (UnitFeed feed : depot.days().get(kind - 1).feeds()) {
                    feed(table, depot, kind, feed);
                }
            }
        }
        return table;
    }

    private static void load(CsvTable table, DepotPlan depot, int kind, ChargerLoad load, ChargerPlacement charger) {
        if (charger == null) {
            throw new IllegalArgumentException("The plan of depot '%s' loads charger '%s', which it does not place."
                    .formatted(depot.depot(), load.charger()));
        }
        DayPlan day = depot.days().get(kind - 1);
        int order = 0;
        for (ChargerLoad.Loaded packs : load.packs()) {
            int position = ++order;
            table.row(row -> row.text(depot.phase())
                    .text(depot.depot())
                    .count(kind)
                    .text(DayNames.of(day.occurrences()))
                    .number(day.daysPerYear(), 3)
                    .time(load.loadMinute())
                    .time(load.collectMinute())
                    .count(load.loadMinute())
                    .count(load.collectMinute())
                    .text(charger.id())
                    .text(charger.circuit())
                    .count(charger.outlet())
                    .text(charger.chargerType())
                    .count(position)
                    .text(packs.packType())
                    .text(packs.pool())
                    .count(percent(packs.level()))
                    .count(packs.count()));
        }
    }

    private static int percent(ChargerLoad.Level level) {
        return level == ChargerLoad.Level.FULL ? 100 : 80;
    }

    private static void feed(CsvTable table, DepotPlan depot, int kind, UnitFeed feed) {
        DayPlan day = depot.days().get(kind - 1);
        int minutes = feed.toMinute() - feed.fromMinute();
        table.row(row -> row.text(depot.phase())
                .text(depot.depot())
                .count(kind)
                .text(DayNames.of(day.occurrences()))
                .text(feed.circuit())
                .time(feed.fromMinute())
                .time(feed.toMinute())
                .number(feed.wattHours(), 1)
                .number(minutes == 0 ? 0 : 60 * feed.wattHours() / minutes, 1));
    }
}
