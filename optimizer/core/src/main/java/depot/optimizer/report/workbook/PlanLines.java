package depot.optimizer.report.workbook;

import depot.optimizer.finance.CashFlow;
import depot.optimizer.finance.Outlay;
import depot.optimizer.finance.PricedLine;
import depot.optimizer.plan.CostLine.Category;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.FleetCost;
import depot.optimizer.plan.Plan;
import depot.optimizer.report.table.Catalog;
import depot.optimizer.scenario.Phase;
import depot.optimizer.scenario.Scenario;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;

/**
 * A plan's cost lines sorted by how a workbook reckons with them.
 *
 * @param phases budget periods, in order
 * @param items everything bought or owned, once each, by category and name
 * @param counts how many of each item each depot buys and owns in each phase
 * @param running what comes every year of a phase, over all depots
 * @param orders quantity prices and spare pieces of the fleet
 */
record PlanLines(
        List<Phase> phases, List<Item> items, List<Count> counts, List<Running> running, List<FleetOrder> orders) {

    /**
     * Something that is bought.
     *
     * @param lifeYears empty: it is not replaced at the end of a life
     * @param kept whether it is worth its price at the end, as packs are
     */
    record Item(
            Category category, String name, double price, double installCost, OptionalDouble lifeYears, boolean kept) {}

    /**
     * Pieces of an item at a depot.
     *
     * @param phase number of the phase in which they are bought or first used, from 1
     * @param item index of the item
     */
    record Count(int phase, String depot, int item, int bought, int owned) {}

    /**
     * Something that comes every year of a phase.
     *
     * @param pricePerUnit in the first year of the horizon
     */
    record Running(Category category, int phase, String item, double quantity, String unit, double pricePerUnit) {}

    /**
     * What the fleet pays less because it buys many, or pays for pieces that it buys only to have many.
     *
     * @param item index of the item, -1: no depot buys or owns it
     * @param ownPrice price of a piece by itself
     * @param paid price of a piece
     */
    record FleetOrder(int phase, FleetCost.Kind kind, String name, int item, int pieces, double ownPrice, double paid) {

        /** Whether pieces are bought on top; else a reduction of what depots buy. */
        boolean spare() {
            return kind == FleetCost.Kind.SPARE_PIECES;
        }
    }

    private record ItemKey(Category category, String name) {}

    private record RunningKey(Category category, int phase, String item, String unit, double price) {}

    private static final Comparator<ItemKey> BY_ITEM =
            Comparator.comparing(ItemKey::category).thenComparing(ItemKey::name);

    private static final Set<Category> TYPES =
            EnumSet.of(Category.PACKS, Category.CHARGERS, Category.SHARING_UNITS, Category.POWER_BANKS);

    private static final Comparator<RunningKey> BY_PRICE = Comparator.comparing(RunningKey::category)
            .thenComparingInt(RunningKey::phase)
            .thenComparing(RunningKey::item)
            .thenComparingDouble(RunningKey::price);

    static PlanLines of(Scenario scenario, Plan plan) {
        Map<ItemKey, Item> items = new TreeMap<>(BY_ITEM);
        Map<RunningKey, Running> running = new TreeMap<>(BY_PRICE);
        for (DepotPlan depot : plan.depots()) {
            for (PricedLine line : CashFlow.lines(scenario, plan, depot)) {
                addItem(items, line);
                addRunning(running, line);
            }
        }
        List<ItemKey> keys = List.copyOf(items.keySet());
        List<Count> counts = new ArrayList<>();
        for (DepotPlan depot : plan.depots()) {
            Map<Integer, Count> ofDepot = new TreeMap<>();
            for (PricedLine line : CashFlow.lines(scenario, plan, depot)) {
                int item = keys.indexOf(new ItemKey(line.category(), line.item()));
                if (item >= 0) {
                    ofDepot.merge(item, count(depot.depot(), item, line), PlanLines::both);
                }
            }
            counts.addAll(ofDepot.values());
        }
        return new PlanLines(
                scenario.coupling().phases(),
                List.copyOf(items.values()),
                List.copyOf(counts),
                List.copyOf(running.values()),
                plan.fleetCosts().stream()
                        .map(cost -> order(scenario, keys, cost))
                        .toList());
    }

    private static FleetOrder order(Scenario scenario, List<ItemKey> keys, FleetCost cost) {
        int phase = scenario.coupling().phaseNumber(cost.phase()) + 1;
        int item = keys.stream()
                .filter(key -> TYPES.contains(key.category()) && key.name().equals(cost.item()))
                .findFirst()
                .map(keys::indexOf)
                .orElse(-1);
        boolean spare = cost.kind() == FleetCost.Kind.SPARE_PIECES;
        double own =
                spare ? cost.price() : new Catalog(scenario).price(cost.item()).doubleValue();
        return new FleetOrder(
                phase, cost.kind(), cost.item(), item, cost.pieces(), own, spare ? own : own - cost.price());
    }

    /** An item in a phase, as far as there are pieces of it. */
    record Batch(int item, int phase) {}

    /** The pieces that are followed up together: item by item, in each phase by phase. */
    List<Batch> batches() {
        return counts.stream()
                .map(count -> new Batch(count.item(), count.phase()))
                .distinct()
                .sorted(Comparator.comparingInt(Batch::item).thenComparingInt(Batch::phase))
                .toList();
    }

    private static void addItem(Map<ItemKey, Item> items, PricedLine line) {
        ItemKey key = new ItemKey(line.category(), line.item());
        if (line.outlay() instanceof Outlay.Piece piece) {
            items.put(key, item(line, piece.price(), piece.installCost(), OptionalDouble.of(piece.lifeYears())));
        } else if (line.outlay() instanceof Outlay.OwnedPiece piece) {
            items.putIfAbsent(key, item(line, piece.price(), 0, OptionalDouble.of(piece.lifeYears())));
        } else if (line.outlay() instanceof Outlay.StockedPack pack) {
            items.put(key, new Item(line.category(), line.item(), pack.price(), 0, OptionalDouble.empty(), true));
        } else if (line.outlay() instanceof Outlay.Building building) {
            items.put(key, item(line, 0, building.cost(), OptionalDouble.empty()));
        }
    }

    private static Item item(PricedLine line, double price, double installCost, OptionalDouble life) {
        return new Item(line.category(), line.item(), price, installCost, life, false);
    }

    private static void addRunning(Map<RunningKey, Running> running, PricedLine line) {
        if (line.outlay() instanceof Outlay.EveryYear every) {
            add(running, line, every.cost());
        } else if (line.outlay() instanceof Outlay.Electricity electricity) {
            add(running, line, electricity.costInFirstYear());
        }
    }

    private static void add(Map<RunningKey, Running> running, PricedLine line, double price) {
        RunningKey key = new RunningKey(line.category(), line.phase(), line.item(), line.unit(), price);
        Running one = new Running(line.category(), line.phase(), line.item(), line.quantity(), line.unit(), price);
        running.merge(
                key,
                one,
                (a, b) -> new Running(a.category(), a.phase(), a.item(), a.quantity() + b.quantity(), a.unit(), price));
    }

    private static Count count(String depot, int item, PricedLine line) {
        int pieces = (int) Math.round(line.quantity());
        boolean owned = line.outlay() instanceof Outlay.OwnedPiece;
        return new Count(line.phase(), depot, item, owned ? 0 : pieces, owned ? pieces : 0);
    }

    private static Count both(Count a, Count b) {
        return new Count(a.phase(), a.depot(), a.item(), a.bought() + b.bought(), a.owned() + b.owned());
    }
}
