package depot.optimizer.generate;

import depot.optimizer.dictionary.EquipmentTables.ChargeTimes;
import depot.optimizer.dictionary.EquipmentTables.ChargerTypes;
import depot.optimizer.dictionary.EquipmentTables.PackTypes;
import depot.optimizer.dictionary.StoreTables.OwnedItems;
import depot.optimizer.dictionary.StoreTables.PowerBanks;
import depot.optimizer.dictionary.StoreTables.SharingUnits;
import depot.optimizer.generate.TableText.Row;
import depot.optimizer.scenario.ChargeTime;
import depot.optimizer.scenario.ChargerType;
import depot.optimizer.scenario.Owned;
import depot.optimizer.scenario.PackType;
import depot.optimizer.scenario.PowerBankType;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.scenario.SharingUnitType;
import java.util.List;

/** Tables of what can be bought and what is owned. */
final class EquipmentText {
    private EquipmentText() {}

    static List<TableText> tables(Scenario scenario) {
        return List.of(
                TableText.of(PackTypes.TABLE, scenario.packTypes(), EquipmentText::packType),
                TableText.of(ChargerTypes.TABLE, scenario.chargerTypes(), EquipmentText::chargerType),
                TableText.of(ChargeTimes.TABLE, scenario.chargeTimes(), EquipmentText::chargeTime),
                TableText.of(SharingUnits.TABLE, scenario.sharingUnitTypes(), EquipmentText::sharingUnit),
                TableText.of(PowerBanks.TABLE, scenario.powerBankTypes(), EquipmentText::powerBank),
                TableText.of(OwnedItems.TABLE, scenario.owned(), EquipmentText::owned));
    }

    private static void packType(Row row, PackType pack) {
        row.put(PackTypes.PACK_TYPE, pack.id())
                .put(PackTypes.FAMILY, pack.family())
                .put(PackTypes.CAPACITY_WH, pack.capacityWh())
                .put(PackTypes.USABLE_SHARE, pack.usableShare())
                .put(PackTypes.WEIGHT_KG, pack.weightKg())
                .put(PackTypes.PRICE, pack.price())
                .put(PackTypes.CYCLE_LIFE, pack.cycleLife())
                .put(PackTypes.CALENDAR_YEARS, pack.calendarYears());
    }

    private static void chargerType(Row row, ChargerType charger) {
        row.put(ChargerTypes.CHARGER_TYPE, charger.id())
                .put(ChargerTypes.BAYS, charger.bays())
                .put(ChargerTypes.CHARGING_AT_ONCE, charger.chargingAtOnce())
                .put(ChargerTypes.PLATE_WATTS, charger.plateWatts())
                .put(ChargerTypes.EFFICIENCY, charger.efficiency())
                .put(ChargerTypes.PLACES, charger.places())
                .put(ChargerTypes.PORTABLE, charger.portable())
                .put(ChargerTypes.WEIGHT_KG, charger.weightKg())
                .put(ChargerTypes.PRICE, charger.price())
                .put(ChargerTypes.INSTALL_COST, charger.installCost())
                .put(ChargerTypes.LIFE_YEARS, charger.lifeYears());
    }

    private static void chargeTime(Row row, ChargeTime time) {
        row.put(ChargeTimes.CHARGER_TYPE, time.chargerType())
                .put(ChargeTimes.PACK_TYPE, time.packType())
                .put(ChargeTimes.MINUTES_TO_80, time.minutesTo80())
                .put(ChargeTimes.MINUTES_TO_FULL, time.minutesToFull());
    }

    private static void sharingUnit(Row row, SharingUnitType unit) {
        row.put(SharingUnits.UNIT_TYPE, unit.id())
                .put(SharingUnits.OUTLETS, unit.outlets())
                .put(SharingUnits.AMPS, unit.amps())
                .put(SharingUnits.PRIORITY_OUTLETS, unit.priorityOutlets())
                .put(SharingUnits.PRICE, unit.price())
                .put(SharingUnits.INSTALL_COST, unit.installCost())
                .put(SharingUnits.LIFE_YEARS, unit.lifeYears());
    }

    private static void powerBank(Row row, PowerBankType bank) {
        row.put(PowerBanks.BANK_TYPE, bank.id())
                .put(PowerBanks.ENERGY_WH, bank.energyWh())
                .put(PowerBanks.OUTPUT_WATTS, bank.outputWatts())
                .put(PowerBanks.EFFICIENCY, bank.efficiency())
                .put(PowerBanks.RECHARGE_WATTS, bank.rechargeWatts())
                .put(PowerBanks.RECHARGE_MINUTES, bank.rechargeMinutes())
                .put(PowerBanks.WEIGHT_KG, bank.weightKg())
                .put(PowerBanks.PRICE, bank.price())
                .put(PowerBanks.LIFE_YEARS, bank.lifeYears());
    }

    private static void owned(Row row, Owned owned) {
        row.put(OwnedItems.DEPOT, owned.depot())
                .put(OwnedItems.CIRCUIT, owned.circuit())
                .put(OwnedItems.CREW, owned.crew())
                .put(OwnedItems.ITEM, owned.item())
                .put(OwnedItems.COUNT, owned.count());
    }
}
