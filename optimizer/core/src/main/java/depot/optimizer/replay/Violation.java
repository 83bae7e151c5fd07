package depot.optimizer.replay;

import depot.optimizer.plan.SeasonDay;
import java.util.Optional;

/**
 * A rule that the plan breaks.
 *
 * @param kind which rule
 * @param depot where
 * @param day index of the day in {@code DepotPlan.days}, {@link #EVERY_DAY}: the equipment itself breaks the rule
 * @param occurrence first season and weekday on which it breaks, empty: every day
 * @param subject circuit, charger, crew and trip, pool and pack type: whatever is at fault
 * @param minute minutes after midnight, {@link #NO_MINUTE}: no moment of its own
 * @param measured what was found, in the unit that the message names
 * @param limit what the rule allows
 * @param message in plain words, with the values
 */
public record Violation(
        Kind kind,
        String depot,
        int day,
        Optional<SeasonDay> occurrence,
        String subject,
        int minute,
        double measured,
        double limit,
        String message) {

    /** In place of a day's index: the rule is broken whatever the day. */
    public static final int EVERY_DAY = -1;

    /** In place of a minute: the rule has no moment of its own. */
    public static final int NO_MINUTE = -1;

    /** The rules, in the order in which they are checked. */
    public enum Kind {
        /** The plan names something that the scenario does not have (any more). */
        MISSING_ITEM,
        /** A candidate circuit is used but not built, or a supply upgrade is not on offer. */
        NOT_BUILT,
        /** More plugs than outlets, or two plugs in one outlet. */
        OUTLETS,
        /** One plug draws more than it may. */
        PLUG_CURRENT,
        /** The chargers of a circuit without a unit draw more than its breaker may carry for hours. */
        CIRCUIT_CURRENT,
        /** The supply carries more than it may. */
        SUPPLY_CURRENT,
        /** More demand is billed than the plan pays for. */
        DEMAND,
        /** Chargers take more places than the depot has. */
        PLACES,
        /** Two units on a circuit, or something plugged in beside the unit. */
        UNIT,
        /** A charger counts on a priority outlet that it is not plugged into, or there are too many of them. */
        PRIORITY,
        /** More is used as owned than is owned. */
        OWNED,
        /** A crew carries something that is not portable. */
        PORTABLE,
        /** A crew stays on petrol that may not, changes too early, or changes back. */
        PETROL,
        /** Something that was bought in an earlier phase is not there any more. */
        PHASE,
        /** A crew works from no depot, from several, or from one that is not a base of it. */
        CREW_BASE,
        /** A crew counts on packs that the depot which it visits does not charge. */
        VISIT,
        /** Pieces come from no depot, or go to none. */
        MOVE,
        /** A quantity price is counted that is not reached. */
        QUANTITY_PRICE,
        /** What the fleet pays as a whole is not what its parts come to. */
        COST,
        /** A phase spends more than its budget, or buys more than can be delivered. */
        SHARED_LIMIT,
        /** Season days with work are left out, doubled, or counted with the wrong number of days. */
        CALENDAR,
        /** A day starts or ends at another time than the depot's cycle. */
        CYCLE,
        /** A trip of the route is missing, or differs from the route. */
        TRIP,
        /** Fewer packs on board than tools that run at once. */
        TOOLS_AT_ONCE,
        /** More packs on board than the vehicle has places. */
        PACK_PLACES,
        /** More weight on board than the vehicle may carry. */
        PAYLOAD,
        /** A road charge does not fit the stop, its power, its charger or its time. */
        ROAD_CHARGE,
        /** A road charge takes packs that are not empty yet. */
        ROAD_PACKS,
        /** Power banks give more than they hold. */
        BANK_ENERGY,
        /** A bank is not recharged at the depot, or not in time. */
        BANK_RECHARGE,
        /** A pack type does not fit the charger. */
        FIT,
        /** More packs than bays. */
        BAYS,
        /** Packs are moved at a time at which nobody does. */
        HANDOVER,
        /** A charger is loaded before its last load was collected. */
        CHARGER_BUSY,
        /** A load takes packs that are not there to be charged. */
        PACKS_TO_LOAD,
        /** A load is not ready when it is collected. */
        LATE,
        /** A trip leaves without packs that it should carry. */
        PACKS_TO_CARRY,
        /** A trip lacks energy that the plan does not declare as short. */
        ENERGY,
        /** Packs are not full when the next day starts. */
        NOT_FULL,
        /** The plan's energy differs from what its loads draw. */
        GRID_ENERGY
    }

    @Override
    public String toString() {
        return kind + " " + subject + ": " + message;
    }
}
