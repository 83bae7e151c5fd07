package depot.optimizer.cli;

import depot.optimizer.dictionary.OrderTables;
import depot.optimizer.dictionary.RolloutTables;
import depot.optimizer.dictionary.Table;
import depot.optimizer.scenario.Coupling;
import java.util.ArrayList;
import java.util.List;

/** Tables that tie the plans of depots to each other. */
final class Coupled {
    private Coupled() {}

    /** Files of those that a scenario has; crews that may stay on petrol in a single phase tie nothing. */
    static List<String> tables(Coupling coupling) {
        List<String> files = new ArrayList<>();
        boolean phases = coupling.phases().stream()
                .anyMatch(phase -> phase.year() > 0 || phase.budget().isPresent());
        add(files, phases, RolloutTables.Phases.TABLE);
        add(files, !coupling.regionBudgets().isEmpty(), RolloutTables.RegionBudgets.TABLE);
        add(files, !coupling.priceTiers().isEmpty(), OrderTables.PriceTiers.TABLE);
        add(files, !coupling.deliveryLimits().isEmpty(), OrderTables.DeliveryLimits.TABLE);
        add(files, !coupling.moves().isEmpty(), OrderTables.Moves.TABLE);
        return List.copyOf(files);
    }

    private static void add(List<String> files, boolean there, Table table) {
        if (there) {
            files.add(table.file());
        }
    }
}
