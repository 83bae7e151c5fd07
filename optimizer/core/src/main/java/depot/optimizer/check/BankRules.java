package depot.optimizer.check;

import depot.optimizer.dictionary.EquipmentTables.ChargerTypes;
import depot.optimizer.dictionary.StoreTables.PowerBanks;
import depot.optimizer.scenario.ChargerType;
import depot.optimizer.scenario.PowerBankType;
import java.util.OptionalDouble;

/** Rules of power banks. */
final class BankRules {
    /** Times are rounded to minutes and powers to watts. */
    private static final double ROUNDING = 1.02;

    private BankRules() {}

    /** Recharge power times recharge time is at least what the bank holds. */
    static void rechargeFills(Drafts drafts, Findings findings) {
        for (Located<PowerBankType> bank : drafts.powerBankTypes) {
            double wattHours = bank.value().rechargeWatts() * bank.value().rechargeMinutes() / 60.0;
            if (wattHours * ROUNDING < bank.value().energyWh()) {
                findings.error(
                        bank,
                        PowerBanks.RECHARGE_MINUTES,
                        "recharging draws " + Math.round(wattHours) + " Wh, the bank holds "
                                + bank.value().energyWh(),
                        "correct recharge_watts, recharge_minutes or energy_wh");
            }
        }
    }

    /** A bank that feeds no portable charger is noticed. */
    static void feedsACharger(Drafts drafts, Findings findings) {
        if (!drafts.whole(ChargerTypes.TABLE)) {
            return;
        }
        OptionalDouble least = drafts.chargerTypes.stream()
                .map(Located::value)
                .filter(ChargerType::portable)
                .mapToDouble(ChargerType::plateWatts)
                .min();
        for (Located<PowerBankType> bank : drafts.powerBankTypes) {
            if (least.isEmpty() || bank.value().outputWatts() < least.getAsDouble()) {
                findings.notice(
                        bank,
                        PowerBanks.OUTPUT_WATTS,
                        least.isEmpty()
                                ? "there is no portable charger to feed"
                                : "below the plate power of every portable charger, at least " + least.getAsDouble(),
                        "the bank is not used");
            }
        }
    }
}
