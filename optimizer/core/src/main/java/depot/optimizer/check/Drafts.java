package depot.optimizer.check;

import depot.optimizer.dictionary.CrewTables;
import depot.optimizer.dictionary.DepotTables;
import depot.optimizer.dictionary.EquipmentTables;
import depot.optimizer.dictionary.Field;
import depot.optimizer.dictionary.FinanceTables;
import depot.optimizer.dictionary.OrderTables;
import depot.optimizer.dictionary.RolloutTables;
import depot.optimizer.dictionary.RouteTables;
import depot.optimizer.dictionary.StoreTables;
import depot.optimizer.dictionary.Table;
import depot.optimizer.dictionary.TariffTables;
import depot.optimizer.scenario.BaseLoad;
import depot.optimizer.scenario.ChargeTime;
import depot.optimizer.scenario.ChargerType;
import depot.optimizer.scenario.Circuit;
import depot.optimizer.scenario.Crew;
import depot.optimizer.scenario.CrewBase;
import depot.optimizer.scenario.CrewConversion;
import depot.optimizer.scenario.DeliveryLimit;
import depot.optimizer.scenario.Depot;
import depot.optimizer.scenario.DepreciationShare;
import depot.optimizer.scenario.MoveCost;
import depot.optimizer.scenario.Owned;
import depot.optimizer.scenario.PackType;
import depot.optimizer.scenario.Phase;
import depot.optimizer.scenario.PowerBankType;
import depot.optimizer.scenario.PriceBand;
import depot.optimizer.scenario.PriceTier;
import depot.optimizer.scenario.RegionBudget;
import depot.optimizer.scenario.RouteStop;
import depot.optimizer.scenario.Season;
import depot.optimizer.scenario.SharingUnitType;
import depot.optimizer.scenario.TariffTerms;
import depot.optimizer.scenario.Tool;
import depot.optimizer.scenario.Work;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * The records of all sound rows, before the rules between tables have passed. Rules look things up here; what is
 * missing because its own row is wrong was reported there, and rules keep silent about it.
 */
final class Drafts {
    final Optional<TypedRow> settings;
    final List<Located<Season>> seasons;
    final List<Located<Depot>> depots;
    final List<Located<Circuit>> circuits;
    final List<Located<BaseLoad>> baseLoads;
    final List<Located<PackType>> packTypes;
    final List<Located<ChargerType>> chargerTypes;
    final List<Located<ChargeTime>> chargeTimes;
    final List<Located<SharingUnitType>> sharingUnitTypes;
    final List<Located<PowerBankType>> powerBankTypes;
    final List<Located<Tool>> tools;
    final List<Located<Crew>> crews;
    final List<Located<CrewBase>> crewBases;
    final List<Located<RouteStop>> stops;
    final List<Located<Work>> work;
    final List<Located<PriceBand>> priceBands;
    final List<Located<TariffTerms>> tariffTerms;
    final List<Located<Owned>> owned;
    final List<Located<Phase>> phases;
    final List<Located<RegionBudget>> regionBudgets;
    final List<Located<CrewConversion>> conversions;
    final List<Located<PriceTier>> priceTiers;
    final List<Located<DeliveryLimit>> deliveryLimits;
    final List<Located<MoveCost>> moves;
    final List<Located<DepreciationShare>> depreciation;

    final Map<String, Located<Depot>> depotsById;
    final Map<String, Located<Circuit>> circuitsById;
    final Map<String, Located<Crew>> crewsById;
    final Map<String, Located<PackType>> packTypesById;
    final Map<String, Located<ChargerType>> chargerTypesById;

    private final Map<String, TypedTable> tables;
    private Optional<List<Route>> routes = Optional.empty();

