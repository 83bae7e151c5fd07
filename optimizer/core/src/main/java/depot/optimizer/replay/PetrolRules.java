package depot.optimizer.replay;

import depot.optimizer.plan.DepotPlan;
import depot.optimizer.replay.Violation.Kind;
import depot.optimizer.scenario.CrewConversion;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;

/** Crews change from petrol to packs in time, not too early, and never back. */
final class PetrolRules {
    private final DepotTables tables;
    private final Violations violations;

    private PetrolRules(DepotTables tables, Violations violations) {
        this.tables = tables;
        this.violations = violations;
    }

    static void check(DepotTables tables, EarlierPhases earlier, Violations violations) {
        PetrolRules rules = new PetrolRules(tables, violations);
        tables.onPetrol().forEach(rules::staying);
        tables.crews().keySet().stream()
                .filter(crew -> !tables.onPetrol().contains(crew))
                .forEach(rules::changed);
        earlier.last().ifPresent(rules::back);
    }

    private int number(String phase) {
        return tables.scenario().coupling().phaseNumber(phase);
    }

    private int now() {
        return number(tables.phase().id());
    }

    private void staying(String crew) {
        if (!tables.crews().containsKey(crew)) {
            violations.missing("crew", crew, "the crews on petrol");
            return;
        }
        Optional<String> latest = conversion(crew).latestPhase();
        if (latest.isPresent() && number(latest.get()) <= now()) {
            violations.add(Kind.PETROL, crew, crew + " stays on petrol, but has to change to packs");
        }
    }

    private void changed(String crew) {
        String earliest = conversion(crew).earliestPhase();
        if (number(earliest) > now()) {
            violations.add(Kind.PETROL, crew, crew + " works with packs before phase " + earliest);
        }
    }

    private CrewConversion conversion(String crew) {
        return tables.scenario().coupling().conversionOf(crew);
    }

    private void back(DepotPlan before) {
        Set<String> withPacks = new HashSet<>();
        before.crews(tables.scenario()).forEach(crew -> withPacks.add(crew.id()));
        before.onPetrol().forEach(withPacks::remove);
        for (String crew : withPacks) {
            if (tables.onPetrol().contains(crew) || !tables.crews().containsKey(crew)) {
                violations.add(
                        Kind.PETROL, crew, crew + " worked with packs here in the phase before, and does not now");
            }
        }
    }
}
