package depot.optimizer.model;

import java.util.Map;

/**
 * Margins taken off after a replay has failed a day: units feed whole chargers minute by minute, which the slices of the model only approximate.
 *
 * @param circuitShare share of a unit's cap that the model may count on, by index of the circuit; absent: all of it
 * @param depotShare share of what the supply and the demand paid for leave that units may count on
 * @param roadShare share of a crew's energy that counts as having emptied packs on the way, by crew; absent: all of it
 * @param wholeChargers a charger that waits counts on being fed whole at some time: with a share of what it draws it was late
 */
public record Tightening(
        Map<Integer, Double> circuitShare, double depotShare, Map<String, Double> roadShare, boolean wholeChargers) {

    /**
     * Share of its room that a unit uses on average while chargers wait: it feeds whole chargers, and each charge ends slowly. Found by replaying
     * generated depots.
     */
    private static final double UNIT_SHARE = 0.95;

    /** Nothing taken off. */
    public static final Tightening NONE = new Tightening(Map.of(), 1, Map.of(), false);

    double onTheWay(String crew) {
        return roadShare.getOrDefault(crew, 1.0);
    }

    double of(int circuit) {
        return UNIT_SHARE * circuitShare.getOrDefault(circuit, 1.0);
    }
}
