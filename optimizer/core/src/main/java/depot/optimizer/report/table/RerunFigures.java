package depot.optimizer.report.table;

import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.FleetCost;
import depot.optimizer.report.table.ItemBook.Entry;
import depot.optimizer.report.table.Purchase.Kind;
import depot.optimizer.report.text.Figures;
import depot.optimizer.rerun.DepotChange;
import depot.optimizer.rerun.DepotChange.Status;
import depot.optimizer.rerun.PlaceChange;
import depot.optimizer.rerun.RerunResult;
import depot.optimizer.rerun.Routine;
import depot.optimizer.rerun.RoutineChange;
import depot.optimizer.rerun.RoutineTrade;
import depot.optimizer.rerun.input.InputChange;
import depot.optimizer.scenario.Circuit;
import depot.optimizer.scenario.Depot;
import depot.optimizer.scenario.Scenario;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;

/**
 * What a rerun comes to, as its tables, its page and its summary show it.
 *
 * @param inputs what has changed in the tables
 * @param depots one for each change of a depot, in its order
 */
public record RerunFigures(RerunResult result, List<InputChange> inputs, List<DepotFigures> depots) {

    /**
     * One depot.
     *
     * @param equipment every item that it had, has or needs
     * @param places pieces that change their place; none where the depot is new or gone
     * @param packs packs that change: of the pools, then of the crews
     * @param routine lines of the routine that change; none where the depot is new or gone
     */
    public record DepotFigures(
            DepotChange change,
            List<EquipmentLine> equipment,
            List<PlaceChange> places,
            List<PackChange> packs,
            List<RoutineChange> routine) {

        /** What is to be paid at once. */
        public BigDecimal atOnce() {
            return equipment.stream().map(EquipmentLine::total).reduce(BigDecimal.ZERO, BigDecimal::add);
        }
    }

    /**
     * Packs of a type whose number changes.
     *
     * @param pool key of the depot or crew whose packs they are
     * @param crew that carries them; empty: the whole pool
     * @param before packs in the pool, or most carried on one trip
     * @param after the same now
     */
    public record PackChange(String depot, String pool, String crew, String packType, int before, int after) {}

    /** Works everything out. */
    public static RerunFigures of(RerunResult result, List<InputChange> inputs) {
        ItemBook book = new ItemBook(result.scenario(), result.earlier().scenario());
        return new RerunFigures(
                result,
                List.copyOf(inputs),
                result.changes().stream()
                        .map(change -> depot(result, book, change))
                        .toList());
    }

    private static DepotFigures depot(RerunResult result, ItemBook book, DepotChange change) {
        boolean both = change.status() == Status.KEPT || change.status() == Status.PLANNED_AGAIN;
        return new DepotFigures(
                change,
                equipment(result.scenario(), book, change),
                both ? PlaceChange.between(change.before(), change.after()) : List.of(),
                both ? packs(change) : List.of(),
                both ? Routine.changes(change.before(), change.after()) : List.of());
    }

    private static List<EquipmentLine> equipment(Scenario scenario, ItemBook book, DepotChange change) {
        SortedMap<String, Integer> before = change.usedBefore();
        SortedMap<String, Integer> after = change.used();
        TreeSet<String> items = new TreeSet<>(before.keySet());
        items.addAll(change.held().keySet());
        items.addAll(after.keySet());
        List<EquipmentLine> lines = new ArrayList<>();
        for (String item : items) {
            Entry entry = book.of(item);
            lines.add(new EquipmentLine(
                    change.depot(),
                    entry.kind(),
                    item,
                    before.getOrDefault(item, 0),
                    change.held().getOrDefault(item, 0),
                    after.getOrDefault(item, 0),
                    entry.price(),
                    entry.installCost()));
        }
        lines.sort(Comparator.comparing(EquipmentLine::kind));
        lines.addAll(building(scenario, change));
        return List.copyOf(lines);
    }

