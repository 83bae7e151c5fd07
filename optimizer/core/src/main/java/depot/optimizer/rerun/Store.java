package depot.optimizer.rerun;

import depot.optimizer.plan.DepotPlan;
import depot.optimizer.scenario.Owned;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** Pieces that runs have bought and that a plan does not use: the next rerun counts on them. */
final class Store {
    private Store() {}

    /**
     * What is left of what was bought earlier.
     *
     * @param plan of the depot; empty: there is no such depot any more, so that all is left
     */
    static List<Owned> of(String depot, Pieces boughtEarlier, Optional<DepotPlan> plan) {
        Pieces inUse = plan.map(Pieces::bought).orElseGet(Pieces::new);
        SortedMap<String, Integer> left = new TreeMap<>(boughtEarlier.byItem());
        inUse.byItem().forEach((item, count) -> left.merge(item, -count, Integer::sum));
        List<Owned> rows = new ArrayList<>();
        for (Owned row : boughtEarlier.rows(depot)) {
            int spare = row.count() - inUse.count(row.crew().orElse(""), row.item());
            int count = Math.min(spare, left.get(row.item()));
            if (count > 0) {
                left.merge(row.item(), -count, Integer::sum);
                rows.add(new Owned(depot, Optional.empty(), row.crew(), row.item(), count));
            }
        }
        return List.copyOf(rows);
    }

    /**
     * The same for a fleet in which what earlier runs bought counts as owned.
     *
     * @param held all that the depot has, by item
     * @param plans of the depot, phase by phase; none: there is no such depot any more
     */
    static List<Owned> idle(
            String depot, Pieces boughtEarlier, SortedMap<String, Integer> held, List<DepotPlan> plans) {
        SortedMap<String, Integer> left = new TreeMap<>(held);
        held.keySet()
                .forEach(item -> left.merge(
                        item,
                        -plans.stream()
                                .mapToInt(plan -> Pieces.used(plan).byItem().getOrDefault(item, 0))
                                .max()
                                .orElse(0),
                        Integer::sum));
        List<Owned> rows = new ArrayList<>();
        for (Owned row : boughtEarlier.rows(depot)) {
            int count = Math.min(row.count(), left.get(row.item()));
            if (count > 0) {
                left.merge(row.item(), -count, Integer::sum);
                rows.add(new Owned(depot, Optional.empty(), row.crew(), row.item(), count));
            }
        }
        return List.copyOf(rows);
    }

    /** Pieces by item. */
    static Map<String, Integer> byItem(List<Owned> rows) {
        Map<String, Integer> all = new TreeMap<>();
        rows.forEach(row -> all.merge(row.item(), row.count(), Integer::sum));
        return all;
    }
}
