package depot.optimizer.rerun;

import depot.optimizer.plan.ChargerPlacement;
import depot.optimizer.plan.CrewKit;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.PackStock;
import depot.optimizer.plan.UnitPlacement;
import depot.optimizer.scenario.Owned;
import depot.optimizer.sweep.change.Ownership;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** Counts of pieces by owner and item; an owner is a crew, or empty for the depot. */
final class Pieces {

    private final SortedMap<String, SortedMap<String, Integer>> counts = new TreeMap<>();

    /** What a plan has in use. */
    static Pieces used(DepotPlan plan) {
        Pieces pieces = new Pieces();
        plan.chargers().forEach(charger -> pieces.add("", charger.chargerType(), 1));
        plan.units().forEach(unit -> pieces.add("", unit.unitType(), 1));
        plan.packs().forEach(stock -> pieces.add(owner(plan, stock), stock.packType(), stock.count()));
        plan.kits().forEach(kit -> pieces.add(kit.crew(), kit.item(), kit.count()));
        return pieces;
    }

    /** What a plan buys. */
    static Pieces bought(DepotPlan plan) {
        Pieces pieces = used(plan);
        plan.chargers().stream()
                .filter(ChargerPlacement::owned)
                .forEach(charger -> pieces.add("", charger.chargerType(), -1));
        plan.units().stream().filter(UnitPlacement::owned).forEach(unit -> pieces.add("", unit.unitType(), -1));
        plan.packs().forEach(stock -> pieces.add(owner(plan, stock), stock.packType(), -stock.owned()));
        for (CrewKit kit : plan.kits()) {
            pieces.add(kit.crew(), kit.item(), -kit.owned());
        }
        return pieces;
    }

    private static String owner(DepotPlan plan, PackStock stock) {
        return Ownership.ownerOf(plan, stock.pool()).orElse("");
    }

    void add(String owner, String item, int count) {
        counts.computeIfAbsent(owner, none -> new TreeMap<>()).merge(item, count, Integer::sum);
    }

    void add(Owned row) {
        add(row.crew().orElse(""), row.item(), row.count());
    }

    void addAll(Pieces more) {
        more.counts.forEach((owner, items) -> items.forEach((item, count) -> add(owner, item, count)));
    }

    int count(String owner, String item) {
        return counts.getOrDefault(owner, new TreeMap<>()).getOrDefault(item, 0);
    }

    /** Pieces by item, over all owners. */
    SortedMap<String, Integer> byItem() {
        SortedMap<String, Integer> all = new TreeMap<>();
        counts.values().forEach(items -> items.forEach((item, count) -> all.merge(item, count, Integer::sum)));
        return all;
    }

    /** Hands everything that one owner has to another. */
    void hand(String from, String to) {
        SortedMap<String, Integer> items = counts.remove(from);
        if (items != null) {
            items.forEach((item, count) -> add(to, item, count));
        }
    }

    /** What one owner has, taken away from it. */
    Pieces takeAll(String owner) {
        Pieces taken = new Pieces();
        SortedMap<String, Integer> items = counts.remove(owner);
        if (items != null) {
            items.forEach((item, count) -> taken.add(owner, item, count));
        }
        return taken;
    }

    /** Owners, the depot first. */
    List<String> owners() {
        return List.copyOf(counts.keySet());
    }

    /** Rows of what is owned, for pieces of which there is at least one. */
    List<Owned> rows(String depot) {
        return changes(depot).stream().filter(row -> row.count() > 0).toList();
    }

    /** The same with pieces of which there are fewer than none: they have gone. */
    List<Owned> changes(String depot) {
        List<Owned> rows = new ArrayList<>();
        counts.forEach((owner, items) -> items.forEach((item, count) -> {
            if (count != 0) {
                Optional<String> crew = owner.isEmpty() ? Optional.empty() : Optional.of(owner);
                rows.add(new Owned(depot, Optional.empty(), crew, item, count));
            }
        }));
        return rows;
    }
}
