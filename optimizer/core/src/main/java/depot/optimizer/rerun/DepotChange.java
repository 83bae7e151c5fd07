package depot.optimizer.rerun;

import depot.optimizer.plan.DepotPlan;
import depot.optimizer.scenario.Owned;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What a rerun does to a depot.
 *
 * @param reasons in what its part of the tables differs, in plain words
 * @param before its plan in the earlier run, empty: it is new
 * @param after its plan now, empty: it is gone
 * @param held pieces that were there before anything was bought, by item: owned, or bought earlier
 * @param circuitsBuilt circuits that earlier runs built
 * @param supplyUpgraded whether an earlier run bought the bigger supply
 * @param store pieces bought earlier that the plan does not use
 * @param costBefore present cost of going on with the earlier plan on the earlier tables, once it has been carried out; 0 for a new depot
 * @param costAfter present cost of the plan now, with what is held counted as there already; 0 for a depot that is gone
 * @param trade what keeping the daily routine comes to, empty: it was not asked for, or nothing was planned again
 */
public record DepotChange(
        String depot,
        Status status,
        List<String> reasons,
        Optional<DepotPlan> before,
        Optional<DepotPlan> after,
        SortedMap<String, Integer> held,
        List<String> circuitsBuilt,
        boolean supplyUpgraded,
        List<Owned> store,
        double costBefore,
        double costAfter,
        Optional<RoutineTrade> trade) {

    /** Copies the collections. */
    public DepotChange {
        reasons = List.copyOf(reasons);
        held = Collections.unmodifiableSortedMap(new TreeMap<>(held));
        circuitsBuilt = List.copyOf(circuitsBuilt);
        store = List.copyOf(store);
    }

    /** What becomes of a depot. */
    public enum Status {
        /** Nothing that its plan depends on has changed: the earlier plan stays. */
        KEPT("kept"),
        /** Something has changed. */
        PLANNED_AGAIN("planned again"),
        /** The earlier run has no such depot. */
        NEW("new"),
        /** The tables no longer list it. */
        GONE("gone");

        private final String words;

        Status(String words) {
            this.words = words;
        }

        /** In plain words. */
        public String words() {
            return words;
        }
    }

    /** Pieces in use in the plan, by item. */
    public SortedMap<String, Integer> used() {
        return after.map(plan -> Pieces.used(plan).byItem()).orElseGet(TreeMap::new);
    }

    /** Pieces in use in the earlier plan, by item. */
    public SortedMap<String, Integer> usedBefore() {
        return before.map(plan -> Pieces.used(plan).byItem()).orElseGet(TreeMap::new);
    }

    /** Present cost of the change. */
    public double costOfChange() {
        return costAfter - costBefore;
    }
}
