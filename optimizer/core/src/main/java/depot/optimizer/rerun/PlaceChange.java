package depot.optimizer.rerun;

import depot.optimizer.plan.DepotPlan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Pieces that change their place in a depot.
 *
 * @param item type of charger, unit or power bank
 * @param from place that they leave, empty: they were not in use
 * @param to place that they go to, empty: they are in use no more
 */
public record PlaceChange(String depot, String item, String from, String to, int pieces) {

    /** Everything that changes: moves first where pieces of a type leave one place and turn up in another. */
    public static List<PlaceChange> between(Optional<DepotPlan> before, Optional<DepotPlan> after) {
        SortedMap<String, SortedMap<String, Integer>> old = places(before);
        SortedMap<String, SortedMap<String, Integer>> now = places(after);
        SortedSet<String> items = new TreeSet<>(old.keySet());
        items.addAll(now.keySet());
        String depot = after.or(() -> before).map(DepotPlan::depot).orElse("");
        List<PlaceChange> changes = new ArrayList<>();
        for (String item : items) {
            SortedMap<String, Integer> gone = minus(old.get(item), now.get(item));
            SortedMap<String, Integer> come = minus(now.get(item), old.get(item));
            changes.addAll(changes(depot, item, gone, come));
        }
        return List.copyOf(changes);
    }

    private static List<PlaceChange> changes(
            String depot, String item, SortedMap<String, Integer> gone, SortedMap<String, Integer> come) {
        List<PlaceChange> changes = new ArrayList<>();
        while (!gone.isEmpty() || !come.isEmpty()) {
            String from = gone.isEmpty() ? "" : gone.firstKey();
            String to = come.isEmpty() ? "" : come.firstKey();
            int pieces = Math.min(gone.getOrDefault(from, Integer.MAX_VALUE), come.getOrDefault(to, Integer.MAX_VALUE));
            changes.add(new PlaceChange(depot, item, from, to, pieces));
            take(gone, from, pieces);
            take(come, to, pieces);
        }
        return changes;
    }

    private static void take(SortedMap<String, Integer> counts, String place, int pieces) {
        counts.computeIfPresent(place, (key, count) -> count == pieces ? null : Integer.valueOf(count - pieces));
    }

    /** What the first map has more than the second. */
    private static SortedMap<String, Integer> minus(SortedMap<String, Integer> one, SortedMap<String, Integer> other) {
        SortedMap<String, Integer> more = new TreeMap<>();
        if (one != null) {
            one.forEach((place, count) -> {
                int less = other == null ? 0 : other.getOrDefault(place, 0);
                if (count > less) {
                    more.put(place, count - less);
                }
            });
        }
        return more;
    }

    /** Pieces by item and place. */
    private static SortedMap<String, SortedMap<String, Integer>> places(Optional<DepotPlan> plan) {
        SortedMap<String, SortedMap<String, Integer>> places = new TreeMap<>();
        plan.ifPresent(depot -> {
            depot.chargers().forEach(charger -> {
                String outlet = charger.priority() ? ", priority outlet of its unit" : ", behind its unit";
                add(places, charger.chargerType(), charger.circuit() + (charger.shared() ? outlet : ""));
            });
            depot.units().forEach(unit -> add(places, unit.unitType(), unit.circuit()));
            depot.banks().forEach(bank -> add(places, bank.bankType(), bank.circuit() + ", crew " + bank.crew()));
        });
        return places;
    }

    private static void add(SortedMap<String, SortedMap<String, Integer>> places, String item, String place) {
        places.computeIfAbsent(item, none -> new TreeMap<>()).merge(place, 1, Integer::sum);
    }
}
