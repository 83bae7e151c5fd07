package depot.optimizer.replay;

import depot.optimizer.replay.Violation.Kind;

/** Only crews that need not change to packs in any phase stay on petrol. */
final class PetrolRules {
    private PetrolRules() {}

    static void check(DepotTables tables, Violations violations) {
        for (String crew : tables.onPetrol()) {
            if (!tables.crews().containsKey(crew)) {
                violations.missing("crew", crew, "the crews on petrol");
            } else if (tables.scenario()
                    .coupling()
                    .conversionOf(crew)
                    .latestPhase()
                    .isPresent()) {
                violations.add(Kind.PETROL, crew, crew + " stays on petrol, but has to change to packs");
            }
        }
    }
}
