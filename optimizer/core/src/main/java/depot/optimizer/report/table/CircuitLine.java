package depot.optimizer.report.table;

import depot.optimizer.replay.DayReplay;
import depot.optimizer.scenario.SharingUnitType;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * A circuit of a depot, or its supply, with what it may carry and what is plugged in. Currents are in amps at its own voltage.
 *
 * @param name key of the circuit, or {@link DayReplay#SUPPLY}
 * @param work what has to be done to it
 * @param volts line-to-line on three phases
 * @param breakerAmps rating of its breaker, after the work
 * @param continuousFactor share of the rating that may be drawn for hours
 * @param plugAmps limit of one plug, empty: none below the breaker's, or the supply
 * @param otherLoadsAmps what it feeds beside charging, at the worst moment of the week
 * @param plateAmps plate currents of all that is plugged in, added up
 * @param countedAmps what of that counts against the limit: all of it, or what load-sharing units let through
 * @param unit its load-sharing unit
 * @param plugs how many outlets are used
 * @param outlets how many there are, empty: the supply
 * @param greatest highest load in the replay, empty: it carried nothing on any day
 */
public record CircuitLine(
        String name,
        Work work,
        double volts,
        int phases,
        double breakerAmps,
        double continuousFactor,
        OptionalDouble plugAmps,
        double otherLoadsAmps,
        double plateAmps,
        double countedAmps,
        Optional<Unit> unit,
        int plugs,
        OptionalInt outlets,
        Optional<Greatest> greatest) {

    /** What an electrician has to do. */
    public enum Work {
        /** Nothing: it is there. */
        EXISTING("existing"),
        /** The circuit has to be built. */
        NEW_CIRCUIT("new circuit"),
        /** The supply has to be made bigger. */
        BIGGER_SUPPLY("bigger supply");

        private final String words;

        Work(String words) {
            this.words = words;
        }

        /** In plain words. */
        public String words() {
            return words;
        }
    }

    /**
     * A load-sharing unit and what it is set to.
     *
     * @param owned whether it is there already
     * @param settingAmps most that it may draw while the circuit feeds nothing else
     * @param besideOtherLoadsAmps most that it may draw beside the other loads at their highest
     */
    public record Unit(SharingUnitType type, boolean owned, double settingAmps, double besideOtherLoadsAmps) {}

    /** The day of the replay on which it was nearest to its limit, and how near. */
    public record Greatest(DayReplay day, DayReplay.Peak peak) {}

    /** What it may carry for hours. */
    public double usableAmps() {
        return breakerAmps * continuousFactor;
    }

    /** What is left of that for charging, beside the other loads at their highest. */
    public double leftAmps() {
        return Math.max(0, usableAmps() - otherLoadsAmps);
    }

    /** What nothing uses. */
    public double marginAmps() {
        return leftAmps() - countedAmps;
    }

    /** Whether it is the depot's supply. */
    public boolean supply() {
        return name.equals(DayReplay.SUPPLY);
    }
}
