package depot.optimizer.replay;

import depot.optimizer.plan.BankPlacement;
import depot.optimizer.plan.ChargerPlacement;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.replay.Violation.Kind;
import depot.optimizer.scenario.ChargerType;
import depot.optimizer.scenario.Circuit;
import depot.optimizer.scenario.PowerBankType;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Circuits without a load-sharing unit: outlets, each plug's current, and the plate current of everything plugged in together, which must
 * stay within breaker rating * continuous factor - highest base load of the week.
 */
final class CircuitRules {
    private final DepotTables tables;
    private final DepotPlan plan;
    private final Violations violations;

    /** Something plugged into an outlet. */
    private record Plug(String name, int outlet, double watts) {}

    private CircuitRules(DepotTables tables, DepotPlan plan, Violations violations) {
        this.tables = tables;
        this.plan = plan;
        this.violations = violations;
    }

    static void check(DepotTables tables, DepotPlan plan, Violations violations) {
        CircuitRules rules = new CircuitRules(tables, plan, violations);
        for (Circuit circuit : tables.circuits().values()) {
            boolean shared = plan.units().stream().anyMatch(u -> u.circuit().equals(circuit.id()));
            if (!shared) {
                rules.check(circuit);
            }
        }
        rules.places();
    }

    private void check(Circuit circuit) {
        List<Plug> plugs = plugs(circuit.id());
        outlets(circuit.id(), plugs, circuit.outlets(), violations);
        Line line = Line.of(circuit);
        double sum = 0;
        for (Plug plug : plugs) {
            double amps = line.amps(plug.watts());
            sum += amps;
            if (Tolerance.above(amps, circuit.plugAmps().orElse(Double.MAX_VALUE))) {
                double limit = circuit.plugAmps().getAsDouble();
                violations.add(
                        Kind.PLUG_CURRENT,
                        plug.name(),
                        amps,
                        limit,
                        plug.name() + " draws " + Violations.number(amps) + " A, more than the "
                                + Violations.number(limit) + " A of a plug on circuit " + circuit.id());
            }
        }
        double limit = circuit.breakerAmps() * circuit.continuousFactor()
                - tables.baseLoads().peak(Optional.of(circuit.id()));
        if (!plugs.isEmpty() && Tolerance.above(sum, limit)) {
            violations.add(
                    Kind.CIRCUIT_CURRENT,
                    circuit.id(),
                    sum,
                    limit,
                    "the plates on circuit " + circuit.id() + " add up to " + Violations.number(sum)
                            + " A, more than the " + Violations.number(limit)
                            + " A that the breaker may carry for hours beside the base load");
        }
    }

    private List<Plug> plugs(String circuit) {
        List<Plug> plugs = new ArrayList<>();
        for (ChargerPlacement charger : plan.chargers()) {
            ChargerType type = tables.chargerTypes().get(charger.chargerType());
            if (type != null && charger.circuit().equals(circuit)) {
                plugs.add(new Plug("charger " + charger.id(), charger.outlet(), type.plateWatts()));
                if (charger.shared()) {
                    violations.add(
                            Kind.UNIT,
                            charger.id(),
                            "charger " + charger.id() + " is said to be behind a unit, but circuit " + circuit
                                    + " has none");
                }
            }
        }
        for (BankPlacement bank : plan.banks()) {
            PowerBankType type = tables.bankTypes().get(bank.bankType());
            if (type != null && bank.circuit().equals(circuit)) {
                plugs.add(new Plug("the power bank of crew " + bank.crew(), bank.outlet(), type.rechargeWatts()));
            }
        }
        return plugs;
    }

    private static void outlets(String circuit, List<Plug> plugs, int outlets, Violations violations) {
        Set<Integer> used = new HashSet<>();
        for (Plug plug : plugs) {
            if (!used.add(plug.outlet()) || plug.outlet() < 1 || plug.outlet() > outlets) {
                violations.add(
                        Kind.OUTLETS,
                        plug.name(),
                        plug.outlet(),
                        outlets,
                        plug.name() + " has outlet " + plug.outlet() + " of circuit " + circuit
                                + ", which is taken or is not one of its " + outlets);
            }
        }
    }

    private void places() {
        int places = 0;
        for (ChargerPlacement charger : plan.chargers()) {
            ChargerType type = tables.chargerTypes().get(charger.chargerType());
            places += type == null ? 0 : type.places();
        }
        if (places > tables.depot().places()) {
            violations.add(
                    Kind.PLACES,
                    plan.depot(),
                    places,
                    tables.depot().places(),
                    "chargers take " + places + " places, but the depot has "
                            + tables.depot().places());
        }
    }
}
