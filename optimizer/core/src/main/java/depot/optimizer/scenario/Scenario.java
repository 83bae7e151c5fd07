package depot.optimizer.scenario;

import java.math.BigDecimal;
import java.time.ZoneId;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A whole checked scenario: every reference resolves, every value lies in its range.
 *
 * @param horizonYears years over which costs are counted
 * @param discountRate yearly, 0.05 is five per cent
 * @param demandQuantile share of days whose energy need a plan must cover, 0.5 to below 1
 * @param demandSpread coefficient of variation of the energy need of one stop
 * @param packHealth share of the new capacity that packs are planned to have left, 0 to 1
 * @param shortageCostPerKwh price of energy not delivered by packs; empty: no shortage is allowed
 * @param electricityPriceGrowth yearly, above the general discounting
 * @param coupling what the depots share beside the types of equipment
 * @param finance taxes, petrol and carbon; they change no plan
 */
public record Scenario(
        String name,
        Currency currency,
        ZoneId timeZone,
        int horizonYears,
        double discountRate,
        double demandQuantile,
        double demandSpread,
        double packHealth,
        PackSharing packSharing,
        Optional<BigDecimal> shortageCostPerKwh,
        double electricityPriceGrowth,
        SolveSettings solve,
        List<Season> seasons,
        List<Depot> depots,
        List<Circuit> circuits,
        List<BaseLoad> baseLoads,
        List<PackType> packTypes,
        List<ChargerType> chargerTypes,
        List<ChargeTime> chargeTimes,
        List<SharingUnitType> sharingUnitTypes,
        List<PowerBankType> powerBankTypes,
        List<Tool> tools,
        List<Crew> crews,
        List<CrewBase> crewBases,
        List<RouteStop> stops,
        List<Work> work,
        List<PriceBand> priceBands,
        List<TariffTerms> tariffTerms,
        List<Owned> owned,
        Coupling coupling,
        FinanceTerms finance) {

    /** Copies the lists, so that a scenario never changes. */
    public Scenario {
        seasons = List.copyOf(seasons);
        depots = List.copyOf(depots);
        circuits = List.copyOf(circuits);
        baseLoads = List.copyOf(baseLoads);
        packTypes = List.copyOf(packTypes);
        chargerTypes = List.copyOf(chargerTypes);
        chargeTimes = List.copyOf(chargeTimes);
        sharingUnitTypes = List.copyOf(sharingUnitTypes);
        powerBankTypes = List.copyOf(powerBankTypes);
        tools = List.copyOf(tools);
        crews = List.copyOf(crews);
        crewBases = List.copyOf(crewBases);
        stops = List.copyOf(stops);
        work = List.copyOf(work);
        priceBands = List.copyOf(priceBands);
        tariffTerms = List.copyOf(tariffTerms);
        owned = List.copyOf(owned);
    }

    /** The same scenario, to be solved with other settings. */
    public Scenario withSolve(SolveSettings settings) {
        return new Scenario(
                name,
                currency,
                timeZone,
                horizonYears,
                discountRate,
                demandQuantile,
                demandSpread,
                packHealth,
                packSharing,
                shortageCostPerKwh,
                electricityPriceGrowth,
                settings,
                seasons,
                depots,
                circuits,
                baseLoads,
                packTypes,
                chargerTypes,
                chargeTimes,
                sharingUnitTypes,
                powerBankTypes,
                tools,
                crews,
                crewBases,
                stops,
                work,
                priceBands,
                tariffTerms,
                owned,
                coupling,
                finance);
    }

    /**
     * Depots that a crew may work from: its own first, then those that {@link #crewBases()} lists for it, in their order.
     */
    public List<String> basesOf(Crew crew) {
        return Stream.concat(
                        Stream.of(crew.depot()),
                        crewBases.stream()
                                .filter(base -> base.crew().equals(crew.id()))
                                .map(CrewBase::depot))
                .distinct()
                .toList();
    }

    /**
     * Stops at a depot that is not the crew's own ({@link Crew#depot()}), in the order of {@link #stops()}: the crew may
     * use that depot's bays there, as long as it stays.
     */
    public List<RouteStop> visits() {
        Set<String> ids = depots.stream().map(Depot::id).collect(Collectors.toSet());
        Map<String, String> own = crews.stream().collect(Collectors.toMap(Crew::id, Crew::depot));
        return stops.stream()
                .filter(stop -> ids.contains(stop.place()) && !stop.place().equals(own.get(stop.crew())))
                .toList();
    }
}
