package depot.optimizer.plan;

import java.util.List;

/**
 * The plan of one depot.
 *
 * @param stop why the solve stopped, its bound and its size
 * @param onPetrol crews that stay on petrol, in the order of crews.csv
 * @param supplyUpgraded whether the bigger supply is bought
 * @param circuitsBuilt candidate circuits that are built
 * @param units load-sharing units and the circuit each sits on
 * @param chargers every charger of the depot, one entry each
 * @param banks where each power bank is recharged
 * @param packs packs by pool and type
 * @param kits portable chargers and power banks that crews carry
 * @param days what happens on each kind of day; together they cover every season and weekday with work once
 * @param costs lines that add up to the depot's cost
 */
public record DepotPlan(
        String depot,
        SolveStop stop,
        List<String> onPetrol,
        boolean supplyUpgraded,
        List<String> circuitsBuilt,
        List<UnitPlacement> units,
        List<ChargerPlacement> chargers,
        List<BankPlacement> banks,
        List<PackStock> packs,
        List<CrewKit> kits,
        List<DayPlan> days,
        List<CostLine> costs) {

    /** The same plan with another account of its solve. */
    public DepotPlan withStop(SolveStop other) {
        return new DepotPlan(
                depot,
                other,
                onPetrol,
                supplyUpgraded,
                circuitsBuilt,
                units,
                chargers,
                banks,
                packs,
                kits,
                days,
                costs);
    }

    /** The same plan with other days and costs. */
    public DepotPlan with(List<DayPlan> otherDays, List<CostLine> otherCosts) {
        return new DepotPlan(
                depot,
                stop,
                onPetrol,
                supplyUpgraded,
                circuitsBuilt,
                units,
                chargers,
                banks,
                packs,
                kits,
                List.copyOf(otherDays),
                List.copyOf(otherCosts));
    }
}
