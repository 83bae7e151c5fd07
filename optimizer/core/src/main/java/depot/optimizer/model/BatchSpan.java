package depot.optimizer.model;

/**
 * Chargers of one type that are loaded at one handover and emptied at another. Circuits that are fed alike are one: which of them a charger sits on
 * makes no difference to what it can do.
 *
 * @param charger index of the charger type
 */
record BatchSpan(Feed feed, int charger, int from, int to) {

    boolean plain() {
        return feed == Feed.PLAIN;
    }

    boolean waits() {
        return feed == Feed.WAITING;
    }

    int minutes() {
        return to - from;
    }

    /** Whether the chargers are taken up in the span between two neighbouring handovers that starts here. */
    boolean covers(int minute) {
        return from <= minute && minute < to;
    }

    String key() {
        return feed.name().toLowerCase(java.util.Locale.ROOT) + "_c" + charger + "_" + from + "_" + to;
    }
}
