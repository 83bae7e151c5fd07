package depot.optimizer.check;

import depot.optimizer.dictionary.EquipmentTables.ChargeTimes;
import depot.optimizer.dictionary.EquipmentTables.ChargerTypes;
import depot.optimizer.dictionary.EquipmentTables.PackTypes;
import depot.optimizer.dictionary.StoreTables.OwnedItems;
import depot.optimizer.dictionary.StoreTables.PowerBanks;
import depot.optimizer.dictionary.StoreTables.SharingUnits;
import depot.optimizer.scenario.ChargeTime;
import depot.optimizer.scenario.ChargerType;
import depot.optimizer.scenario.Owned;
import depot.optimizer.scenario.PackType;
import depot.optimizer.scenario.PowerBankType;
import depot.optimizer.scenario.SharingUnitType;

/** Makes the records of equipment out of sound rows. */
final class EquipmentRecords {
    private EquipmentRecords() {}

    static PackType packType(TypedRow row) {
        return new PackType(
                row.get(PackTypes.PACK_TYPE),
                row.get(PackTypes.FAMILY),
                row.get(PackTypes.CAPACITY_WH),
                row.get(PackTypes.USABLE_SHARE),
                row.get(PackTypes.WEIGHT_KG),
                row.get(PackTypes.PRICE),
                row.get(PackTypes.CYCLE_LIFE),
                row.get(PackTypes.CALENDAR_YEARS));
    }

    static ChargerType chargerType(TypedRow row) {
        return new ChargerType(
                row.get(ChargerTypes.CHARGER_TYPE),
                row.get(ChargerTypes.BAYS),
                row.get(ChargerTypes.CHARGING_AT_ONCE),
                row.get(ChargerTypes.PLATE_WATTS),
                row.get(ChargerTypes.EFFICIENCY),
                row.get(ChargerTypes.PLACES),
                row.get(ChargerTypes.PORTABLE),
                row.get(ChargerTypes.WEIGHT_KG),
                row.get(ChargerTypes.PRICE),
                row.get(ChargerTypes.INSTALL_COST),
                row.get(ChargerTypes.LIFE_YEARS));
    }

    static ChargeTime chargeTime(TypedRow row) {
        return new ChargeTime(
                row.get(ChargeTimes.CHARGER_TYPE),
                row.get(ChargeTimes.PACK_TYPE),
                row.get(ChargeTimes.MINUTES_TO_80),
                row.get(ChargeTimes.MINUTES_TO_FULL));
    }

    static SharingUnitType sharingUnitType(TypedRow row) {
        return new SharingUnitType(
                row.get(SharingUnits.UNIT_TYPE),
                row.get(SharingUnits.OUTLETS),
                row.get(SharingUnits.AMPS),
                row.get(SharingUnits.PRIORITY_OUTLETS),
                row.get(SharingUnits.PRICE),
                row.get(SharingUnits.INSTALL_COST),
                row.get(SharingUnits.LIFE_YEARS));
    }

    static PowerBankType powerBankType(TypedRow row) {
        return new PowerBankType(
                row.get(PowerBanks.BANK_TYPE),
                row.get(PowerBanks.ENERGY_WH),
                row.get(PowerBanks.OUTPUT_WATTS),
                row.get(PowerBanks.EFFICIENCY),
                row.get(PowerBanks.RECHARGE_WATTS),
                row.get(PowerBanks.RECHARGE_MINUTES),
                row.get(PowerBanks.WEIGHT_KG),
                row.get(PowerBanks.PRICE),
                row.get(PowerBanks.LIFE_YEARS));
    }

    static Owned owned(TypedRow row) {
        return new Owned(
                row.get(OwnedItems.DEPOT),
                row.find(OwnedItems.CIRCUIT),
                row.find(OwnedItems.CREW),
                row.get(OwnedItems.ITEM),
                row.get(OwnedItems.COUNT));
    }
}
