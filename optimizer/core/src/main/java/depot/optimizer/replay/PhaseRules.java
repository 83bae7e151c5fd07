package depot.optimizer.replay;

import depot.optimizer.plan.DepotPlan;
import depot.optimizer.replay.Violation.Kind;

/** From phase to phase, what was bought stays: no fewer pieces of a type, the circuits built, the bigger supply. */
final class PhaseRules {
    private PhaseRules() {}

    static void check(DepotPlan plan, EarlierPhases earlier, Violations violations) {
        earlier.lastStock().forEach((item, before) -> {
            int now = Stock.all(plan).getOrDefault(item, new Stock(0, 0)).count();
            if (now < before.count()) {
                violations.add(
                        Kind.PHASE,
                        item,
                        now,
                        before.count(),
                        "phase " + plan.phase() + " has " + now + " " + item + ", the phase before had "
                                + before.count());
            }
        });
        earlier.last().ifPresent(before -> {
            for (String circuit : before.circuitsBuilt()) {
                if (!plan.circuitsBuilt().contains(circuit)) {
                    violations.add(
                            Kind.PHASE,
                            circuit,
                            "circuit " + circuit + " was built, and is not there in " + plan.phase());
                }
            }
            if (before.supplyUpgraded() && !plan.supplyUpgraded()) {
                violations.add(
                        Kind.PHASE, plan.depot(), "the bigger supply was bought, and is not there in " + plan.phase());
            }
        });
    }
}
