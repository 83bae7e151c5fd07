package depot.optimizer.scenario;

import java.math.BigDecimal;

/**
 * A crew and its vehicle.
 *
 * @param depot where it works from, unless {@link Scenario#crewBases()} lets it work from another; as the place of one of
 *     its stops it stands for its base, wherever that is
 * @param packPlaces packs that its vehicle holds
 * @param payloadKg weight of packs, portable chargers and power banks that it may carry
 * @param vehicleWatts power that the vehicle gives to chargers during a trip, 0: none
 * @param petrolCostPerYear fuel and upkeep of its petrol tools, as long as it keeps them
 */
public record Crew(
        String id, String depot, int packPlaces, double payloadKg, double vehicleWatts, BigDecimal petrolCostPerYear) {}
