package depot.optimizer.plan;

/**
 * A charger in its place.
 *
 * @param id unique in the depot, such as "C2-03"
 * @param outlet number of the outlet of the circuit, or of the unit where it is shared, from 1
 * @param shared behind the circuit's load-sharing unit
 * @param priority on one of the unit's priority outlets
 * @param owned not bought
 */
public record ChargerPlacement(
        String id, String circuit, String chargerType, int outlet, boolean shared, boolean priority, boolean owned) {}
