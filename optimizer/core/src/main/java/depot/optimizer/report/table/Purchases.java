package depot.optimizer.report.table;

import static depot.optimizer.report.table.CommonColumns.CURRENCY;
import static depot.optimizer.report.table.CommonColumns.DEPOT;
import static depot.optimizer.report.table.CommonColumns.PHASE;
import static depot.optimizer.report.table.OutputColumn.amount;
import static depot.optimizer.report.table.OutputColumn.count;
import static depot.optimizer.report.table.OutputColumn.oneOf;
import static depot.optimizer.report.table.OutputColumn.words;

import depot.optimizer.plan.ChargerPlacement;
import depot.optimizer.plan.CrewKit;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.PackStock;
import depot.optimizer.plan.Plan;
import depot.optimizer.plan.UnitPlacement;
import depot.optimizer.report.table.Purchase.Kind;
import depot.optimizer.report.text.Figures;
import depot.optimizer.scenario.ChargerType;
import depot.optimizer.scenario.SharingUnitType;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/** What is bought where: purchases.csv, and the lists on the pages. */
public final class Purchases {

    private static final TableLayout LAYOUT = TableLayout.of(
            "purchases.csv",
            "depot and item",
            PHASE,
            DEPOT,
            oneOf("kind", Stream.of(Kind.values()).map(Kind::words).toList(), "what kind of item it is"),
            words("item", "key of its type or circuit, or the amps of a bigger supply"),
            count("needed_pieces", "pieces", "pieces in use, owned ones included"),
            count("owned_pieces", "pieces", "those of them that are there already"),
            count("bought_pieces", "pieces", "those of them that are bought"),
            amount("unit_price", "price of a piece without installation"),
            amount("install_cost_per_piece", "installation of a piece"),
            amount("purchase_total", "what the bought pieces cost at once, installation included"),
            CURRENCY);

    private final Catalog catalog;
    private final DepotPlan plan;
    private final Optional<DepotPlan> before;
    private final Map<Kind, Map<String, int[]>> counts = new EnumMap<>(Kind.class);

    private Purchases(Catalog catalog, DepotPlan plan, Optional<DepotPlan> before) {
        this.catalog = catalog;
        this.plan = plan;
        this.before = before;
    }

    /** What one depot needs in the first phase, by kind and item. */
    public static List<Purchase> of(Catalog catalog, DepotPlan plan) {
        return of(catalog, plan, Optional.empty());
    }

    /**
     * What one depot needs, by kind and item.
     *
     * @param before its plan for the phase before
     */
    public static List<Purchase> of(Catalog catalog, DepotPlan plan, Optional<DepotPlan> before) {
        Purchases purchases = new Purchases(catalog, plan, before);
        purchases.countAll();
        return purchases.list();
    }

    /** purchases.csv: one row per depot and item. */
    public static CsvTable table(Catalog catalog, Plan plan) {
        CsvTable table = new CsvTable(LAYOUT);
        for (DepotPlan depot : plan.depots()) {
            for (Purchase line : of(catalog, depot, plan.before(depot))) {
                table.row(row -> row.text(line.phase())
                        .text(line.depot())
                        .text(line.kind().words())
                        .text(line.item())
                        .count(line.needed())
                        .count(line.owned())
                        .count(line.bought())
                        .exact(line.unitPrice())
                        .exact(line.installCost())
                        .exact(line.total())
                        .text(plan.currency()));
            }
        }
        return table;
    }

    private void countAll() {
        for (PackStock stock : plan.packs()) {
            add(Kind.PACK, stock.packType(), stock.count(), stock.owned());
        }
        for (ChargerPlacement charger : plan.chargers()) {
            add(Kind.CHARGER, charger.chargerType(), 1, charger.owned() ? 1 : 0);
        }
        for (CrewKit kit : plan.kits()) {
            Kind kind = catalog.portableCharger(kit.item()).isPresent() ? Kind.PORTABLE_CHARGER : Kind.POWER_BANK;
            add(kind, kit.item(), kit.count(), kit.owned());
        }
        for (UnitPlacement unit : plan.units()) {
            add(Kind.SHARING_UNIT, unit.unitType(), 1, unit.owned() ? 1 : 0);
        }
        List<String> builtBefore = before.map(DepotPlan::circuitsBuilt).orElse(List.of());
        plan.circuitsBuilt().forEach(circuit -> add(Kind.CIRCUIT, circuit, 1, builtBefore.contains(circuit) ? 1 : 0));
        if (plan.supplyUpgraded()) {
            double amps = catalog.depot(plan.depot()).supplyUpgradeAmps();
            boolean there = before.map(DepotPlan::supplyUpgraded).orElse(false);
            add(Kind.SUPPLY, Figures.plain(amps, 1) + " A", 1, there ? 1 : 0);
        }
    }

    private void add(Kind kind, String item, int needed, int owned) {
        int[] sums = counts.computeIfAbsent(kind, any -> new TreeMap<>()).computeIfAbsent(item, any -> new int[2]);
        sums[0] += needed;
        sums[1] += owned;
    }

    private List<Purchase> list() {
        List<Purchase> lines = new ArrayList<>();
        counts.forEach((kind, items) -> items.forEach((item, sums) -> lines.add(priced(kind, item, sums[0], sums[1]))));
        return lines;
    }

    private Purchase priced(Kind kind, String item, int needed, int owned) {
        Price price = price(kind, item);
        return new Purchase(plan.phase(), plan.depot(), kind, item, needed, owned, price.piece(), price.installation());
    }

    private Price price(Kind kind, String item) {
        return switch (kind) {
            case PACK -> Price.of(catalog.packType(item).price());
            case CHARGER, PORTABLE_CHARGER -> {
                ChargerType type = catalog.chargerType(item);
                yield new Price(type.price(), type.installCost());
            }
            case SHARING_UNIT -> {
                SharingUnitType type = catalog.unitType(item);
                yield new Price(type.price(), type.installCost());
            }
            case POWER_BANK -> Price.of(catalog.bankType(item).price());
            case CIRCUIT -> Price.of(catalog.circuit(plan.depot(), item).installCost());
            case SUPPLY -> Price.of(catalog.depot(plan.depot()).supplyUpgradeCost());
        };
    }

    private record Price(BigDecimal piece, BigDecimal installation) {

        static Price of(BigDecimal piece) {
            return new Price(piece, BigDecimal.ZERO);
        }
    }
}
