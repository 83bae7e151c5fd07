package depot.optimizer.replay;

import depot.optimizer.plan.BankPlacement;
import depot.optimizer.plan.CrewKit;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.TripPlan.RoadCharge;
import depot.optimizer.plan.TripPlan.RoadSource;
import depot.optimizer.scenario.ChargerType;
import depot.optimizer.scenario.PackType;
import depot.optimizer.scenario.PowerBankType;
import java.util.ArrayList;
import java.util.List;

/**
 * The recharging of one power bank at the depot after its crew's last return.
 *
 * @param fromMinute the return, rounded up
 * @param minutes how long it takes for what was used
 * @param gridWh drawn in all: what was taken out of it
 */
record BankRecharge(BankPlacement placement, PowerBankType type, int fromMinute, int minutes, double gridWh) {

    /** Recharges of a day, every placed bank of a crew that used any getting an equal share of its work. */
    static List<BankRecharge> of(DepotTables tables, DepotPlan plan, DayCase day) {
        List<BankRecharge> all = new ArrayList<>();
        for (BankPlacement placement : plan.banks()) {
            PowerBankType type = tables.bankTypes().get(placement.bankType());
            double held = type == null ? 0 : capacityWh(tables, plan, placement.crew());
            double given = givenWh(tables, day, placement.crew());
            if (held > 0 && given > 0) {
                double share = Math.min(1, given / held);
                int minutes = (int) Math.ceil(type.rechargeMinutes() * share - 1e-9);
                int from = lastReturn(tables, day, placement.crew());
                all.add(new BankRecharge(placement, type, from, minutes, type.energyWh() * share));
            }
        }
        return all;
    }

    /** What the banks of a crew can give to chargers in a day. */
    static double capacityWh(DepotTables tables, DepotPlan plan, String crew) {
        double wattHours = 0;
        for (CrewKit kit : plan.kits()) {
            PowerBankType bank = tables.bankTypes().get(kit.item());
            if (bank != null && kit.crew().equals(crew)) {
                wattHours += kit.count() * bank.energyWh() * bank.efficiency();
            }
        }
        return wattHours;
    }

    /** What chargers draw from the banks of a crew over a day. */
    static double givenWh(DepotTables tables, DayCase day, String crew) {
        double wattHours = 0;
        for (DayCase.Trip trip : day.trips()) {
            if (trip.crew().id().equals(crew)) {
                for (RoadCharge charge : trip.plan().roadCharges()) {
                    wattHours += charge.source() == RoadSource.BANK ? drawnWh(tables, charge) : 0;
                }
            }
        }
        return wattHours;
    }

    private static double drawnWh(DepotTables tables, RoadCharge charge) {
        ChargerType charger = tables.chargerTypes().get(charge.chargerType());
        PackType pack = tables.packTypes().get(charge.packType());
        return charger == null || pack == null
                ? 0
                : charge.packs() * pack.capacityWh() * pack.usableShare() / charger.efficiency();
    }

    /** Last return of a crew on a day, rounded up; the start of the cycle when it stays at home. */
    static int lastReturn(DepotTables tables, DayCase day, String crew) {
        return day.trips().stream()
                .filter(trip -> trip.crew().id().equals(crew))
                .mapToInt(trip -> tables.roundUp(trip.route().returnMinute()))
                .max()
                .orElse(tables.startMinute());
    }
}
