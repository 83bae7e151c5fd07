package depot.optimizer.check;

import depot.optimizer.dictionary.EquipmentTables.ChargeTimes;
import depot.optimizer.dictionary.Field;
import depot.optimizer.scenario.ChargeTime;
import depot.optimizer.scenario.ChargerType;
import depot.optimizer.scenario.PackType;

/**
 * Charge times, energies and plate power have to agree.
 *
 * <p>A pack takes G = capacity x usable share / efficiency (Wh) from the mains, 0.8 G of it up to 80 % of its energy and
 * 0.2 G after it. The mean power of each stage, for all packs that charge at once, is at most the plate power; two per
 * cent are left for times rounded to minutes.
 */
final class ChargeDrawRules {
    private static final double ROUNDING = 1.02;
    private static final double FIRST_STAGE = 0.8;

    private ChargeDrawRules() {}

    /** No stage of charging draws more than the charger's plate power. */
    static void withinPlatePower(Drafts drafts, Findings findings) {
        for (Located<ChargeTime> time : drafts.chargeTimes) {
            Located<ChargerType> charger =
                    drafts.chargerTypesById.get(time.value().chargerType());
            Located<PackType> pack = drafts.packTypesById.get(time.value().packType());
            if (charger != null
                    && pack != null
                    && time.value().minutesTo80() < time.value().minutesToFull()) {
                check(time, charger.value(), pack.value(), findings);
            }
        }
    }

    private static void check(Located<ChargeTime> time, ChargerType charger, PackType pack, Findings findings) {
        double energy = pack.capacityWh() * pack.usableShare() / charger.efficiency() * charger.chargingAtOnce();
        int first = time.value().minutesTo80();
        int second = time.value().minutesToFull() - first;
        stage(time, ChargeTimes.MINUTES_TO_80, energy * FIRST_STAGE, first, charger, findings);
        stage(time, ChargeTimes.MINUTES_TO_FULL, energy * (1 - FIRST_STAGE), second, charger, findings);
    }

    private static void stage(
            Located<ChargeTime> time,
            Field<Integer> field,
            double wattHours,
            int minutes,
            ChargerType charger,
            Findings findings) {
        double watts = wattHours * 60 / minutes;
        double limit = charger.plateWatts() * ROUNDING;
        if (watts > limit) {
            long least = (long) Math.ceil(wattHours * 60 / limit);
            String stage = field == ChargeTimes.MINUTES_TO_80 ? "to 80 %" : "from 80 % to full";
            findings.error(
                    time,
                    field,
                    "charging " + stage + " in " + minutes + " min draws " + Math.round(watts) + " W, plate_watts is "
                            + charger.plateWatts(),
                    "at least " + least + " min " + stage + ", or correct plate_watts, efficiency or capacity_wh");
        }
    }
}
