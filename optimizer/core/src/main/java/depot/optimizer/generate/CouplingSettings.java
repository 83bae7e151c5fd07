package depot.optimizer.generate;

import java.util.Collections;
import java.util.EnumSet;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * What couples the depots of a synthetic fleet.
 *
 * @param phases 1 to {@value #MOST_PHASES}, a year apart; 1: everything is bought now
 * @param budgetShare budget of each phase but the last, of each where changing is optional, as a share of what the fleet's packs and chargers cost by a rough
 *     estimate, 0 to 1; empty: no budgets
 * @param kinds what else couples them
 */
public record CouplingSettings(int phases, OptionalDouble budgetShare, Set<Kind> kinds) {

    /** Most phases: a year each of the horizon that synthetic fleets have. */
    public static final int MOST_PHASES = FleetGenerator.HORIZON_YEARS;

    /** Nothing couples the depots. */
    public static final CouplingSettings NONE = new CouplingSettings(1, OptionalDouble.empty(), Set.of());

    /** Things that couple depots. */
    public enum Kind {
        /** Crews that may change from petrol to packs in a later phase, or not at all. */
        CONVERSIONS,
        /** Every crew may change in any phase or stay on petrol; each phase has a budget, a single one too, and regions have none. */
        OPTIONAL,
        /** Quantity prices. */
        TIERS,
        /** Limits of delivery in each phase but the last. */
        LIMITS,
        /** Moves of owned equipment, and equipment to move. */
        MOVES,
        /** Crews that could work from another depot. */
        BASES,
        /** Crews that are in another depot at lunch. */
        VISITS
    }

    /**
     * Checks the ranges.
     *
     * @throws IllegalArgumentException naming the setting, its value and its range
     */
    public CouplingSettings {
        kinds = kinds.isEmpty() ? Set.of() : Collections.unmodifiableSet(EnumSet.copyOf(kinds));
        if (phases < 1 || phases > MOST_PHASES) {
            throw new IllegalArgumentException("phases is " + phases + ", must be 1 to " + MOST_PHASES);
        }
        double share = budgetShare.orElse(0);
        if (!(share >= 0 && share <= 1)) {
            throw new IllegalArgumentException("budgetShare is " + share + ", must be 0 to 1");
        }
        if (kinds.contains(Kind.CONVERSIONS) && kinds.contains(Kind.OPTIONAL)) {
            throw new IllegalArgumentException(
                    "conversions and optional are two ways to draw the same table; choose one");
        }
        boolean crewsMayWait = kinds.contains(Kind.OPTIONAL) || (phases > 1 && kinds.contains(Kind.CONVERSIONS));
        if ((budgetShare.isPresent() || kinds.contains(Kind.LIMITS)) && !crewsMayWait) {
            throw new IllegalArgumentException(
                    "budgets and limits need 2 phases or more and conversions, or optional, so that something can wait");
        }
    }

    /**
     * Checks that a fleet is big enough.
     *
     * @throws IllegalArgumentException if a crew has no other depot to go to
     */
    void requireFits(GeneratorSettings fleet) {
        if (fleet.depots() < 2 && (has(Kind.BASES) || has(Kind.VISITS))) {
            throw new IllegalArgumentException("depots is 1, must be 2 or more for other bases and for visits");
        }
    }

    boolean has(Kind kind) {
        return kinds.contains(kind);
    }

    /** Whether budgets or deliveries limit what is bought in the earlier phases. */
    boolean limited() {
        return budgetShare.isPresent() || has(Kind.LIMITS);
    }
}
