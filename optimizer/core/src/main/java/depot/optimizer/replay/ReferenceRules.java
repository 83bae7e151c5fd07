package depot.optimizer.replay;

import depot.optimizer.plan.BankPlacement;
import depot.optimizer.plan.ChargerPlacement;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.UnitPlacement;
import depot.optimizer.replay.Violation.Kind;
import depot.optimizer.scenario.Circuit;
import java.util.HashSet;
import java.util.Set;

/** Whatever the plan mounts exists, and sits on a circuit that exists or is built. */
final class ReferenceRules {
    private final DepotTables tables;
    private final DepotPlan plan;
    private final Violations violations;

    private ReferenceRules(DepotTables tables, DepotPlan plan, Violations violations) {
        this.tables = tables;
        this.plan = plan;
        this.violations = violations;
    }

    static void check(DepotTables tables, DepotPlan plan, Violations violations) {
        new ReferenceRules(tables, plan, violations).check();
    }

    private void check() {
        Set<String> ids = new HashSet<>();
        for (ChargerPlacement charger : plan.chargers()) {
            if (!ids.add(charger.id())) {
                violations.add(Kind.MISSING_ITEM, charger.id(), "two chargers are called \"" + charger.id() + "\"");
            }
            if (!tables.chargerTypes().containsKey(charger.chargerType())) {
                violations.missing("charger type", charger.chargerType(), "charger " + charger.id());
            }
            circuit(charger.circuit(), "charger " + charger.id());
        }
        for (UnitPlacement unit : plan.units()) {
            if (!tables.unitTypes().containsKey(unit.unitType())) {
                violations.missing("load-sharing unit type", unit.unitType(), "circuit " + unit.circuit());
            }
            circuit(unit.circuit(), "unit " + unit.unitType());
        }
        for (BankPlacement bank : plan.banks()) {
            if (!tables.bankTypes().containsKey(bank.bankType())) {
                violations.missing("power bank type", bank.bankType(), "crew " + bank.crew());
            }
            circuit(bank.circuit(), "the power bank of crew " + bank.crew());
        }
        for (String built : plan.circuitsBuilt()) {
            if (!tables.circuits().containsKey(built)) {
                violations.missing("circuit", built, "the list of circuits to build");
            }
        }
        if (plan.supplyUpgraded() && !tables.depot().upgradeOffered()) {
            violations.add(Kind.NOT_BUILT, plan.depot(), "the plan buys a bigger supply, but none is on offer");
        }
    }

    private void circuit(String id, String user) {
        Circuit circuit = tables.circuits().get(id);
        if (circuit == null) {
            violations.missing("circuit", id, user);
        } else if (circuit.candidate() && !plan.circuitsBuilt().contains(id)) {
            violations.add(Kind.NOT_BUILT, id, user + " is on circuit " + id + ", which the plan does not build");
        }
    }
}
