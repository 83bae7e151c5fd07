package depot.optimizer.plan;

import java.util.List;
import java.util.Map;
import java.util.Optional;

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
 * @param fleetCosts lines that no single depot pays: reductions of quantity prices, spare pieces
 * @param proof what the bound is made of, nothing where it is the sum of the depots' own
 * @param depots phase by phase, in each in the order of depots.csv
 */
public record Plan(
        int formatVersion,
        String scenario,
        String currency,
        Map<String, String> inputHashes,
        String solver,
        PlanSettings settings,
        Certificate certificate,
        List<FleetCost> fleetCosts,
        BoundProof proof,
        List<DepotPlan> depots) {

    /** The layout that this version writes and reads. */
    public static final int FORMAT_VERSION = 4;

    /** A plan for depots that share nothing. */
    public Plan(
            int formatVersion,
            String scenario,
            String currency,
            Map<String, String> inputHashes,
            String solver,
            PlanSettings settings,
            Certificate certificate,
            List<DepotPlan> depots) {
        this(
                formatVersion,
                scenario,
                currency,
                inputHashes,
                solver,
                settings,
                certificate,
                List.of(),
                BoundProof.NONE,
                depots);
    }

    /** The same plan at other costs; what a bound was made of is left out. */
    public Plan with(Certificate otherCertificate, List<FleetCost> otherFleetCosts, List<DepotPlan> otherDepots) {
        return new Plan(
                formatVersion,
                scenario,
                currency,
                inputHashes,
                solver,
                settings,
                otherCertificate,
                otherFleetCosts,
                BoundProof.NONE,
                otherDepots);
    }

    /** The plan of the same depot for the phase before; empty for the first phase. */
    public Optional<DepotPlan> before(DepotPlan plan) {
        DepotPlan before = null;
        for (DepotPlan other : depots) {
            if (other.depot().equals(plan.depot())) {
                if (other.phase().equals(plan.phase())) {
                    break;
                }
                before = other;
            }
        }
        return Optional.ofNullable(before);
    }

    /** Ids of the phases, in order. */
    public List<String> phases() {
        return depots.stream().map(DepotPlan::phase).distinct().toList();
    }
}
