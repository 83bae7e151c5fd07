package depot.optimizer.finance;

import depot.optimizer.scenario.ChargerType;
import depot.optimizer.scenario.Circuit;
import depot.optimizer.scenario.Crew;
import depot.optimizer.scenario.CrewBase;
import depot.optimizer.scenario.Depot;
import depot.optimizer.scenario.MoveCost;
import depot.optimizer.scenario.PackType;
import depot.optimizer.scenario.PowerBankType;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.scenario.Season;
import depot.optimizer.scenario.SharingUnitType;
import depot.optimizer.scenario.TariffTerms;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Everything that the plan of a depot may have to pay for.
 *
 * @param circuits of the depot
 * @param crews that may work from the depot
 * @param chargerTypes those to be mounted first, then those that crews carry
 * @param standingPerDay paid each day of the year
 * @param demandPricePerKwMonth 0: no demand charge
 * @param baseCostPerYear what it costs a year that a crew works from the depot, by crew; those that cost nothing are left out
 * @param moveCosts what moving a piece here from another depot costs, by item
 * @param shortagePerKwh price of a kWh that is not covered
 */
public record DepotPrices(
        Depot depot,
        List<Circuit> circuits,
        List<Crew> crews,
        List<PackType> packTypes,
        List<ChargerType> chargerTypes,
        List<SharingUnitType> unitTypes,
        List<PowerBankType> bankTypes,
        List<Season> seasons,
        double standingPerDay,
        double demandPricePerKwMonth,
        Map<String, Double> baseCostPerYear,
        Map<String, Double> moveCosts,
        double shortagePerKwh) {

    /**
     * Price of a kWh short where shortage is forbidden: far above any tool's, far below what would make the model's numbers ill-conditioned. It
     * never enters a plan's cost without exit status 3.
     */
    private static final double FORBIDDEN_SHORTAGE_PER_KWH = 1000;

    /** The prices of a depot. */
    public static DepotPrices of(Scenario scenario, Depot depot) {
        Optional<TariffTerms> terms = scenario.tariffTerms().stream()
                .filter(row -> row.tariff().equals(depot.tariff()))
                .findFirst();
        return new DepotPrices(
                depot,
                scenario.circuits().stream()
                        .filter(circuit -> circuit.depot().equals(depot.id()))
                        .toList(),
                scenario.crews().stream()
                        .filter(crew -> scenario.basesOf(crew).contains(depot.id()))
                        .toList(),
                scenario.packTypes(),
                Stream.concat(
                                scenario.chargerTypes().stream().filter(type -> !type.portable()),
                                scenario.chargerTypes().stream().filter(ChargerType::portable))
                        .toList(),
                scenario.sharingUnitTypes(),
                scenario.powerBankTypes(),
                scenario.seasons(),
                terms.map(row -> row.standingPerDay().doubleValue()).orElse(0.0),
                terms.map(row -> row.demandPricePerKwMonth().doubleValue()).orElse(0.0),
                baseCostPerYear(scenario, depot),
                scenario.coupling().moves().stream().collect(Collectors.toMap(MoveCost::item, move -> move.cost()
                        .doubleValue())),
                shortagePerKwh(scenario));
    }

    /** Price of a kWh that is not covered, or the penalty that stands for it where none may be. */
    public static double shortagePerKwh(Scenario scenario) {
        return scenario.shortageCostPerKwh().map(BigDecimal::doubleValue).orElse(FORBIDDEN_SHORTAGE_PER_KWH);
    }

    /** What it costs a year that a crew works from a depot, by crew; those that cost nothing are left out. */
    public static Map<String, Double> baseCostPerYear(Scenario scenario, Depot depot) {
        return scenario.crewBases().stream()
                .filter(base ->
                        base.depot().equals(depot.id()) && base.costPerYear().signum() > 0)
                .collect(Collectors.toUnmodifiableMap(
                        CrewBase::crew, base -> base.costPerYear().doubleValue()));
    }
}
