package depot.optimizer.cli;

import depot.optimizer.check.Finding;
import depot.optimizer.check.Finding.Severity;
import depot.optimizer.dictionary.OrderTables;
import depot.optimizer.dictionary.RolloutTables;
import depot.optimizer.dictionary.Table;
import depot.optimizer.report.text.Figures;
import depot.optimizer.scenario.Coupling;
import java.util.ArrayList;
import java.util.List;

/** Refuses tables that are read and checked but that no plan takes into account, so that none is ignored in silence. */
final class NotYetPlanned {
    private NotYetPlanned() {}

    /**
     * Lets a scenario pass whose depots nothing couples.
     *
     * @throws UserError after a line for each table that says more than its absence
     */
    static void refuse(ScenarioInput input, Terminal terminal) {
        List<Table> tables = tables(input.scenario().coupling());
        for (Table table : tables) {
            Finding finding = new Finding(
                    Severity.ERROR,
                    table.file(),
                    0,
                    "",
                    "",
                    "this version plans without it",
                    "take the table out of the folder to plan without it");
            terminal.problem(ScenarioInput.describe(input.folder(), finding));
        }
        if (!tables.isEmpty()) {
            throw new UserError(
                    ExitStatus.BAD_INPUT,
                    "%s in %s not planned for; nothing was written"
                            .formatted(Figures.count(tables.size(), "table"), input.folder()),
                    "");
        }
    }

    /** Tables of a scenario that no plan takes into account. */
    static List<Table> tables(Coupling coupling) {
        List<Table> tables = new ArrayList<>();
        boolean phases = coupling.phases().stream()
                .anyMatch(phase -> phase.year() > 0 || phase.budget().isPresent());
        if (phases) {
            tables.add(RolloutTables.Phases.TABLE);
            // Within a single phase, a crew changes in it or never, and that is planned for.
            addIfAny(tables, coupling.conversions(), RolloutTables.CrewPhases.TABLE);
        }
        addIfAny(tables, coupling.regionBudgets(), RolloutTables.RegionBudgets.TABLE);
        addIfAny(tables, coupling.priceTiers(), OrderTables.PriceTiers.TABLE);
        addIfAny(tables, coupling.deliveryLimits(), OrderTables.DeliveryLimits.TABLE);
        addIfAny(tables, coupling.moves(), OrderTables.Moves.TABLE);
        return tables;
    }

    private static void addIfAny(List<Table> tables, List<?> rows, Table table) {
        if (!rows.isEmpty()) {
            tables.add(table);
        }
    }
}
