package depot.optimizer.scenario;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A place that crews leave from and come back to, with one connection to the grid.
 *
 * @param supplyVolts line-to-line voltage of a three-phase supply, line voltage of a single-phase one
 * @param supplyPhases 1 or 3
 * @param supplyAmps rating of the supply's main protection
 * @param places wall or bench places for chargers
 * @param staffedFromMinute first minute after midnight at which somebody is in the depot, empty: never
 * @param staffedToMinute end of the staffed hours, empty: never staffed
 * @param swapMinutes while staffed, packs are moved every so many minutes
 * @param supplyUpgradeAmps rating of the supply after its upgrade, 0: no upgrade on offer
 * @param supplyUpgradeCost price of the upgrade
 */
public record Depot(
        String id,
        String name,
        Optional<String> region,
        OptionalDouble latitude,
        OptionalDouble longitude,
        String tariff,
        double supplyVolts,
        int supplyPhases,
        double supplyAmps,
        int places,
        Optional<Integer> staffedFromMinute,
        Optional<Integer> staffedToMinute,
        Optional<Integer> swapMinutes,
        double supplyUpgradeAmps,
        BigDecimal supplyUpgradeCost) {

    /** Whether a bigger supply can be bought. */
    public boolean upgradeOffered() {
        return supplyUpgradeAmps > supplyAmps;
    }
}
