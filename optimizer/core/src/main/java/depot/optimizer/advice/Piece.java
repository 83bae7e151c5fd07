package depot.optimizer.advice;

import depot.optimizer.plan.ChargerPlacement;
import depot.optimizer.plan.CrewKit;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.PackStock;
import depot.optimizer.plan.UnitPlacement;
import depot.optimizer.problem.PieceLimit;
import depot.optimizer.scenario.Scenario;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A line of what a depot's plan has.
 *
 * @param item id of its type or circuit; of the bigger supply the depot's
 * @param where circuit of a charger or unit, crew of what is carried, {@link PieceLimit#ANY}: the whole depot
 * @param count pieces, owned ones included
 * @param bought those of them that are bought
 */
public record Piece(Kind kind, String item, String where, int count, int bought) {

    /** What a plan may have, in the order in which it is listed. */
    public enum Kind {
        /** Packs. */
        PACK(PieceLimit.Kind.PACK),
        /** Chargers mounted in the depot. */
        CHARGER(PieceLimit.Kind.CHARGER),
        /** Load-sharing units. */
        UNIT(PieceLimit.Kind.UNIT),
        /** Circuits that are built. */
        CIRCUIT(PieceLimit.Kind.CIRCUIT),
        /** The bigger supply. */
        SUPPLY(PieceLimit.Kind.SUPPLY),
        /** Chargers that crews carry. */
        PORTABLE(PieceLimit.Kind.PORTABLE),
        /** Power banks. */
        BANK(PieceLimit.Kind.BANK);

        private final PieceLimit.Kind limited;

        Kind(PieceLimit.Kind limited) {
            this.limited = limited;
        }

        /** At most so many of an item of the kind. */
        PieceLimit atMost(String item, String where, int most) {
            return new PieceLimit(limited, item, where, most);
        }
    }

    private record Key(Kind kind, String item, String where) {}

    /** Everything that a plan has, packs first. */
    public static List<Piece> of(Scenario scenario, DepotPlan plan) {
        return of(scenario, plan, Optional.empty());
    }

    /**
     * The same in one of several phases.
     *
     * @param before plan of the phase before
     */
    static List<Piece> of(Scenario scenario, DepotPlan plan, Optional<DepotPlan> before) {
        List<String> built = before.map(DepotPlan::circuitsBuilt).orElse(List.of());
        int upgraded = before.filter(DepotPlan::supplyUpgraded).isPresent() ? 1 : 0;
        Map<Key, int[]> counts = new LinkedHashMap<>();
        for (PackStock stock : plan.packs()) {
            add(counts, new Key(Kind.PACK, stock.packType(), PieceLimit.ANY), stock.count(), stock.owned());
        }
        for (ChargerPlacement charger : plan.chargers()) {
            add(counts, new Key(Kind.CHARGER, charger.chargerType(), charger.circuit()), 1, charger.owned() ? 1 : 0);
        }
        for (UnitPlacement unit : plan.units()) {
            add(counts, new Key(Kind.UNIT, unit.unitType(), unit.circuit()), 1, unit.owned() ? 1 : 0);
        }
        plan.circuitsBuilt()
                .forEach(circuit -> add(
                        counts, new Key(Kind.CIRCUIT, circuit, PieceLimit.ANY), 1, built.contains(circuit) ? 1 : 0));
        if (plan.supplyUpgraded()) {
            add(counts, new Key(Kind.SUPPLY, plan.depot(), PieceLimit.ANY), 1, upgraded);
        }
        for (CrewKit kit : plan.kits()) {
            boolean bank = scenario.powerBankTypes().stream()
                    .anyMatch(type -> type.id().equals(kit.item()));
            Kind kind = bank ? Kind.BANK : Kind.PORTABLE;
            add(counts, new Key(kind, kit.item(), kit.crew()), kit.count(), kit.owned());
        }
        List<Piece> pieces = new ArrayList<>();
        counts.forEach(
                (key, sums) -> pieces.add(new Piece(key.kind(), key.item(), key.where(), sums[0], sums[0] - sums[1])));
        return List.copyOf(pieces);
    }

    /** An item wherever it is. */
    public record Item(Kind kind, String name) implements Comparable<Item> {
        @Override
        public int compareTo(Item other) {
            return Comparator.comparing(Item::kind).thenComparing(Item::name).compare(this, other);
        }
    }

    /** Pieces of each item over the whole depot. */
    public static SortedMap<Item, Integer> byItem(List<Piece> pieces) {
        SortedMap<Item, Integer> counts = new TreeMap<>();
        pieces.forEach(piece -> counts.merge(new Item(piece.kind(), piece.item()), piece.count(), Integer::sum));
        return counts;
    }

    private static void add(Map<Key, int[]> counts, Key key, int count, int owned) {
        int[] sums = counts.computeIfAbsent(key, any -> new int[2]);
        sums[0] += count;
        sums[1] += owned;
    }

    /** Whether another line is about the same. */
    boolean alike(Piece other) {
        return kind == other.kind && item.equals(other.item) && where.equals(other.where);
    }

    /** The plan may have at most so many of them. */
    PieceLimit atMost(int most) {
        return kind.atMost(item, where, most);
    }
}
