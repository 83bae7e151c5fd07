package depot.optimizer.sweep.change;

import depot.optimizer.scenario.BaseLoad;
import depot.optimizer.scenario.ChargeTime;
import depot.optimizer.scenario.ChargerType;
import depot.optimizer.scenario.Circuit;
import depot.optimizer.scenario.Coupling;
import depot.optimizer.scenario.Crew;
import depot.optimizer.scenario.CrewBase;
import depot.optimizer.scenario.Depot;
import depot.optimizer.scenario.Owned;
import depot.optimizer.scenario.PackType;
import depot.optimizer.scenario.PowerBankType;
import depot.optimizer.scenario.PriceBand;
import depot.optimizer.scenario.RouteStop;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.scenario.Season;
import depot.optimizer.scenario.SharingUnitType;
import depot.optimizer.scenario.SolveSettings;
import depot.optimizer.scenario.TariffTerms;
import depot.optimizer.scenario.Work;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/** A scenario's parts on their way into another one: what is not set again stays as it was. */
final class ScenarioCopy {

    int horizonYears;
    double discountRate;
    double demandQuantile;
    double demandSpread;
    double packHealth;
    Optional<BigDecimal> shortageCostPerKwh;
    double electricityPriceGrowth;
    SolveSettings solve;
    List<Season> seasons;
    List<Depot> depots;
    List<Circuit> circuits;
    List<BaseLoad> baseLoads;
    List<PackType> packTypes;
    List<ChargerType> chargerTypes;
    List<ChargeTime> chargeTimes;
    List<SharingUnitType> sharingUnitTypes;
    List<PowerBankType> powerBankTypes;
    List<Crew> crews;
    List<CrewBase> crewBases;
    List<RouteStop> stops;
    List<Work> work;
    List<PriceBand> priceBands;
    List<TariffTerms> tariffTerms;
    List<Owned> owned;
    Coupling coupling;

    private final Scenario from;

    ScenarioCopy(Scenario from) {
        this.from = from;
        horizonYears = from.horizonYears();
        discountRate = from.discountRate();
        demandQuantile = from.demandQuantile();
        demandSpread = from.demandSpread();
        packHealth = from.packHealth();
        shortageCostPerKwh = from.shortageCostPerKwh();
        electricityPriceGrowth = from.electricityPriceGrowth();
        solve = from.solve();
        seasons = from.seasons();
        depots = from.depots();
        circuits = from.circuits();
        baseLoads = from.baseLoads();
        packTypes = from.packTypes();
        chargerTypes = from.chargerTypes();
        chargeTimes = from.chargeTimes();
        sharingUnitTypes = from.sharingUnitTypes();
        powerBankTypes = from.powerBankTypes();
        crews = from.crews();
        crewBases = from.crewBases();
        stops = from.stops();
        work = from.work();
        priceBands = from.priceBands();
        tariffTerms = from.tariffTerms();
        owned = from.owned();
        coupling = from.coupling();
    }

    Scenario scenario() {
        return new Scenario(
                from.name(),
                from.currency(),
                from.timeZone(),
                horizonYears,
                discountRate,
                demandQuantile,
                demandSpread,
                packHealth,
                from.packSharing(),
                shortageCostPerKwh,
                electricityPriceGrowth,
                solve,
                seasons,
                depots,
                circuits,
                baseLoads,
                packTypes,
                chargerTypes,
                chargeTimes,
                sharingUnitTypes,
                powerBankTypes,
                from.tools(),
                crews,
                crewBases,
                stops,
                work,
                priceBands,
                tariffTerms,
                owned,
                coupling,
                from.finance());
    }
}
