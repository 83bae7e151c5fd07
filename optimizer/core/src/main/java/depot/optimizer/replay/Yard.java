package depot.optimizer.replay;

import depot.optimizer.plan.ChargerPlacement;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.UnitPlacement;
import depot.optimizer.scenario.ChargerType;
import depot.optimizer.scenario.Circuit;
import depot.optimizer.scenario.PackType;
import depot.optimizer.scenario.SharingUnitType;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** The equipment of a planned depot, ready to run days: chargers, units and packs. Things that the scenario lacks are left out. */
final class Yard {
    private final DepotTables tables;
    private final DepotPlan plan;
    private final List<Circuit> circuits;
    private final Map<String, ChargerBench> benches = new LinkedHashMap<>();
    private final List<ChargerBench> plain = new ArrayList<>();
    private final List<UnitController> units = new ArrayList<>();
    private final PackRoom room;

    Yard(DepotTables tables, DepotPlan plan) {
        this.tables = tables;
        this.plan = plan;
        this.circuits = List.copyOf(tables.circuits().values());
        this.room = new PackRoom(tables, plan.packs());
        plan.chargers().forEach(this::mount);
        for (Circuit circuit : circuits) {
            List<ChargerBench> here = benches.values().stream()
                    .filter(b -> b.placement().circuit().equals(circuit.id()))
                    .toList();
            if (unitType(circuit.id()).isPresent()) {
                units.add(new UnitController(circuit.id(), circuitIndex(circuit.id()), here));
            } else {
                plain.addAll(here);
            }
        }
    }

    private void mount(ChargerPlacement placement) {
        ChargerType type = tables.chargerTypes().get(placement.chargerType());
        if (type == null || !tables.circuits().containsKey(placement.circuit())) {
            return;
        }
        Map<String, ChargeCurve> curves = new HashMap<>();
        for (PackType pack : tables.packTypes().values()) {
            tables.curve(type, pack).ifPresent(curve -> curves.put(pack.id(), curve));
        }
        benches.put(
                placement.id(),
                new ChargerBench(placement, type, circuitIndex(placement.circuit()), Map.copyOf(curves)));
    }

    DepotTables tables() {
        return tables;
    }

    DepotPlan plan() {
        return plan;
    }

    List<Circuit> circuits() {
        return circuits;
    }

    int circuitIndex(String circuit) {
        for (int i = 0; i < circuits.size(); i++) {
            if (circuits.get(i).id().equals(circuit)) {
                return i;
            }
        }
        return -1;
    }

    /** The unit on a circuit, empty: none, or of a type that the scenario lacks. */
    Optional<SharingUnitType> unitType(String circuit) {
        return plan.units().stream()
                .filter(u -> u.circuit().equals(circuit))
                .map(UnitPlacement::unitType)
                .map(tables.unitTypes()::get)
                .filter(Objects::nonNull)
                .findFirst();
    }

    /** Null when the plan or the scenario does not have it. */
    ChargerBench bench(String id) {
        return benches.get(id);
    }

    /** Chargers that draw as soon as they are loaded. */
    List<ChargerBench> plain() {
        return plain;
    }

    List<UnitController> units() {
        return units;
    }

    PackRoom room() {
        return room;
    }

    /** Base load of the cycle that starts on a weekday, in watts by minute. */
    double[] baseWatts(DayOfWeek day) {
        return tables.baseLoads().watts(day, tables.startMinute());
    }

    void reset() {
        room.reset();
        benches.values().forEach(ChargerBench::reset);
    }
}
