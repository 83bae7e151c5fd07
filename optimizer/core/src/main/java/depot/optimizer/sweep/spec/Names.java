package depot.optimizer.sweep.spec;

import depot.optimizer.dictionary.ChangeKind.About;
import depot.optimizer.scenario.ChargerType;
import depot.optimizer.scenario.Circuit;
import depot.optimizer.scenario.Crew;
import depot.optimizer.scenario.Depot;
import depot.optimizer.scenario.PackType;
import depot.optimizer.scenario.Phase;
import depot.optimizer.scenario.PowerBankType;
import depot.optimizer.scenario.PriceBand;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.scenario.Season;
import depot.optimizer.scenario.SharingUnitType;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/** The keys of a scenario that changes can be about. */
final class Names {
    private final Scenario scenario;

    Names(Scenario scenario) {
        this.scenario = scenario;
    }

    /** Whether the fleet or a region has a budget in any phase. */
    boolean anyBudget() {
        return !scenario.coupling().regionBudgets().isEmpty()
                || scenario.coupling().phases().stream()
                        .anyMatch(phase -> phase.budget().isPresent());
    }

    List<String> of(About about) {
        return switch (about) {
            case NOTHING -> List.of();
            case PHASE -> keys(scenario.coupling().phases(), Phase::id);
            case ITEM_OR_ALL ->
                Stream.of(
                                keys(scenario.packTypes(), PackType::id),
                                keys(scenario.chargerTypes(), ChargerType::id),
                                keys(scenario.sharingUnitTypes(), SharingUnitType::id),
                                keys(scenario.powerBankTypes(), PowerBankType::id))
                        .flatMap(List::stream)
                        .toList();
            case PACK_OR_ALL -> keys(scenario.packTypes(), PackType::id);
            case CHARGER_OR_ALL -> keys(scenario.chargerTypes(), ChargerType::id);
            case TARIFF_OR_ALL -> keys(scenario.priceBands(), PriceBand::tariff);
            case SEASON_OR_ALL -> keys(scenario.seasons(), Season::id);
            case CREW_OR_ALL, CREW -> keys(scenario.crews(), Crew::id);
            case DEPOT -> keys(scenario.depots(), Depot::id);
            case CIRCUIT_OR_DEPOT ->
                Stream.concat(
                                keys(scenario.circuits(), Circuit::id).stream(),
                                keys(scenario.depots(), Depot::id).stream())
                        .toList();
        };
    }

    private static <T> List<String> keys(List<T> rows, Function<T, String> key) {
        return rows.stream().map(key).distinct().toList();
    }
}
