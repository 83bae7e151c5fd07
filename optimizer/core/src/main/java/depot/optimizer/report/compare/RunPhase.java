package depot.optimizer.report.compare;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * What a run does in a phase.
 *
 * @param begins years from now
 * @param crewsWithPacks that work with packs in it
 * @param crewsOnPetrol that do not yet
 * @param spent when it begins, quantity prices and spare pieces counted
 * @param budget of the fleet, empty: none
 */
record RunPhase(double begins, double crewsWithPacks, double crewsOnPetrol, double spent, OptionalDouble budget) {

    private static final String TABLE = "rollout.csv";

    /** From rollout.csv, by id, in order; empty for a run without it. */
    static Map<String, RunPhase> read(Path run) throws UnreadableRunException {
        if (!Files.exists(run.resolve(TABLE))) {
            return Map.of();
        }
        RunTable table = RunTable.read(run, TABLE);
        Map<String, RunPhase> phases = new LinkedHashMap<>();
        for (int row = 0; row < table.size(); row++) {
            phases.put(
                    table.text(row, "phase"),
                    new RunPhase(
                            table.number(row, "begins_in_year"),
                            table.number(row, "electric_crews"),
                            table.number(row, "petrol_crews"),
                            table.number(row, "purchases") + table.number(row, "fleet_purchases"),
                            table.find(row, "budget")));
        }
        return phases;
    }
}