    /**
     * Makes the records.
     *
     * @param settings empty: unreadable
     * @param tables every table of the dictionary, by file
     */
    Drafts(Optional<TypedRow> settings, Map<String, TypedTable> tables) {
        this.settings = settings;
        this.tables = tables;
        this.seasons = records(RouteTables.Seasons.TABLE, CrewRecords::season);
        this.depots = records(DepotTables.Depots.TABLE, DepotRecords::depot);
        this.circuits = records(DepotTables.Circuits.TABLE, DepotRecords::circuit);
        this.baseLoads = records(DepotTables.BaseLoads.TABLE, DepotRecords::baseLoad);
        this.packTypes = records(EquipmentTables.PackTypes.TABLE, EquipmentRecords::packType);
        this.chargerTypes = records(EquipmentTables.ChargerTypes.TABLE, EquipmentRecords::chargerType);
        this.chargeTimes = records(EquipmentTables.ChargeTimes.TABLE, EquipmentRecords::chargeTime);
        this.sharingUnitTypes = records(StoreTables.SharingUnits.TABLE, EquipmentRecords::sharingUnitType);
        this.powerBankTypes = records(StoreTables.PowerBanks.TABLE, EquipmentRecords::powerBankType);
        this.tools = records(CrewTables.Tools.TABLE, CrewRecords::tool);
        this.crews = records(CrewTables.Crews.TABLE, CrewRecords::crew);
        this.crewBases = records(CrewTables.CrewBases.TABLE, CrewRecords::crewBase);
        this.stops = records(RouteTables.Stops.TABLE, CrewRecords::routeStop);
        this.work = records(RouteTables.WorkRows.TABLE, CrewRecords::work);
        this.priceBands = records(TariffTables.Tariffs.TABLE, DepotRecords::priceBand);
        this.tariffTerms = records(TariffTables.Terms.TABLE, DepotRecords::tariffTerms);
        this.owned = records(StoreTables.OwnedItems.TABLE, EquipmentRecords::owned);
        this.phases = records(RolloutTables.Phases.TABLE, RolloutRecords::phase);
        this.regionBudgets = records(RolloutTables.RegionBudgets.TABLE, RolloutRecords::regionBudget);
        Phase first = phases.isEmpty() ? Phase.NOW : phases.get(0).value();
        this.conversions = records(RolloutTables.CrewPhases.TABLE, row -> RolloutRecords.conversion(row, first));
        this.priceTiers = records(OrderTables.PriceTiers.TABLE, RolloutRecords::priceTier);
        this.deliveryLimits = records(OrderTables.DeliveryLimits.TABLE, RolloutRecords::deliveryLimit);
        this.moves = records(OrderTables.Moves.TABLE, RolloutRecords::moveCost);
        this.depreciation = records(FinanceTables.Depreciation.TABLE, FinanceRecords::depreciationShare);
        this.depotsById = byId(depots, Depot::id);
        this.circuitsById = byId(circuits, Circuit::id);
        this.crewsById = byId(crews, Crew::id);
        this.packTypesById = byId(packTypes, PackType::id);
        this.chargerTypesById = byId(chargerTypes, ChargerType::id);
    }

    TypedTable table(Table table) {
        return tables.get(table.file());
    }

    /** Whether all of some tables was read, so that what they do not say is really not there. */
    boolean whole(Table... needed) {
        return List.of(needed).stream()
                .allMatch(table -> tables.get(table.file()).whole());
    }

    /** The days of all crews, made when first asked for. */
    List<Route> routes() {
        if (routes.isEmpty()) {
            routes = Optional.of(Route.all(this));
        }
        return routes.get();
    }

    /** Values of a column in rows that are not sound: what is said about them may be incomplete. */
    <T> Set<T> inBrokenRows(Table table, Field<T> field) {
        return tables.get(table.file()).rows().stream()
                .filter(row -> !row.sound())
                .flatMap(row -> row.find(field).stream())
                .collect(Collectors.toSet());
    }

    private <T> List<Located<T>> records(Table table, Function<TypedRow, T> maker) {
        return tables.get(table.file())
                .sound()
                .map(row -> new Located<>(maker.apply(row), row))
                .toList();
    }

    private static <T> Map<String, Located<T>> byId(List<Located<T>> records, Function<T, String> id) {
        Map<String, Located<T>> byId = new LinkedHashMap<>();
        records.forEach(located -> byId.putIfAbsent(id.apply(located.value()), located));
        return byId;
    }
}
