package depot.optimizer.report.table;

import static depot.optimizer.report.table.CommonColumns.DEPOT;
import static depot.optimizer.report.table.CommonColumns.PACK_TYPE;
import static depot.optimizer.report.table.CommonColumns.PHASE;
import static depot.optimizer.report.table.OutputColumn.count;
import static depot.optimizer.report.table.OutputColumn.number;
import static depot.optimizer.report.table.OutputColumn.words;

import depot.optimizer.plan.DayPlan;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.PackStock;
import depot.optimizer.plan.Plan;
import depot.optimizer.plan.TripPlan;
import depot.optimizer.plan.TripPlan.Carried;
import depot.optimizer.scenario.PackSharing;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;

/** How many packs each pool has, how many of them are out at most, and how many a crew carries at most: packs.csv and the pages. */
public final class PackCounts {

    private static final TableLayout LAYOUT = TableLayout.of(
            "packs.csv",
            "pool and pack type, then crew and pack type",
            PHASE,
            DEPOT,
            words("pool", "key of the depot or crew whose packs they are"),
            words("crew", "key of the crew; blank in the row of a pool").orBlank(),
            PACK_TYPE,
            count("packs_in_pool", "packs", "packs that the pool has; blank in the row of a crew")
                    .orBlank(),
            count("owned_packs", "packs", "those of them that are there already")
                    .orBlank(),
            count("bought_packs", "packs", "those of them that are bought").orBlank(),
            count("most_packs_out_at_once", "packs", "most of them that are on trips at the same time")
                    .orBlank(),
            count("depot_float_packs", "packs", "those that are never out at the same time as the others")
                    .orBlank(),
            number("packs_replaced_per_year", "packs/year", "packs that wear out in a year")
                    .orBlank(),
            count("most_packs_carried_per_trip", "packs", "most that the crew takes along; blank in the row of a pool")
                    .orBlank());

    private PackCounts() {}

    /** packs.csv: for each pool what it has, then for each crew what it carries at most on one trip. */
    public static CsvTable table(Catalog catalog, Plan plan) {
        CsvTable table = new CsvTable(LAYOUT);
        for (DepotPlan depot : plan.depots()) {
            pools(catalog, depot, table);
            crews(catalog, depot, table);
        }
        return table;
    }

    /** Packs of a type on the road at the same time, at most, over all kinds of day; those of one pool. */
    public static int mostOut(Catalog catalog, DepotPlan plan, PackStock stock) {
        Predicate<TripPlan> ofPool = catalog.scenario().packSharing() == PackSharing.DEPOT
                ? trip -> true
                : trip -> trip.crew().equals(stock.pool());
        int most = 0;
        for (DayPlan day : plan.days()) {
            List<TripPlan> trips = day.trips().stream().filter(ofPool).toList();
            for (TripPlan start : trips) {
                int out = trips.stream()
                        .filter(trip ->
                                trip.leaveMinute() <= start.leaveMinute() && trip.returnMinute() > start.leaveMinute())
                        .mapToInt(trip -> carried(trip, stock.packType()))
                        .sum();
                most = Math.max(most, out);
            }
        }
        return most;
    }

    /** By crew, then by pack type: most packs carried on one trip. */
    public static Map<String, Map<String, Integer>> mostCarried(DepotPlan plan) {
        Map<String, Map<String, Integer>> most = new TreeMap<>();
        for (DayPlan day : plan.days()) {
            for (TripPlan trip : day.trips()) {
                Map<String, Integer> ofCrew = most.computeIfAbsent(trip.crew(), crew -> new TreeMap<>());
                trip.carried()
                        .forEach(carried ->
                                ofCrew.merge(carried.packType(), carried(trip, carried.packType()), Math::max));
            }
        }
        return most;
    }

    private static int carried(TripPlan trip, String packType) {
        return trip.carried().stream()
                .filter(carried -> carried.packType().equals(packType))
                .mapToInt(PackCounts::packs)
                .sum();
    }

    private static int packs(Carried carried) {
        return carried.full() + carried.at80();
    }

    private static void pools(Catalog catalog, DepotPlan depot, CsvTable table) {
        for (PackStock stock : depot.packs()) {
            int out = mostOut(catalog, depot, stock);
            table.row(row -> row.text(depot.phase())
                    .text(depot.depot())
                    .text(stock.pool())
                    .empty()
                    .text(stock.packType())
                    .count(stock.count())
                    .count(stock.owned())
                    .count(stock.count() - stock.owned())
                    .count(out)
                    .count(stock.count() - out)
                    .number(stock.replacedPerYear(), 3)
                    .empty());
        }
    }

    private static void crews(Catalog catalog, DepotPlan depot, CsvTable table) {
        boolean pooled = catalog.scenario().packSharing() == PackSharing.DEPOT;
        mostCarried(depot)
                .forEach((crew, types) -> types.forEach((type, packs) -> table.row(row -> row.text(depot.phase())
                        .text(depot.depot())
                        .text(pooled ? depot.depot() : crew)
                        .text(crew)
                        .text(type)
                        .empty()
                        .empty()
                        .empty()
                        .empty()
                        .empty()
                        .empty()
                        .count(packs))));
    }
}
