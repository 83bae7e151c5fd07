package depot.optimizer.model;

/**
 * Chargers of one type that are loaded at one handover and emptied at another. Circuits that are fed alike are one: which of them a charger sits on
 * makes no difference to what it can do.
 *
 * @param charger index of the charger type
 * @param guest index of the visit whose packs are charged, {@link #OWN}: the depot's own
 */
record BatchSpan(Feed feed, int charger, int from, int to, int guest) {

    /** In place of a guest. */
    static final int OWN = -1;

    /** With the depot's own packs. */
    static BatchSpan own(Feed feed, int charger, int from, int to) {
        return new BatchSpan(feed, charger, from, to, OWN);
    }

    boolean guests() {
        return guest != OWN;
    }

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
        String times = feed.name().toLowerCase(java.util.Locale.ROOT) + "_c" + charger + "_" + from + "_" + to;
        return guests() ? times + "_g" + guest : times;
    }
}
