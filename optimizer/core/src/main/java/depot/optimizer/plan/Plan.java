package depot.optimizer.plan;

import java.util.List;
import java.util.Map;

/**
 * A plan for the whole fleet, as written to plan.json.
 *
 * @param formatVersion version of this layout
 * @param scenario name of the scenario it was made for
 * @param currency ISO 4217 code of every amount
 * @param inputHashes SHA-256 of each input file, by file name
 * @param solver name and version of the solver
 * @param settings what the solve was asked for
 * @param certificate cost, proven bound and gap of the fleet
 * @param depots in the order of depots.csv
 */
public record Plan(
        int formatVersion,
        String scenario,
        String currency,
        Map<String, String> inputHashes,
        String solver,
        PlanSettings settings,
        Certificate certificate,
        List<DepotPlan> depots) {

    /** The layout that this version writes and reads. */
    public static final int FORMAT_VERSION = 2;
}
