package depot.optimizer.replay;

import depot.optimizer.plan.BankPlacement;
import depot.optimizer.plan.ChargerPlacement;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.UnitPlacement;
import depot.optimizer.replay.Violation.Kind;
import depot.optimizer.scenario.Circuit;
import depot.optimizer.scenario.SharingUnitType;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Circuits with a load-sharing unit: one unit, everything on the circuit behind it, its outlets and its priority outlets. */
final class UnitRules {
    private final DepotTables tables;
    private final DepotPlan plan;
    private final Violations violations;

    private UnitRules(DepotTables tables, DepotPlan plan, Violations violations) {
        this.tables = tables;
        this.plan = plan;
        this.violations = violations;
    }

    static void check(DepotTables tables, DepotPlan plan, Violations violations) {
        UnitRules rules = new UnitRules(tables, plan, violations);
        Set<String> circuits = new HashSet<>();
        for (UnitPlacement unit : plan.units()) {
            if (!circuits.add(unit.circuit())) {
                violations.add(Kind.UNIT, unit.circuit(), "circuit " + unit.circuit() + " has more than one unit");
            } else {
                rules.check(unit);
            }
        }
    }

    private void check(UnitPlacement unit) {
        List<ChargerPlacement> chargers = plan.chargers().stream()
                .filter(c -> c.circuit().equals(unit.circuit()))
                .toList();
        for (ChargerPlacement charger : chargers) {
            if (!charger.shared()) {
                beside(unit.circuit(), "charger " + charger.id());
            }
        }
        for (BankPlacement bank : plan.banks()) {
            if (bank.circuit().equals(unit.circuit())) {
                beside(unit.circuit(), "the power bank of crew " + bank.crew());
            }
        }
        Circuit circuit = tables.circuits().get(unit.circuit());
        if (circuit != null && circuit.outlets() < 1) {
            violations.add(
                    Kind.OUTLETS, unit.circuit(), 1, circuit.outlets(), "circuit " + circuit.id() + " has no outlet");
        }
        SharingUnitType type = tables.unitTypes().get(unit.unitType());
        if (type != null) {
            outlets(unit.circuit(), type, chargers);
        }
    }

    private void beside(String circuit, String what) {
        violations.add(
                Kind.UNIT,
                circuit,
                what + " is on circuit " + circuit + " beside its unit; the unit must feed all of it");
    }

    private void outlets(String circuit, SharingUnitType type, List<ChargerPlacement> chargers) {
        Set<Integer> used = new HashSet<>();
        int priority = 0;
        for (ChargerPlacement charger : chargers) {
            priority += charger.priority() ? 1 : 0;
            if (!used.add(charger.outlet()) || charger.outlet() < 1 || charger.outlet() > type.outlets()) {
                violations.add(
                        Kind.OUTLETS,
                        charger.id(),
                        charger.outlet(),
                        type.outlets(),
                        "charger " + charger.id() + " has outlet " + charger.outlet() + " of the unit on circuit "
                                + circuit + ", which is taken or is not one of its " + type.outlets());
            }
        }
        if (priority > type.priorityOutlets()) {
            violations.add(
                    Kind.PRIORITY,
                    circuit,
                    priority,
                    type.priorityOutlets(),
                    priority + " chargers count on priority outlets of the unit on circuit " + circuit + ", which has "
                            + type.priorityOutlets());
        }
    }
}
