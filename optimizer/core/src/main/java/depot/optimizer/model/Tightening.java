package depot.optimizer.model;

import java.util.Map;

/**
 * Margins taken off after a replay has failed a day: units feed whole chargers minute by minute, which the slices of the model only approximate.
 *
 * @param circuitShare share of a unit's cap that the model may count on, by index of the circuit; absent: all of it
 * @param supplyShare share of the supply's room that units may count on
 */
public record Tightening(Map<Integer, Double> circuitShare, double supplyShare) {

    /** Nothing taken off. */
    public static final Tightening NONE = new Tightening(Map.of(), 1);

    double of(int circuit) {
        return circuitShare.getOrDefault(circuit, 1.0);
    }
}
