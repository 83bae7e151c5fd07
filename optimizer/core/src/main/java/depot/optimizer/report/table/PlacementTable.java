package depot.optimizer.report.table;

import static depot.optimizer.report.table.CommonColumns.CIRCUIT;
import static depot.optimizer.report.table.CommonColumns.DEPOT;
import static depot.optimizer.report.table.CommonColumns.PHASE;
import static depot.optimizer.report.table.OutputColumn.count;
import static depot.optimizer.report.table.OutputColumn.number;
import static depot.optimizer.report.table.OutputColumn.oneOf;
import static depot.optimizer.report.table.OutputColumn.words;
import static depot.optimizer.report.table.OutputColumn.yesNo;

import depot.optimizer.plan.BankPlacement;
import depot.optimizer.plan.ChargerPlacement;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.Plan;
import depot.optimizer.plan.UnitPlacement;
import depot.optimizer.scenario.ChargerType;
import depot.optimizer.scenario.Circuit;
import depot.optimizer.scenario.SharingUnitType;
import java.util.List;

/** placement.csv: what is plugged in where, one row per unit, charger and power bank. */
public final class PlacementTable {

    private static final TableLayout LAYOUT = TableLayout.of(
            "placement.csv",
            "load-sharing unit, charger and power bank",
            PHASE,
            DEPOT,
            CIRCUIT,
            oneOf("plugged_into", List.of("circuit", "load-sharing unit"), "what its plug is in"),
            count("outlet", "", "number of the outlet there, from 1"),
            oneOf("kind", List.of("load-sharing unit", "charger", "power bank"), "what it is"),
            words("id", "name of a charger in the plan; blank for the others").orBlank(),
            words("type", "key of its type"),
            words("crew", "crew whose power bank it is; blank for the others").orBlank(),
            yesNo("priority_outlet", "whether a load-sharing unit always feeds it first; blank: not a charger")
                    .orBlank(),
            yesNo("owned", "whether it is there already; blank for power banks").orBlank(),
            number("plate_watts", "W", "most that it draws; blank for load-sharing units")
                    .orBlank(),
            number("plate_amps", "A", "most that it draws, for a load-sharing unit what it is set to"));

    private final Catalog catalog;
    private final CsvTable table = new CsvTable(LAYOUT);

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
        table.row(row -> row.text(depot.phase())
                .text(depot.depot())
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
        table.row(row -> row.text(depot.phase())
                .text(depot.depot())
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
        table.row(row -> row.text(depot.phase())
                .text(depot.depot())
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
