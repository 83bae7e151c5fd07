package depot.optimizer.cli;

import depot.optimizer.check.Finding;
import depot.optimizer.check.Finding.Severity;
import depot.optimizer.dictionary.CrewTables;
import depot.optimizer.dictionary.OrderTables;
import depot.optimizer.dictionary.RolloutTables;
import depot.optimizer.dictionary.RouteTables.Stops;
import depot.optimizer.dictionary.Table;
import depot.optimizer.report.text.Figures;
import depot.optimizer.scenario.Coupling;
import depot.optimizer.scenario.RouteStop;
import depot.optimizer.scenario.Scenario;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Refuses tables that join depots or phases where each depot is varied by itself, so that none is ignored in silence. */
final class SharedTables {
    private SharedTables() {}

    /**
     * Lets a scenario pass whose depots share nothing and that has a single phase.
     *
     * @throws UserError after a line for each table that says more than its absence
     */
    static void refuse(ScenarioInput input, Terminal terminal) {
        List<Table> tables = of(input.scenario());
        for (Table table : tables) {
            Finding finding = new Finding(
                    Severity.ERROR,
                    table.file(),
                    0,
                    "",
                    "",
                    "this command takes depots by themselves, and this table joins them",
                    "take the table out of a copy of the folder to do without it");
            terminal.problem(ScenarioInput.describe(input.folder(), finding));
        }
        Optional<RouteStop> visit = input.scenario().visits().stream().findFirst();
        visit.ifPresent(stop -> terminal.problem(ScenarioInput.describe(
                input.folder(),
                new Finding(
                        Severity.ERROR,
                        Stops.TABLE.file(),
                        0,
                        Stops.PLACE.name(),
                        stop.place(),
                        "this command takes depots by themselves, and crews such as %s may use the bays of other depots"
                                .formatted(stop.crew()),
                        "give these stops the name of a site in a copy of the folder to do without it"))));
        if (!tables.isEmpty() || visit.isPresent()) {
            throw new UserError(
                    ExitStatus.BAD_INPUT,
                    "%s in %s not taken into account; nothing was written"
                            .formatted(
                                    tables.isEmpty() ? "visits" : Figures.count(tables.size(), "table"),
                                    input.folder()),
                    "");
        }
    }

    /** Tables that join depots or phases, of those that a scenario has. */
    static List<Table> of(Scenario scenario) {
        Coupling coupling = scenario.coupling();
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
        boolean bases = scenario.crews().stream()
                .anyMatch(crew -> scenario.basesOf(crew).size() > 1);
        addIfAny(tables, bases ? scenario.crewBases() : List.of(), CrewTables.CrewBases.TABLE);
        return tables;
    }

    private static void addIfAny(List<Table> tables, List<?> rows, Table table) {
        if (!rows.isEmpty()) {
            tables.add(table);
        }
    }
}
