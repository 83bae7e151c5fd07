package depot.optimizer.plan;

/**
 * One line of a depot's cost.
 *
 * @param category what kind of cost
 * @param item type, circuit, tariff or crew it is for
 * @param quantity how much of it: pieces at once, or an amount a year
 * @param unit of the quantity, such as "piece", "kWh/year"
 * @param presentCostPerUnit over the horizon, replacement and residual value included
 * @param presentCost quantity times the former
 */
public record CostLine(
        Category category, String item, double quantity, String unit, double presentCostPerUnit, double presentCost) {

    /** Kinds of cost, in the order in which they are listed. */
    public enum Category {
        /** Packs bought, without wear. */
        PACKS,
        /** Packs replaced as they wear. */
        PACK_WEAR,
        /** Chargers, mounted or carried. */
        CHARGERS,
        /** Load-sharing units. */
        SHARING_UNITS,
        /** Power banks. */
        POWER_BANKS,
        /** New circuits. */
        CIRCUITS,
        /** A bigger supply. */
        SUPPLY,
        /** Owned pieces moved here from other depots. */
        MOVES,
        /** Energy from the grid. */
        ENERGY,
        /** Demand charges above those of the base load. */
        DEMAND,
        /** Standing charges. */
        STANDING,
        /** What it costs crews to work from their base. */
        CREW_BASES,
        /** Petrol of crews that stay on it. */
        PETROL,
        /** Energy not covered. */
        SHORTAGE
    }
}
