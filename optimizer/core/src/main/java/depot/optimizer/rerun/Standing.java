package depot.optimizer.rerun;

import depot.optimizer.scenario.Owned;
import depot.optimizer.scenario.Scenario;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What runs that have been carried out left behind, beside what {@code owned.csv} lists.
 *
 * @param pieces by depot, owner and item; below 0 where pieces that {@code owned.csv} lists have gone to another depot
 * @param circuits that were built
 * @param supplies depots that have the bigger supply
 * @param begun what has been used of limits of the phase that has begun, by name of the limit: money, or pieces
 */
public record Standing(
        List<Owned> pieces, List<String> circuits, List<String> supplies, SortedMap<String, Double> begun) {

    /** Nothing. */
    public static final Standing NONE = new Standing(List.of(), List.of(), List.of(), new TreeMap<>());

    /** Copies the collections. */
    public Standing {
        pieces = List.copyOf(pieces);
        circuits = List.copyOf(circuits);
        supplies = List.copyOf(supplies);
        begun = Collections.unmodifiableSortedMap(new TreeMap<>(begun));
    }

    /** Whether there is anything. */
    public boolean given() {
        return !equals(NONE);
    }

    /**
     * What of it a scenario does not list itself: nothing where its {@code owned.csv} says of these pieces what the tables of the run say, which list
     * them.
     *
     * @param ofRun the scenario of the run, in which all of this is there
     */
    Standing unlisted(Scenario scenario, Scenario ofRun) {
        boolean listed = !pieces.isEmpty() && counts(scenario).equals(counts(ofRun));
        return listed ? NONE : this;
    }

    /** What a scenario lists of the items and owners that this is about. */
    private Map<String, Integer> counts(Scenario scenario) {
        Map<String, Integer> counts = new TreeMap<>();
        pieces.forEach(row -> counts.put(key(row), 0));
        scenario.owned().forEach(row -> counts.computeIfPresent(key(row), (key, count) -> count + row.count()));
        return counts;
    }

    private static String key(Owned row) {
        return String.join("\n", row.depot(), row.crew().orElse(""), row.item());
    }
}
