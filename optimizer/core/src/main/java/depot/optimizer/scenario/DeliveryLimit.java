package depot.optimizer.scenario;

/**
 * How many pieces of an item can be delivered to the whole fleet in a phase.
 *
 * @param item id of a pack, charger, sharing-unit or power-bank type
 * @param phase id of the phase
 * @param count most pieces, 0: none
 */
public record DeliveryLimit(String item, String phase, int count) {}
