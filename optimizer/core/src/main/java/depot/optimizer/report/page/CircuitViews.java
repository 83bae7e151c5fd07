package depot.optimizer.report.page;

import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.UnitPlacement;
import depot.optimizer.report.table.Catalog;
import depot.optimizer.report.text.Figures;
import depot.optimizer.scenario.Circuit;
import depot.optimizer.scenario.Depot;
import java.util.Optional;

/** Circuits and supply of a depot: what they may carry, and what is plugged in. */
final class CircuitViews {

    /** Share of the supply's rating that may be drawn for hours. */
    private static final double SUPPLY_CONTINUOUS = 0.8;

    private final Catalog catalog;
    private final DepotPlan plan;
    private final Depot depot;
    private final BaseLoadPeaks baseLoads;

    CircuitViews(Catalog catalog, DepotPlan plan) {
        this.catalog = catalog;
        this.plan = plan;
        this.depot = catalog.depot(plan.depot());
        this.baseLoads = new BaseLoadPeaks(catalog, depot);
    }

    /** One row per usable circuit, then the supply. */
    TableView table() {
        TableView.Builder table = TableView.of(
                        "circuits",
                        "Circuits and supply: what they may carry for hours, and the plate current plugged in")
                .words("Circuit", "Wiring")
                .numbers(
                        "Breaker (A)",
                        "For hours (A)",
                        "Other loads, at most (A)",
                        "Left for charging (A)",
                        "Plugged in (A)",
                        "Share used",
                        "Margin (A)",
                        "Outlets used");
        for (Circuit circuit : catalog.circuits(depot.id())) {
            if (!circuit.candidate() || plan.circuitsBuilt().contains(circuit.id())) {
                circuit(table, circuit);
            }
        }
        supply(table);
        return table.build();
    }

    private void circuit(TableView.Builder table, Circuit circuit) {
        Optional<UnitPlacement> unit = Catalog.unitOn(plan, circuit.id());
        double hours = circuit.breakerAmps() * circuit.continuousFactor();
        double base = baseLoads.ofCircuit(circuit.id());
        double left = Math.max(0, hours - base);
        double plugged = unit.isPresent() ? Math.min(left, pluggedAmps(circuit)) : pluggedAmps(circuit);
        String name = circuit.id()
                + (circuit.candidate() ? " (to be built)" : "")
                + unit.map(placed -> " (behind " + placed.unitType() + ")").orElse("");
        int outlets = unit.map(placed -> catalog.unitType(placed.unitType()).outlets())
                .orElse(circuit.outlets());
        table.row(
                name,
                wiring(circuit.volts(), circuit.phases()),
                amps(circuit.breakerAmps()),
                amps(hours),
                amps(base),
                amps(left),
                amps(plugged) + (unit.isPresent() ? " *" : ""),
                left == 0 ? "-" : Figures.percent(plugged / left),
                amps(left - plugged),
                plugs(circuit) + " of " + outlets);
    }

    /** What the chargers and banks draw at most; a unit lets no more through than its own rating and the plug's. */
    private double pluggedAmps(Circuit circuit) {
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
        double cap = Catalog.unitOn(plan, circuit.id())
                .map(unit -> Catalog.settingAmps(circuit, catalog.unitType(unit.unitType())))
                .orElse(Double.POSITIVE_INFINITY);
        return Math.min(chargers + banks, cap);
    }

    private long plugs(Circuit circuit) {
        return plan.chargers().stream()
                        .filter(charger -> charger.circuit().equals(circuit.id()))
                        .count()
                + plan.banks().stream()
                        .filter(bank -> bank.circuit().equals(circuit.id()))
                        .count();
    }

    private void supply(TableView.Builder table) {
        double rating = plan.supplyUpgraded() ? depot.supplyUpgradeAmps() : depot.supplyAmps();
        double hours = rating * SUPPLY_CONTINUOUS;
        double base = baseLoads.ofSupply();
        double left = Math.max(0, hours - base);
        double volts = BaseLoadPeaks.volts(depot.supplyVolts(), depot.supplyPhases());
        double plugged = catalog.circuits(depot.id()).stream()
                .mapToDouble(circuit -> pluggedAmps(circuit) * BaseLoadPeaks.volts(circuit) / volts)
                .sum();
        table.total(
                "Supply" + (plan.supplyUpgraded() ? " (after its upgrade)" : ""),
                wiring(depot.supplyVolts(), depot.supplyPhases()),
                amps(rating),
                amps(hours),
                amps(base),
                amps(left),
                amps(plugged),
                left == 0 ? "-" : Figures.percent(plugged / left),
                amps(left - plugged),
                "");
    }

    private static String wiring(double volts, int phases) {
        return Figures.plain(volts, 1) + " V, " + (phases == 3 ? "3 phases" : "1 phase");
    }

    private static String amps(double amps) {
        return Figures.read(amps, 1);
    }
}
