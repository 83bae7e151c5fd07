package depot.optimizer.check;

import depot.optimizer.dictionary.Settings;
import depot.optimizer.scenario.Coupling;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.scenario.SolveSettings;
import java.util.List;

/** Puts a scenario together out of drafts that passed every rule. */
final class ScenarioAssembly {
    private ScenarioAssembly() {}

    static Scenario scenario(Drafts drafts) {
        TypedRow settings = drafts.settings.orElseThrow();
        return new Scenario(
                settings.get(Settings.NAME),
                settings.get(Settings.CURRENCY),
                settings.get(Settings.TIME_ZONE),
                settings.get(Settings.HORIZON_YEARS),
                settings.get(Settings.DISCOUNT_RATE),
                settings.get(Settings.DEMAND_QUANTILE),
                settings.get(Settings.DEMAND_SPREAD),
                settings.get(Settings.PACK_HEALTH),
                settings.get(Settings.PACK_SHARING),
                settings.get(Settings.SHORTAGE_COST_PER_KWH),
                settings.get(Settings.ELECTRICITY_PRICE_GROWTH),
                solveSettings(settings),
                values(drafts.seasons),
                values(drafts.depots),
                values(drafts.circuits),
                values(drafts.baseLoads),
                values(drafts.packTypes),
                values(drafts.chargerTypes),
                values(drafts.chargeTimes),
                values(drafts.sharingUnitTypes),
                values(drafts.powerBankTypes),
                values(drafts.tools),
                values(drafts.crews),
                values(drafts.crewBases),
                values(drafts.stops),
                values(drafts.work),
                values(drafts.priceBands),
                values(drafts.tariffTerms),
                values(drafts.owned),
                coupling(drafts),
                FinanceRecords.terms(settings, values(drafts.depreciation)));
    }

    private static Coupling coupling(Drafts drafts) {
        return new Coupling(
                values(drafts.phases),
                values(drafts.regionBudgets),
                values(drafts.conversions),
                values(drafts.priceTiers),
                values(drafts.deliveryLimits),
                values(drafts.moves));
    }

    private static SolveSettings solveSettings(TypedRow settings) {
        return new SolveSettings(
                settings.get(Settings.GAP),
                settings.get(Settings.NODES),
                settings.get(Settings.TIME_LIMIT_SECONDS),
                settings.get(Settings.THREADS),
                settings.get(Settings.SEED),
                settings.get(Settings.HANDOVER_MINUTES));
    }

    private static <T> List<T> values(List<Located<T>> located) {
        return located.stream().map(Located::value).toList();
    }
}
