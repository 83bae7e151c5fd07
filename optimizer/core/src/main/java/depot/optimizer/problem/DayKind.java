package depot.optimizer.problem;

import depot.optimizer.plan.SeasonDay;
import java.util.List;

/**
 * A kind of day: every season day on which the same trips run under the same prices, base loads and temperatures.
 *
 * @param occurrences which season days
 * @param daysPerYear how many days of a year
 * @param packCapacityFactor share of a pack's energy left at the season's temperature
 * @param handovers times at which packs may be moved, rising; the first is the start, the last the end of the cycle
 * @param slices the cycle cut at handovers, price changes and base-load changes
 */
public record DayKind(
        List<SeasonDay> occurrences,
        double daysPerYear,
        double packCapacityFactor,
        List<Trip> trips,
        List<Integer> handovers,
        List<Slice> slices) {

    /** Seasons that the kind occurs in, in order. */
    public List<String> seasons() {
        return occurrences.stream().map(SeasonDay::season).distinct().toList();
    }

    /** Handover at which a crew's last trip of the day is back; it must have one. */
    public int lastReturn(String crew) {
        return trips.stream()
                .filter(trip -> trip.crew().equals(crew))
                .mapToInt(Trip::arrival)
                .max()
                .orElseThrow();
    }

    /** Whether a crew has a trip. */
    public boolean works(String crew) {
        return trips.stream().anyMatch(trip -> trip.crew().equals(crew));
    }

    /** A label for names and messages. */
    public String label() {
        SeasonDay first = occurrences.get(0);
        return first.season() + "_" + first.day().name().substring(0, 3);
    }
}
