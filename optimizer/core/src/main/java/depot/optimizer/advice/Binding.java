package depot.optimizer.advice;

import depot.optimizer.plan.SeasonDay;
import java.util.List;

/**
 * The moment at which a purchase is needed most.
 *
 * @param limit what would be exceeded without it
 * @param days season days of the kind of day on which that is
 * @param crews that are concerned, in the order of the plan
 * @param fromMinute start of the moment
 * @param toMinute its end
 * @param used of the limit then, in the limit's unit
 * @param there the limit
 */
public record Binding(
        Limit limit,
        List<SeasonDay> days,
        List<String> crews,
        int fromMinute,
        int toMinute,
        double used,
        double there) {

    /** What may bind. */
    public enum Limit {
        /** Packs of the type on the road at once, of all of the type; pieces. */
        PACKS_OUT,
        /** Bays of chargers of the type on the circuit with packs in them, of all of them; pieces. */
        BAYS,
        /** Plates of the chargers behind a unit, against what the circuit may carry for hours without one; amperes. */
        PLATES,
        /** Current of the circuit in fact, against what it may carry; amperes. */
        CURRENT,
        /** Current of the supply, against what it may carry as it is; amperes. */
        SUPPLY,
        /** Packs that the crew recharges on the way on one trip, of those that it takes along; pieces. */
        ON_THE_WAY
    }
}
