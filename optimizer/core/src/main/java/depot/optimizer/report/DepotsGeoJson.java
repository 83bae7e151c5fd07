package depot.optimizer.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.Plan;
import depot.optimizer.replay.DayReplay;
import depot.optimizer.replay.DepotReplay;
import depot.optimizer.replay.ReplayReport;
import depot.optimizer.report.table.Catalog;
import depot.optimizer.report.table.DepotCost;
import depot.optimizer.report.table.Purchase;
import depot.optimizer.report.table.Purchase.Kind;
import depot.optimizer.report.table.Purchases;
import depot.optimizer.report.text.Amounts;
import depot.optimizer.report.text.Figures;
import depot.optimizer.scenario.Depot;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;

/**
 * The depots as points for maps: GeoJSON (RFC 7946), longitude before latitude in degrees of WGS 84. A depot without coordinates has no
 * point; the collection names it in a member of its own, {@code depots_without_coordinates}.
 */
final class DepotsGeoJson {

    /** Name of the file in a run's folder. */
    static final String FILE_NAME = "depots.geojson";

    private static final int SHARE_DECIMALS = 6;
    private static final int DAY_DECIMALS = 3;
    private static final JsonMapper MAPPER = new JsonMapper();

    private final Catalog catalog;
    private final Amounts amounts;

    private DepotsGeoJson(Catalog catalog, Currency currency) {
        this.catalog = catalog;
        this.amounts = new Amounts(currency);
    }

    /** The text of depots.geojson, depots in the order of the plan, as they are in the last phase. */
    static String write(Catalog catalog, Plan plan, ReplayReport replay) {
        DepotsGeoJson writer = new DepotsGeoJson(catalog, Currency.getInstance(plan.currency()));
        List<Map<String, Object>> features = new ArrayList<>();
        List<String> without = new ArrayList<>();
        List<String> phases = plan.phases();
        String last = phases.isEmpty() ? "" : phases.get(phases.size() - 1);
        for (DepotPlan depot : plan.depots()) {
            if (!depot.phase().equals(last)) {
                continue;
            }
            if (placed(catalog.depot(depot.depot()))) {
                features.add(writer.feature(depot, replayOf(replay, depot)));
            } else {
                without.add(depot.depot());
            }
        }
        Map<String, Object> collection = new LinkedHashMap<>();
        collection.put("type", "FeatureCollection");
        collection.put("features", features);
        collection.put("depots_without_coordinates", without);
        try {
            return MAPPER.writer(PlanMapper.printer()).writeValueAsString(collection) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("Maps, lists, texts and numbers can always be written as JSON.", e);
        }
    }

    private static boolean placed(Depot depot) {
        return depot.latitude().isPresent() && depot.longitude().isPresent();
    }

    private Map<String, Object> feature(DepotPlan plan, DepotReplay replay) {
        Depot depot = catalog.depot(plan.depot());
        Map<String, Object> point = new LinkedHashMap<>();
        point.put("type", "Point");
        point.put(
                "coordinates",
                List.of(depot.longitude().getAsDouble(), depot.latitude().getAsDouble()));
        Map<String, Object> feature = new LinkedHashMap<>();
        feature.put("type", "Feature");
        feature.put("id", depot.id());
        feature.put("geometry", point);
        feature.put("properties", properties(depot, plan, replay));
        return feature;
    }

    private Map<String, Object> properties(Depot depot, DepotPlan plan, DepotReplay replay) {
        List<Purchase> needed = Purchases.of(catalog, plan);
        Map<String, Object> properties = new LinkedHashMap<>();
        properties.put("depot", depot.id());
        properties.put("name", depot.name());
        depot.region().ifPresent(region -> properties.put("region", region));
        properties.put("packs", pieces(needed, Set.of(Kind.PACK)));
        properties.put("chargers", pieces(needed, Set.of(Kind.CHARGER, Kind.PORTABLE_CHARGER)));
        properties.put("present_cost", presentCost(plan));
        properties.put("currency", amounts.code());
        properties.put("gap", number(plan.stop().certificate().gap(), SHARE_DECIMALS));
        properties.put("days_met_per_year", days(replay, day -> day.outcome() == DayReplay.Outcome.MET));
        properties.put("days_per_year", days(replay, day -> true));
        properties.put("proven", replay.proven());
        return properties;
    }

    private static int pieces(List<Purchase> needed, Set<Kind> kinds) {
        return needed.stream()
                .filter(purchase -> kinds.contains(purchase.kind()))
                .mapToInt(Purchase::needed)
                .sum();
    }

    private BigDecimal presentCost(DepotPlan plan) {
        return amounts.rounded(DepotCost.present(plan));
    }

    private static BigDecimal days(DepotReplay replay, Predicate<DayReplay> counted) {
        return number(
                replay.days().stream()
                        .filter(counted)
                        .mapToDouble(DayReplay::daysPerYear)
                        .sum(),
                DAY_DECIMALS);
    }

    private static BigDecimal number(double value, int decimals) {
        return new BigDecimal(Figures.plain(value, decimals));
    }

    private static DepotReplay replayOf(ReplayReport replay, DepotPlan depot) {
        return replay.depots().stream()
                .filter(any -> any.depot().equals(depot.depot()) && any.phase().equals(depot.phase()))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("The replay has no depot '" + depot.depot() + "'."));
    }
}
