package depot.optimizer.report.page;

import depot.optimizer.plan.BankPlacement;
import depot.optimizer.plan.ChargerPlacement;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.UnitPlacement;
import depot.optimizer.report.table.Catalog;
import depot.optimizer.report.text.Figures;
import depot.optimizer.scenario.ChargerType;
import depot.optimizer.scenario.Circuit;

/** What is plugged in where, circuit by circuit. */
final class PlacementViews {

    private PlacementViews() {}

    static TableView table(Catalog catalog, DepotPlan plan) {
        TableView.Builder table = TableView.of("placement", "What to plug in where")
                .words("Circuit", "Outlet", "What", "Type", "Priority outlet", "New or owned")
                .numbers("Plate power (W)", "Plate current (A)");
        for (Circuit circuit : catalog.circuits(plan.depot())) {
            plan.units().stream()
                    .filter(unit -> unit.circuit().equals(circuit.id()))
                    .forEach(unit -> unit(table, catalog, circuit, unit));
            plan.chargers().stream()
                    .filter(charger -> charger.circuit().equals(circuit.id()))
                    .forEach(charger -> charger(table, catalog, circuit, charger));
            plan.banks().stream()
                    .filter(bank -> bank.circuit().equals(circuit.id()))
                    .forEach(bank -> bank(table, catalog, circuit, bank));
        }
        return table.build();
    }

    private static void unit(TableView.Builder table, Catalog catalog, Circuit circuit, UnitPlacement unit) {
        table.row(
                circuit.id(),
                "on the circuit, alone",
                "load-sharing unit",
                unit.unitType(),
                "",
                newOrOwned(unit.owned()),
                "",
                "set to " + Figures.read(Catalog.settingAmps(circuit, catalog.unitType(unit.unitType())), 1));
    }

    private static void charger(TableView.Builder table, Catalog catalog, Circuit circuit, ChargerPlacement charger) {
        ChargerType type = catalog.chargerType(charger.chargerType());
        table.row(
                circuit.id(),
                (charger.shared() ? "unit, outlet " : "outlet ") + charger.outlet(),
                "charger " + charger.id(),
                type.id(),
                charger.shared() ? (charger.priority() ? "yes" : "no") : "",
                newOrOwned(charger.owned()),
                Figures.read(type.plateWatts(), 0),
                Figures.read(Catalog.amps(circuit, type.plateWatts()), 1));
    }

    private static void bank(TableView.Builder table, Catalog catalog, Circuit circuit, BankPlacement bank) {
        double watts = catalog.bankType(bank.bankType()).rechargeWatts();
        table.row(
                circuit.id(),
                "outlet " + bank.outlet(),
                "power bank of " + bank.crew(),
                bank.bankType(),
                "",
                "",
                Figures.read(watts, 0),
                Figures.read(Catalog.amps(circuit, watts), 1));
    }

    private static String newOrOwned(boolean owned) {
        return owned ? "owned" : "new";
    }
}