    private static List<EquipmentLine> building(Scenario scenario, DepotChange change) {
        List<EquipmentLine> lines = new ArrayList<>();
        for (Circuit circuit : scenario.circuits()) {
            String id = circuit.id();
            int after = count(change.after(), plan -> plan.circuitsBuilt().contains(id));
            int held = change.circuitsBuilt().contains(id) ? 1 : 0;
            if (after + held > 0) {
                int before = count(change.before(), plan -> plan.circuitsBuilt().contains(id));
                lines.add(new EquipmentLine(
                        change.depot(), Kind.CIRCUIT, id, before, held, after, circuit.installCost(), BigDecimal.ZERO));
            }
        }
        for (Depot depot : scenario.depots()) {
            int after = count(change.after(), DepotPlan::supplyUpgraded);
            int held = change.supplyUpgraded() ? 1 : 0;
            if (depot.id().equals(change.depot()) && after + held > 0) {
                lines.add(new EquipmentLine(
                        change.depot(),
                        Kind.SUPPLY,
                        Figures.plain(depot.supplyUpgradeAmps(), 1) + " A",
                        count(change.before(), DepotPlan::supplyUpgraded),
                        held,
                        after,
                        depot.supplyUpgradeCost(),
                        BigDecimal.ZERO));
            }
        }
        return lines;
    }

    private static int count(Optional<DepotPlan> plan, Predicate<DepotPlan> has) {
        return plan.filter(has).isPresent() ? 1 : 0;
    }

    private record PackKey(String pool, String crew, String packType) {}

    private static List<PackChange> packs(DepotChange change) {
        Map<PackKey, Integer> before = packs(change.before().orElseThrow());
        Map<PackKey, Integer> after = packs(change.after().orElseThrow());
        List<PackKey> keys = new ArrayList<>(after.keySet());
        before.keySet().stream().filter(key -> !after.containsKey(key)).forEach(keys::add);
        return keys.stream()
                .map(key -> new PackChange(
                        change.depot(),
                        key.pool(),
                        key.crew(),
                        key.packType(),
                        before.getOrDefault(key, 0),
                        after.getOrDefault(key, 0)))
                .filter(row -> row.before() != row.after())
                .toList();
    }

    private static Map<PackKey, Integer> packs(DepotPlan plan) {
        Map<PackKey, Integer> packs = new LinkedHashMap<>();
        plan.packs().forEach(stock -> packs.put(new PackKey(stock.pool(), "", stock.packType()), stock.count()));
        Map<String, Map<String, Integer>> carried = new TreeMap<>(PackCounts.mostCarried(plan));
        boolean pooled = plan.packs().stream().anyMatch(stock -> stock.pool().equals(plan.depot()));
        carried.forEach((crew, types) ->
                types.forEach((type, most) -> packs.put(new PackKey(pooled ? plan.depot() : crew, crew, type), most)));
        return packs;
    }

    /** What is to be paid at once over the whole fleet. */
    public BigDecimal atOnce() {
        return depots.stream().map(DepotFigures::atOnce).reduce(ofFleet(), BigDecimal::add);
    }

    /** What the first phase pays beside the depots: spare pieces, less what quantity prices take off. */
    private BigDecimal ofFleet() {
        BigDecimal sum = BigDecimal.ZERO;
        boolean pays = result.shared().filter(shared -> !shared.kept()).isPresent();
        String first =
                result.plan().phases().isEmpty() ? "" : result.plan().phases().get(0);
        for (FleetCost cost : result.plan().fleetCosts()) {
            if (pays && cost.phase().equals(first)) {
                BigDecimal amount = BigDecimal.valueOf(cost.price()).multiply(BigDecimal.valueOf(cost.pieces()));
                sum = cost.kind() == FleetCost.Kind.SPARE_PIECES ? sum.add(amount) : sum.subtract(amount);
            }
        }
        return sum;
    }

    /** Depots of which something becomes. */
    public long count(Status status) {
        return depots.stream()
                .filter(depot -> depot.change().status() == status)
                .count();
    }

    /** Lines of the routine that change over the whole fleet, each season day counted by itself. */
    public int routineLines(RoutineChange.What what) {
        return depots.stream()
                .mapToInt(depot -> Routine.count(depot.routine(), what))
                .sum();
    }

    /** What keeping the routine comes to over the whole fleet; empty: it has no weight. */
    public Optional<RoutineTrade> trade() {
        return depots.stream()
                .flatMap(depot -> depot.change().trade().stream())
                .reduce((one, other) -> new RoutineTrade(
                        one.linesFree() + other.linesFree(),
                        one.linesKept() + other.linesKept(),
                        one.costMore() + other.costMore()));
    }
}
