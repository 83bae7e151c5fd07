package depot.optimizer.report.table;

import depot.optimizer.plan.CrewKit;
import depot.optimizer.plan.DayPlan;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.Plan;
import depot.optimizer.plan.TripPlan;
import depot.optimizer.report.text.DayNames;

/** What crews take along: trips.csv, road_charges.csv and kits.csv. */
public final class TripTables {

    private TripTables() {}

    /** trips.csv: packs on board when a trip leaves, one row per trip and pack type. */
    public static CsvTable carried(Plan plan) {
        CsvTable table = new CsvTable(
                "trips.csv",
                "depot",
                "kind_of_day",
                "season_days",
                "crew",
                "trip",
                "leave_time",
                "return_time",
                "pack_type",
                "full_packs",
                "packs_at_80_percent");
        each(plan, (depot, kind, day, trip) -> {
            for (TripPlan.Carried packs : trip.carried()) {
                table.row(row -> row.text(depot.depot())
                        .count(kind)
                        .text(DayNames.of(day.occurrences()))
                        .text(trip.crew())
                        .count(trip.trip())
                        .time(trip.leaveMinute())
                        .time(trip.returnMinute())
                        .text(packs.packType())
                        .count(packs.full())
                        .count(packs.at80()));
            }
        });
        return table;
    }

    /** road_charges.csv: packs recharged on the way, one row per charge. */
    public static CsvTable roadCharges(Plan plan) {
        CsvTable table = new CsvTable(
                "road_charges.csv",
                "depot",
                "kind_of_day",
                "season_days",
                "crew",
                "trip",
                "power_from",
                "emptied_at_stop",
                "used_from_stop",
                "from_time",
                "to_time",
                "charger_type",
                "pack_type",
                "packs");
        each(plan, (depot, kind, day, trip) -> {
            for (TripPlan.RoadCharge charge : trip.roadCharges()) {
                table.row(row -> row.text(depot.depot())
                        .count(kind)
                        .text(DayNames.of(day.occurrences()))
                        .text(trip.crew())
                        .count(trip.trip())
                        .text(Words.of(charge.source()))
                        .count(charge.afterStop())
                        .count(charge.beforeStop())
                        .time(charge.fromMinute())
                        .time(charge.toMinute())
                        .text(charge.chargerType())
                        .text(charge.packType())
                        .count(charge.packs()));
            }
        });
        return table;
    }

    /** kits.csv: portable chargers and power banks that a crew carries on every trip. */
    public static CsvTable kits(Plan plan) {
        CsvTable table = new CsvTable("kits.csv", "depot", "crew", "item", "pieces", "owned_pieces");
        for (DepotPlan depot : plan.depots()) {
            for (CrewKit kit : depot.kits()) {
                table.row(row -> row.text(depot.depot())
                        .text(kit.crew())
                        .text(kit.item())
                        .count(kit.count())
                        .count(kit.owned()));
            }
        }
        return table;
    }

    private static void each(Plan plan, TripVisitor visitor) {
        for (DepotPlan depot : plan.depots()) {
            for (int kind = 1; kind <= depot.days().size(); kind++) {
                DayPlan day = depot.days().get(kind - 1);
                for (TripPlan trip : day.trips()) {
                    visitor.visit(depot, kind, day, trip);
                }
            }
        }
    }

    private interface TripVisitor {
        void visit(DepotPlan depot, int kind, DayPlan day, TripPlan trip);
    }
}
