package depot.optimizer.model;

/**
 * Chargers of one type that are loaded at one handover and emptied at another.
 *
 * @param circuit index of the shared circuit, or {@link #PLAIN} for all plain circuits together: a plain charger's circuit makes no difference
 *     to what it can do
 * @param charger index of the charger type
 */
record BatchSpan(int circuit, int charger, int from, int to) {

    /** Stands for all circuits without a unit. */
    static final int PLAIN = -1;

    boolean plain() {
        return circuit == PLAIN;
    }

    int minutes() {
        return to - from;
    }

    /** Whether the chargers are taken up in the span between two neighbouring handovers that starts here. */
    boolean covers(int minute) {
        return from <= minute && minute < to;
    }

    String key() {
        return (plain() ? "plain" : "k" + circuit) + "_c" + charger + "_" + from + "_" + to;
    }
}
