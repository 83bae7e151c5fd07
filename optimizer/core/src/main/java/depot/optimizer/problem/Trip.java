package depot.optimizer.problem;

import java.util.List;

/**
 * One trip of a crew, from its depot back to its depot.
 *
 * @param number within the crew's day, from 1
 * @param leaveMinute as in the route
 * @param returnMinute as in the route
 * @param departure handover at which packs are taken, rounded down
 * @param arrival handover at which packs come back, rounded up
 * @param stops where work is done or power found, in order
 * @param needs one per pack family that the trip uses
 */
public record Trip(
        String crew,
        int number,
        int leaveMinute,
        int returnMinute,
        int departure,
        int arrival,
        List<TripStop> stops,
        List<FamilyNeed> needs) {

    /**
     * A stop of the trip.
     *
     * @param stop number in the route
     * @param siteWatts mains that the crew may use there
     * @param visited another depot that the stop is at; empty: none
     */
    public record TripStop(int stop, int arriveMinute, int leaveMinute, double siteWatts, String visited) {}

    /** Place of a stop in the trip. */
    public int indexOf(int stop) {
        for (int i = 0; i < stops.size(); i++) {
            if (stops.get(i).stop() == stop) {
                return i;
            }
        }
        throw new IllegalArgumentException("trip " + number + " of " + crew + " has no stop " + stop);
    }

    /**
     * What a trip needs of one pack family.
     *
     * @param toolsAtOnce most tools of the family that run together at one stop
     * @param prefixWh energy needed from the start to the end of each stop, at the planned quantile, never falling
     * @param prefixTools most tools at once up to the end of each stop
     */
    public record FamilyNeed(String family, int toolsAtOnce, List<Double> prefixWh, List<Integer> prefixTools) {

        /** Energy for the whole trip, in Wh. */
        public double totalWh() {
            return prefixWh.isEmpty() ? 0 : prefixWh.get(prefixWh.size() - 1);
        }
    }
}
