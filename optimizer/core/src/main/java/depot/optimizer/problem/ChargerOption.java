package depot.optimizer.problem;

import depot.optimizer.scenario.ChargeTime;
import depot.optimizer.scenario.ChargerType;
import depot.optimizer.scenario.PackType;
import depot.optimizer.scenario.Scenario;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** A charger type and the pack types that fit it. */
public record ChargerOption(ChargerType type, List<Fit> fits) {

    /** Those of a scenario that may be mounted in a depot and take some pack. */
    static List<ChargerOption> mounted(Scenario scenario) {
        return of(scenario, type -> !type.portable());
    }

    /** Those of a scenario that a crew may carry and that take some pack. */
    static List<ChargerOption> portable(Scenario scenario) {
        return of(scenario, ChargerType::portable);
    }

    private static List<ChargerOption> of(Scenario scenario, Predicate<ChargerType> which) {
        Map<String, PackType> packs =
                scenario.packTypes().stream().collect(Collectors.toMap(PackType::id, Function.identity()));
        return scenario.chargerTypes().stream()
                .filter(which)
                .map(type -> new ChargerOption(
                        type,
                        scenario.chargeTimes().stream()
                                .filter(time -> time.chargerType().equals(type.id()))
                                .map(time -> fit(type, packs.get(time.packType()), time))
                                .toList()))
                .filter(option -> !option.fits().isEmpty())
                .toList();
    }

    private static Fit fit(ChargerType type, PackType pack, ChargeTime time) {
        double gridWh = pack.capacityWh() * pack.usableShare() / type.efficiency();
        return new Fit(pack, time.minutesTo80(), time.minutesToFull(), gridWh);
    }

    /** Most that a charger draws while all the bays that charge at once are in the first stage, in watts. */
    public double peakWatts() {
        return fits.stream().mapToDouble(Fit::peakWatts).max().orElse(0) * type.chargingAtOnce();
    }

    /**
     * One pack type on one charger type.
     *
     * @param gridWh energy from the mains to fill a new, empty pack: nominal health, the safe side for the supply
     */
    public record Fit(PackType pack, int minutesTo80, int minutesToFull, double gridWh) {

        /** Minutes to a level. */
        public int minutes(ChargeLevel level) {
            return level == ChargeLevel.FULL ? minutesToFull : minutesTo80;
        }

        /** Energy from the mains to a level, in Wh. */
        public double gridWh(ChargeLevel level) {
            return level.share() * gridWh;
        }

        /** Draw of one pack up to 80 %, in watts. */
        public double firstStageWatts() {
            return 0.8 * gridWh * 60 / minutesTo80;
        }

        /** Draw of one pack after 80 %, in watts. */
        public double secondStageWatts() {
            return 0.2 * gridWh * 60 / (minutesToFull - minutesTo80);
        }

        private double peakWatts() {
            return Math.max(firstStageWatts(), secondStageWatts());
        }
    }

    /** Packs that one charger can bring to a level within a span: min(bays, chargingAtOnce * floor(span / charge time)). */
    public int slots(Fit fit, ChargeLevel level, int spanMinutes) {
        return Math.min(type.bays(), type.chargingAtOnce() * (spanMinutes / fit.minutes(level)));
    }

    /** The same where charging to the level makes sense in the span: 80 % only where a full charge holds fewer packs; else 0. */
    public int usefulSlots(Fit fit, ChargeLevel level, int spanMinutes) {
        int slots = slots(fit, level, spanMinutes);
        boolean fullAsGood = level == ChargeLevel.EIGHTY && slots(fit, ChargeLevel.FULL, spanMinutes) >= slots;
        return fullAsGood ? 0 : slots;
    }
}
