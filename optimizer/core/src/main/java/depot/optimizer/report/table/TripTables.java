package depot.optimizer.report.table;

import static depot.optimizer.report.table.CommonColumns.CREW;
import static depot.optimizer.report.table.CommonColumns.DEPOT;
import static depot.optimizer.report.table.CommonColumns.KIND_OF_DAY;
import static depot.optimizer.report.table.CommonColumns.PACK_TYPE;
import static depot.optimizer.report.table.CommonColumns.PHASE;
import static depot.optimizer.report.table.CommonColumns.SEASON_DAYS;
import static depot.optimizer.report.table.CommonColumns.TRIP;
import static depot.optimizer.report.table.OutputColumn.count;
import static depot.optimizer.report.table.OutputColumn.oneOf;
import static depot.optimizer.report.table.OutputColumn.time;
import static depot.optimizer.report.table.OutputColumn.words;

import depot.optimizer.plan.CrewKit;
import depot.optimizer.plan.DayPlan;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.Plan;
import depot.optimizer.plan.TripPlan;
import depot.optimizer.report.text.DayNames;

/** What crews take along: trips.csv, road_charges.csv and kits.csv. */
public final class TripTables {

    private static final TableLayout CARRIED = TableLayout.of(
            "trips.csv",
            "trip and pack type",
            PHASE,
            DEPOT,
            KIND_OF_DAY,
            SEASON_DAYS,
            CREW,
            TRIP,
            time("leave_time", "when the trip leaves"),
            time("return_time", "when it is back"),
            PACK_TYPE,
            count("full_packs", "packs", "full packs on board when it leaves"),
            count("packs_at_80_percent", "packs", "packs at 80 % on board when it leaves"));

    private static final TableLayout ROAD_CHARGES = TableLayout.of(
            "road_charges.csv",
            "charge on the way",
            PHASE,
            DEPOT,
            KIND_OF_DAY,
            SEASON_DAYS,
            CREW,
            TRIP,
            oneOf("power_from", Words.roadSources(), "where the power comes from"),
            count("emptied_at_stop", "", "number of the stop at which the packs have been emptied"),
            count("used_from_stop", "", "number of the stop from which they are used again"),
            time("from_time", "start of the charge"),
            time("to_time", "end of the charge"),
            words("charger_type", "key of the charger type that the crew carries; blank at another depot")
                    .orBlank(),
            PACK_TYPE,
            count("packs", "packs", "packs that are charged"));

    private static final TableLayout KITS = TableLayout.of(
            "kits.csv",
            "crew and type of portable charger or power bank",
            PHASE,
            DEPOT,
            CREW,
            words("item", "key of the charger or power-bank type"),
            count("pieces", "pieces", "pieces that the crew carries on every trip"),
            count("owned_pieces", "pieces", "those of them that are there already"));

    private TripTables() {}

    /** trips.csv: packs on board when a trip leaves, one row per trip and pack type. */
    public static CsvTable carried(Plan plan) {
        CsvTable table = new CsvTable(CARRIED);
        each(plan, (depot, kind, day, trip) -> {
            for (TripPlan.Carried packs : trip.carried()) {
                table.row(row -> row.text(depot.phase())
                        .text(depot.depot())
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
        CsvTable table = new CsvTable(ROAD_CHARGES);
        each(plan, (depot, kind, day, trip) -> {
            for (TripPlan.RoadCharge charge : trip.roadCharges()) {
                table.row(row -> row.text(depot.phase())
                        .text(depot.depot())
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
        CsvTable table = new CsvTable(KITS);
        for (DepotPlan depot : plan.depots()) {
            for (CrewKit kit : depot.kits()) {
                table.row(row -> row.text(depot.phase())
                        .text(depot.depot())
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
