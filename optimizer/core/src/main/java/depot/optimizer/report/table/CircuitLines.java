package depot.optimizer.report.table;

import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.UnitPlacement;
import depot.optimizer.replay.DayReplay;
import depot.optimizer.replay.DepotReplay;
import depot.optimizer.report.table.CircuitLine.Greatest;
import depot.optimizer.report.table.CircuitLine.Unit;
import depot.optimizer.report.table.CircuitLine.Work;
import depot.optimizer.scenario.Circuit;
import depot.optimizer.scenario.Depot;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.ToDoubleFunction;

/** Works out the circuits and the supply of a depot. Plate currents are added up as they are: no diversity is applied. */
public final class CircuitLines {

    /** Share of the supply's rating that may be drawn for hours. */
    private static final double SUPPLY_CONTINUOUS = 0.8;

    private final Catalog catalog;
    private final DepotPlan plan;
    private final DepotReplay replay;
    private final Depot depot;
    private final BaseLoadPeaks otherLoads;

    private CircuitLines(Catalog catalog, DepotPlan plan, DepotReplay replay) {
        this.catalog = catalog;
        this.plan = plan;
        this.replay = replay;
        this.depot = catalog.depot(plan.depot());
        this.otherLoads = new BaseLoadPeaks(catalog, depot);
    }

    /** One for each circuit that is there or is built, in the order of circuits.csv, then the supply. */
    public static List<CircuitLine> of(Catalog catalog, DepotPlan plan, DepotReplay replay) {
        CircuitLines lines = new CircuitLines(catalog, plan, replay);
        List<CircuitLine> all = new ArrayList<>();
        catalog.circuits(plan.depot()).stream()
                .filter(circuit -> !circuit.candidate() || plan.circuitsBuilt().contains(circuit.id()))
                .forEach(circuit -> all.add(lines.circuit(circuit)));
        all.add(lines.supply());
        return all;
    }

    private CircuitLine circuit(Circuit circuit) {
        Optional<Unit> unit = Catalog.unitOn(plan, circuit.id()).map(placed -> unit(circuit, placed, left(circuit)));
        double plates = plateAmps(circuit);
        return new CircuitLine(
                circuit.id(),
                circuit.candidate() ? Work.NEW_CIRCUIT : Work.EXISTING,
                circuit.volts(),
                circuit.phases(),
                circuit.breakerAmps(),
                circuit.continuousFactor(),
                circuit.plugAmps(),
                otherLoads.ofCircuit(circuit.id()),
                plates,
                unit.map(Unit::besideOtherLoadsAmps)
                        .map(most -> Math.min(most, plates))
                        .orElse(plates),
                unit,
                plugs(circuit),
                OptionalInt.of(unit.map(placed -> placed.type().outlets()).orElse(circuit.outlets())),
                greatest(circuit.id()));
    }

    private Unit unit(Circuit circuit, UnitPlacement placed, double leftAmps) {
        var type = catalog.unitType(placed.unitType());
        double setting = Catalog.settingAmps(circuit, type);
        return new Unit(type, placed.owned(), setting, Math.min(setting, leftAmps));
    }

    private double left(Circuit circuit) {
        return Math.max(0, circuit.breakerAmps() * circuit.continuousFactor() - otherLoads.ofCircuit(circuit.id()));
    }

    private double plateAmps(Circuit circuit) {
        double chargers = plan.chargers().stream()
                .filter(charger -> charger.circuit().equals(circuit.id()))
                .mapToDouble(charger -> Catalog.amps(
                        circuit, catalog.chargerType(charger.chargerType()).plateWatts()))
                .sum();
        double banks = plan.banks().stream()
                .filter(bank -> bank.circuit().equals(circuit.id()))
                .mapToDouble(bank ->
                        Catalog.amps(circuit, catalog.bankType(bank.bankType()).rechargeWatts()))
                .sum();
        return chargers + banks;
    }

    private int plugs(Circuit circuit) {
        long chargers = plan.chargers().stream()
                .filter(charger -> charger.circuit().equals(circuit.id()))
                .count();
        long banks = plan.banks().stream()
                .filter(bank -> bank.circuit().equals(circuit.id()))
                .count();
        return Math.toIntExact(chargers + banks);
    }

    private CircuitLine supply() {
        return new CircuitLine(
                DayReplay.SUPPLY,
                plan.supplyUpgraded() ? Work.BIGGER_SUPPLY : Work.EXISTING,
                depot.supplyVolts(),
                depot.supplyPhases(),
                plan.supplyUpgraded() ? depot.supplyUpgradeAmps() : depot.supplyAmps(),
                SUPPLY_CONTINUOUS,
                OptionalDouble.empty(),
                otherLoads.ofSupply(),
                atSupply(this::plateAmps),
                atSupply(this::letThrough),
                Optional.empty(),
                catalog.circuits(depot.id()).stream().mapToInt(this::plugs).sum(),
                OptionalInt.empty(),
                greatest(DayReplay.SUPPLY));
    }

    /** Amps of all circuits, added up by their volt-amperes. */
    private double atSupply(ToDoubleFunction<Circuit> amps) {
        double volts = BaseLoadPeaks.volts(depot.supplyVolts(), depot.supplyPhases());
        return catalog.circuits(depot.id()).stream()
                .mapToDouble(circuit -> amps.applyAsDouble(circuit) * BaseLoadPeaks.volts(circuit) / volts)
                .sum();
    }

    /** Plates, or the setting of the unit before them. Other loads do not lower it: they need not be at their highest at the same time. */
    private double letThrough(Circuit circuit) {
        double plates = plateAmps(circuit);
        return Catalog.unitOn(plan, circuit.id())
                .map(unit -> Math.min(plates, Catalog.settingAmps(circuit, catalog.unitType(unit.unitType()))))
                .orElse(plates);
    }

    private Optional<Greatest> greatest(String name) {
        return replay.days().stream()
                .flatMap(day -> day.peaks().stream()
                        .filter(peak -> peak.circuit().equals(name) && peak.amps() > 0)
                        .map(peak -> new Greatest(day, peak)))
                .max(Comparator.comparingDouble(greatest -> greatest.peak().amps()));
    }
}
