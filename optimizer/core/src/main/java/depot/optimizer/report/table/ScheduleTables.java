package depot.optimizer.report.table;

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

    private ScheduleTables() {}

    /** schedule.csv: one row per group of like packs in a loading of a charger, in the order in which they charge. */
    public static CsvTable loads(Plan plan) {
        CsvTable table = new CsvTable(
                "schedule.csv",
                "depot",
                "kind_of_day",
                "season_days",
                "days_per_year",
                "load_time",
                "collect_time",
                "load_minute_after_midnight",
                "collect_minute_after_midnight",
                "charger",
                "circuit",
                "outlet",
                "charger_type",
                "charging_order",
                "pack_type",
                "pool",
                "charge_to_percent",
                "packs");
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
        CsvTable table = new CsvTable(
                "unit_feeds.csv",
                "depot",
                "kind_of_day",
                "season_days",
                "circuit",
                "from_time",
                "to_time",
                "energy_wh",
                "average_watts");
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
            table.row(row -> row.text(depot.depot())
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
        table.row(row -> row.text(depot.depot())
                .count(kind)
                .text(DayNames.of(day.occurrences()))
                .text(feed.circuit())
                .time(feed.fromMinute())
                .time(feed.toMinute())
                .number(feed.wattHours(), 1)
                .number(minutes == 0 ? 0 : 60 * feed.wattHours() / minutes, 1));
    }
}
