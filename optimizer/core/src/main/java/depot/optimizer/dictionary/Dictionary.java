package depot.optimizer.dictionary;

import java.util.List;
import java.util.Optional;

/** All tables of a scenario, in the order in which one fills them in. */
public final class Dictionary {
    /** The CSV tables; {@code scenario.json} is {@link Settings#TABLE}. */
    public static final List<Table> TABLES = List.of(
            RouteTables.Seasons.TABLE,
            DepotTables.Depots.TABLE,
            DepotTables.Circuits.TABLE,
            DepotTables.BaseLoads.TABLE,
            EquipmentTables.PackTypes.TABLE,
            EquipmentTables.ChargerTypes.TABLE,
            EquipmentTables.ChargeTimes.TABLE,
            StoreTables.SharingUnits.TABLE,
            StoreTables.PowerBanks.TABLE,
            CrewTables.Tools.TABLE,
            CrewTables.Crews.TABLE,
            CrewTables.CrewBases.TABLE,
            RouteTables.Stops.TABLE,
            RouteTables.WorkRows.TABLE,
            TariffTables.Tariffs.TABLE,
            TariffTables.Terms.TABLE,
            StoreTables.OwnedItems.TABLE,
            RolloutTables.Phases.TABLE,
            RolloutTables.RegionBudgets.TABLE,
            RolloutTables.CrewPhases.TABLE,
            OrderTables.PriceTiers.TABLE,
            OrderTables.DeliveryLimits.TABLE,
            OrderTables.Moves.TABLE,
            FinanceTables.Depreciation.TABLE);

    private Dictionary() {}

    /** The table in a file. */
    public static Optional<Table> table(String file) {
        return TABLES.stream().filter(table -> table.file().equals(file)).findFirst();
    }

    /** The table that a field belongs to. */
    public static Table tableOf(Field<?> field) {
        return TABLES.stream()
                .filter(table -> table.fields().contains(field))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("Column " + field.name() + " is in no table."));
    }
}
