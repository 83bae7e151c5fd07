package depot.optimizer.plan;

import depot.optimizer.scenario.Crew;
import depot.optimizer.scenario.Phase;
import depot.optimizer.scenario.Scenario;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The plan of one depot for one phase: what is there in it, bought then or before, and how its days are run.
 *
 * @param phase id of the phase
 * @param guests crews of other depots that work from this one, with packs, in the order of crews.csv
 * @param away crews of the depot that work from another, with packs, in the order of crews.csv
 * @param stop why the solve stopped, its bound and its size
 * @param onPetrol crews that stay on petrol, in the order of crews.csv
 * @param supplyUpgraded whether the bigger supply is bought
 * @param circuitsBuilt candidate circuits that are built
 * @param units load-sharing units and the circuit each sits on
 * @param chargers every charger of the depot, one entry each
 * @param banks where each power bank is recharged
 * @param packs packs by pool and type
 * @param kits portable chargers and power banks that crews carry
 * @param moves owned pieces that come from other depots or go there when the phase begins
 * @param days what happens on each kind of day; together they cover every season and weekday with work once
 * @param costs lines that add up to the depot's cost: what the phase buys and what its years pay
 */
public record DepotPlan(
        String depot,
        String phase,
        SolveStop stop,
        List<String> guests,
        List<String> away,
        List<String> onPetrol,
        boolean supplyUpgraded,
        List<String> circuitsBuilt,
        List<UnitPlacement> units,
        List<ChargerPlacement> chargers,
        List<BankPlacement> banks,
        List<PackStock> packs,
        List<CrewKit> kits,
        List<MovedPieces> moves,
        List<DayPlan> days,
        List<CostLine> costs) {

    /** A plan of the only phase, without guests and moves. */
    public DepotPlan(
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
        this(
                depot,
                Phase.NOW.id(),
                stop,
                List.of(),
                List.of(),
                onPetrol,
                supplyUpgraded,
                circuitsBuilt,
                units,
                chargers,
                banks,
                packs,
                kits,
                List.of(),
                days,
                costs);
    }

    /** The crews that work from the depot in the phase, with packs or on petrol, in the order of the scenario. */
    public List<Crew> crews(Scenario scenario) {
        return scenario.crews().stream()
                .filter(crew -> crew.depot().equals(depot) ? !away.contains(crew.id()) : guests.contains(crew.id()))
                .toList();
    }

    /** Whether packs in its chargers are those of a visiting crew, of which the depot has none itself. */
    public boolean visitor(String pool) {
        return packs.stream().noneMatch(stock -> stock.pool().equals(pool));
    }

    /** The same plan when some of its crews on petrol turn out to work from other depots. */
    public DepotPlan withAway(Set<String> crews) {
        return withCrews(
                Stream.concat(away.stream(), onPetrol.stream().filter(crews::contains))
                        .toList(),
                onPetrol.stream().filter(crew -> !crews.contains(crew)).toList());
    }

    /** The same plan with others of its crews away or on petrol. */
    public DepotPlan withCrews(List<String> otherAway, List<String> otherOnPetrol) {
        return new DepotPlan(
                depot,
                phase,
                stop,
                guests,
                List.copyOf(otherAway),
                List.copyOf(otherOnPetrol),
                supplyUpgraded,
                circuitsBuilt,
                units,
                chargers,
                banks,
                packs,
                kits,
                moves,
                days,
                costs);
    }

    /** The same plan with another account of its solve. */
    public DepotPlan withStop(SolveStop other) {
        return new DepotPlan(
                depot,
                phase,
                other,
                guests,
                away,
                onPetrol,
                supplyUpgraded,
                circuitsBuilt,
                units,
                chargers,
                banks,
                packs,
                kits,
                moves,
                days,
                costs);
    }

    /** The same plan with other days and costs. */
    public DepotPlan with(List<DayPlan> otherDays, List<CostLine> otherCosts) {
        return new DepotPlan(
                depot,
                phase,
                stop,
                guests,
                away,
                onPetrol,
                supplyUpgraded,
                circuitsBuilt,
                units,
                chargers,
                banks,
                packs,
                kits,
                moves,
                List.copyOf(otherDays),
                List.copyOf(otherCosts));
    }
}
