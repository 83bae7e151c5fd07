package depot.optimizer.report.table;

import depot.optimizer.plan.BankPlacement;
import depot.optimizer.plan.ChargerPlacement;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.Plan;
import depot.optimizer.plan.UnitPlacement;
import depot.optimizer.scenario.ChargerType;
import depot.optimizer.scenario.Circuit;
import depot.optimizer.scenario.SharingUnitType;

/** placement.csv: what is plugged in where, one row per unit, charger and power bank. */
public final class PlacementTable {

    private final Catalog catalog;
    private final CsvTable table = new CsvTable(
            "placement.csv",
            "depot",
            "circuit",
            "plugged_into",
            "outlet",
            "kind",
            "id",
            "type",
            "crew",
            "priority_outlet",
            "owned",
            "plate_watts",
            "plate_amps");

    private PlacementTable(Catalog catalog) {
        this.catalog = catalog;
    }

    /** The table of a whole plan. */
    public static CsvTable of(Catalog catalog, Plan plan) {
        PlacementTable placement = new PlacementTable(catalog);
        for (DepotPlan depot : plan.depots()) {
            depot.units().forEach(unit -> placement.unit(depot, unit));
            depot.chargers().forEach(charger -> placement.charger(depot, charger));
            depot.banks().forEach(bank -> placement.bank(depot, bank));
        }
        return placement.table;
    }

    private void unit(DepotPlan depot, UnitPlacement unit) {
        Circuit circuit = catalog.circuit(depot.depot(), unit.circuit());
        SharingUnitType type = catalog.unitType(unit.unitType());
        table.row(row -> row.text(depot.depot())
                .text(circuit.id())
                .text("circuit")
                .count(1)
                .text("load-sharing unit")
                .empty()
                .text(type.id())
                .empty()
                .empty()
                .yesNo(unit.owned())
                .empty()
                .number(Catalog.settingAmps(circuit, type), 2));
    }

    private void charger(DepotPlan depot, ChargerPlacement charger) {
        Circuit circuit = catalog.circuit(depot.depot(), charger.circuit());
        ChargerType type = catalog.chargerType(charger.chargerType());
        table.row(row -> row.text(depot.depot())
                .text(circuit.id())
                .text(charger.shared() ? "load-sharing unit" : "circuit")
                .count(charger.outlet())
                .text("charger")
                .text(charger.id())
                .text(type.id())
                .empty()
                .yesNo(charger.priority())
                .yesNo(charger.owned())
                .number(type.plateWatts(), 1)
                .number(Catalog.amps(circuit, type.plateWatts()), 2));
    }

    private void bank(DepotPlan depot, BankPlacement bank) {
        Circuit circuit = catalog.circuit(depot.depot(), bank.circuit());
        double watts = catalog.bankType(bank.bankType()).rechargeWatts();
        table.row(row -> row.text(depot.depot())
                .text(circuit.id())
                .text("circuit")
                .count(bank.outlet())
                .text("power bank")
                .empty()
                .text(bank.bankType())
                .text(bank.crew())
                .empty()
                .empty()
                .number(watts, 1)
                .number(Catalog.amps(circuit, watts), 2));
    }
}
