package depot.optimizer.problem;

import depot.optimizer.scenario.ChargerType;
import depot.optimizer.scenario.PackType;
import java.util.List;

/** A charger type and the pack types that fit it. */
public record ChargerOption(ChargerType type, List<Fit> fits) {

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
}
