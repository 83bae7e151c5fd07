package depot.optimizer.plan;

/**
 * Why a depot's solve stopped, and where it stood.
 *
 * @param reason in plain words, such as "gap reached" or "node limit"
 * @param certificate cost, bound and gap of the depot
 * @param rounds how often binding days were added
 * @param tightenings how often a day that failed its replay was tightened
 * @param kindsOfDay different days of the year
 * @param bindingDays how many of them were in the final model
 * @param variables in the final model
 * @param constraints in the final model
 * @param nodes branch-and-bound nodes in all
 */
public record SolveStop(
        String reason,
        Certificate certificate,
        int rounds,
        int tightenings,
        int kindsOfDay,
        int bindingDays,
        int variables,
        int constraints,
        long nodes) {

    /** The same with another certificate. */
    public SolveStop withCertificate(Certificate other) {
        return new SolveStop(
                reason, other, rounds, tightenings, kindsOfDay, bindingDays, variables, constraints, nodes);
    }

    /** The same with another reason. */
    public SolveStop withReason(String other) {
        return new SolveStop(
                other, certificate, rounds, tightenings, kindsOfDay, bindingDays, variables, constraints, nodes);
    }
}
