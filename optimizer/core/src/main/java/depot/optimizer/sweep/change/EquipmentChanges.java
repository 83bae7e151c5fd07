package depot.optimizer.sweep.change;

import depot.optimizer.scenario.ChargeTime;
import depot.optimizer.scenario.ChargerType;
import depot.optimizer.scenario.PackType;
import depot.optimizer.scenario.Season;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** Changes of what packs and chargers can do. */
final class EquipmentChanges {
    private EquipmentChanges() {}

    static void packLife(ScenarioCopy copy, Change change) {
        double factor = change.value().doubleValue();
        copy.packTypes = copy.packTypes.stream()
                .map(type -> change.isAbout(type.id())
                        ? new PackType(
                                type.id(),
                                type.family(),
                                type.capacityWh(),
                                type.usableShare(),
                                type.weightKg(),
                                type.price(),
                                type.cycleLife() * factor,
                                type.calendarYears() * factor)
                        : type)
                .toList();
    }

    static void seasonCapacity(ScenarioCopy copy, Change change) {
        copy.seasons = copy.seasons.stream()
                .map(season -> change.isAbout(season.id())
                        ? new Season(
                                season.id(),
                                season.weeksPerYear(),
                                change.value().doubleValue())
                        : season)
                .toList();
    }

    /** The energy stays, so that a quicker charger draws more: its plate power rises as the times fall. */
    static void chargeTimes(ScenarioCopy copy, Change change) {
        BigDecimal factor = change.value();
        copy.chargeTimes = copy.chargeTimes.stream()
                .map(time -> change.isAbout(time.chargerType()) ? timed(time, factor) : time)
                .toList();
        if (factor.compareTo(BigDecimal.ONE) < 0) {
            copy.chargerTypes = copy.chargerTypes.stream()
                    .map(type -> change.isAbout(type.id()) ? stronger(type, factor.doubleValue()) : type)
                    .toList();
        }
    }

    private static ChargeTime timed(ChargeTime time, BigDecimal factor) {
        int to80 = minutes(time.minutesTo80(), factor);
        int toFull = to80 + minutes(time.minutesToFull() - time.minutesTo80(), factor);
        return new ChargeTime(time.chargerType(), time.packType(), to80, toFull);
    }

    private static int minutes(int minutes, BigDecimal factor) {
        return factor.multiply(BigDecimal.valueOf(minutes))
                .setScale(0, RoundingMode.CEILING)
                .intValueExact();
    }

    private static ChargerType stronger(ChargerType type, double factor) {
        return new ChargerType(
                type.id(),
                type.bays(),
                type.chargingAtOnce(),
                type.plateWatts() / factor,
                type.efficiency(),
                type.places(),
                type.portable(),
                type.weightKg(),
                type.price(),
                type.installCost(),
                type.lifeYears());
    }
}
