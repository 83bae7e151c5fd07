package depot.optimizer.finance;

import depot.optimizer.plan.CostLine.Category;

/** Kinds of yearly flows of money, in the order in which they are listed. */
public enum FlowKind {
    /** Price of pieces bought. */
    PURCHASES(Scope.PLAN),
    /** Price of spare pieces, less what quantity prices take off when pieces are bought. */
    FLEET_PURCHASES(Scope.PLAN),
    /** Mounting of chargers and units, new circuits, bigger supplies. */
    INSTALLATION(Scope.PLAN),
    /** Pieces that follow others at the end of their lives. */
    REPLACEMENTS(Scope.PLAN),
    /** Packs that follow worn ones. */
    PACK_REPLACEMENT(Scope.PLAN),
    /** What pieces and packs are worth at the end of the horizon. */
    VALUE_AT_END(Scope.PLAN),
    /** Energy from the grid. */
    ENERGY(Scope.PLAN),
    /** Demand charges above those of the base load. */
    DEMAND(Scope.PLAN),
    /** Standing charges. */
    STANDING(Scope.PLAN),
    /** What it costs crews to work from their base. */
    CREW_BASES(Scope.PLAN),
    /** Petrol of crews that stay on it. */
    PETROL(Scope.PLAN),
    /** Energy not covered. */
    SHORTAGE(Scope.PLAN),
    /** Petrol of crews that stay on it, which would be paid without the plan as well. */
    PETROL_EITHER_WAY(Scope.AGAINST_PETROL),
    /** What staying on petrol would cost the crews that change. */
    PETROL_SAVED(Scope.AGAINST_PETROL),
    /** Price of the carbon that petrol would give off, less that of electricity. */
    CARBON_SAVED(Scope.AGAINST_PETROL),
    /** Tax not paid on what is written off. */
    TAX_SHIELD(Scope.AGAINST_PETROL),
    /** Tax on what running costs less than petrol, and on what is worth more at the end than is left in the books. */
    TAX_ON_SAVING(Scope.AGAINST_PETROL);

    private final Scope scope;

    FlowKind(Scope scope) {
        this.scope = scope;
    }

    /** Whether it is one of the plan's own costs; all others only count against staying on petrol. */
    public boolean ofPlan() {
        return scope == Scope.PLAN;
    }

    /** The kind of a payment of a cost line. */
    static FlowKind of(Category category, Payment.Reason reason) {
        return switch (reason) {
            case PURCHASE -> PURCHASES;
            case INSTALLATION -> INSTALLATION;
            case REPLACEMENT -> REPLACEMENTS;
            case VALUE_AT_END -> VALUE_AT_END;
            case RUNNING -> running(category);
        };
    }

    /** The kind of a payment that the fleet makes beside its depots. */
    static FlowKind ofFleet(Payment.Reason reason) {
        return reason == Payment.Reason.VALUE_AT_END ? VALUE_AT_END : FLEET_PURCHASES;
    }

    private static FlowKind running(Category category) {
        return switch (category) {
            case PACK_WEAR -> PACK_REPLACEMENT;
            case ENERGY -> ENERGY;
            case DEMAND -> DEMAND;
            case STANDING -> STANDING;
            case CREW_BASES -> CREW_BASES;
            case PETROL -> PETROL;
            case SHORTAGE -> SHORTAGE;
            case PACKS, CHARGERS, SHARING_UNITS, POWER_BANKS, CIRCUITS, SUPPLY, MOVES ->
                throw new IllegalArgumentException(category + " does not come every year.");
        };
    }

    private enum Scope {
        PLAN,
        AGAINST_PETROL
    }
}
