package depot.optimizer.model;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Everything that one charger which does not wait may hold from one handover to another, each in its cheapest order. Packs charge in the order in which
 * they were put in: each position takes the next one as soon as it is done with the one before.
 */
final class FillingMenu {

    /** More fillings than this make the model larger than they make it better. */
    private static final int MOST_FILLINGS = 80;

    /** What a charger may hold, with its cheapest order. */
    record Choice(int slots, List<PackKind> order, double energyCost) {}

    private final int from;
    private final int atOnce;
    private final PlainPrice price;
    private final Map<PackKind, Integer> slotsOf;

    /**
     * @param from minute of loading
     * @param atOnce packs that charge at once
     * @param slotsOf of each kind of pack how many of it a charger can hold and finish in time
     */
    FillingMenu(int from, int atOnce, PlainPrice price, Map<PackKind, Integer> slotsOf) {
        this.from = from;
        this.atOnce = atOnce;
        this.price = price;
        this.slotsOf = new LinkedHashMap<>(slotsOf);
    }

    /**
     * All fillings of the given classes, the empty one left out; nothing where they are too many.
     *
     * @param classes packs that each charger of a batch may hold
     */
    Optional<List<Choice>> choices(Collection<Integer> classes) {
        List<Choice> choices = new ArrayList<>();
        for (int slots : classes) {
            for (Map<PackKind, Integer> packs : contents(slots)) {
                if (choices.size() == MOST_FILLINGS) {
                    return Optional.empty();
                }
                choices.add(new Cheapest(packs).choice(slots));
            }
        }
        return Optional.of(List.copyOf(choices));
    }

    private List<Map<PackKind, Integer>> contents(int slots) {
        List<PackKind> kinds = slotsOf.keySet().stream()
                .filter(kind -> slotsOf.get(kind) >= slots)
                .toList();
        List<Map<PackKind, Integer>> found = new ArrayList<>();
        addContents(found, kinds, new LinkedHashMap<>(), slots);
        return found;
    }

    /** Every way to share at most so many places among kinds, once no kind is left. */
    private static void addContents(
            List<Map<PackKind, Integer>> found, List<PackKind> kinds, Map<PackKind, Integer> chosen, int left) {
        if (kinds.isEmpty()) {
            if (!chosen.isEmpty()) {
                found.add(new LinkedHashMap<>(chosen));
            }
            return;
        }
        PackKind kind = kinds.get(0);
        for (int count = 0; count <= left; count++) {
            if (count > 0) {
                chosen.put(kind, count);
            }
            addContents(found, kinds.subList(1, kinds.size()), chosen, left - count);
        }
        chosen.remove(kind);
    }

    /** Tries all orders of some packs. */
    private final class Cheapest {
        private final Map<PackKind, Integer> left;
        private final List<PackKind> order = new ArrayList<>();
        private List<PackKind> best = List.of();
        private double least = Double.POSITIVE_INFINITY;

        private Cheapest(Map<PackKind, Integer> packs) {
            left = packs;
        }

        private Choice choice(int slots) {
            int[] free = new int[atOnce];
            Arrays.fill(free, from);
            next(free, 0);
            return new Choice(slots, best, least);
        }

        private void next(int[] free, double cost) {
            boolean done = true;
            for (PackKind kind : slotsOf.keySet()) {
                if (left.getOrDefault(kind, 0) > 0 && cost < least) {
                    done = false;
                    left.merge(kind, -1, Integer::sum);
                    order.add(kind);
                    int[] then = free.clone();
                    int start = then[0];
                    then[0] += kind.minutes();
                    Arrays.sort(then);
                    next(then, cost + price.ofPack(kind.fit(), kind.level(), start));
                    order.remove(order.size() - 1);
                    left.merge(kind, 1, Integer::sum);
                }
            }
            if (done && cost < least && left.values().stream().allMatch(count -> count == 0)) {
                least = cost;
                best = List.copyOf(order);
            }
        }
    }
}
