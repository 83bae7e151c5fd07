package depot.optimizer.problem;

import depot.optimizer.plan.SeasonDay;
import java.util.List;
import java.util.TreeSet;

/**
 * A kind of day: every season day on which the same trips run under the same prices, base loads and temperatures.
 *
 * @param occurrences which season days
 * @param daysPerYear how many days of a year
 * @param packCapacityFactor share of a pack's energy left at the season's temperature
 * @param visits of the depot's own crews at other depots
 * @param guests visits of other depots' crews
 * @param handovers times at which the depot's packs may be moved, rising; the first is the start, the last the end of the cycle
 * @param slices the cycle cut at handovers, at guests' comings and goings, price changes and base-load changes
 */
public record DayKind(
        List<SeasonDay> occurrences,
        double daysPerYear,
        double packCapacityFactor,
        List<Trip> trips,
        List<Visit> visits,
        List<Visit> guests,
        List<Integer> handovers,
        List<Slice> slices) {

    /** Every time at which somebody moves packs: handovers, and the comings and goings of guests, rising. */
    public List<Integer> times() {
        return times(handovers, guests);
    }

    static List<Integer> times(List<Integer> handovers, List<Visit> guests) {
        TreeSet<Integer> times = new TreeSet<>(handovers);
        guests.forEach(visit -> times.addAll(List.of(visit.arrival(), visit.departure())));
        return List.copyOf(times);
    }

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
