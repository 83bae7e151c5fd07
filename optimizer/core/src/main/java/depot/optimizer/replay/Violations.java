package depot.optimizer.replay;

import depot.optimizer.plan.SeasonDay;
import depot.optimizer.replay.Violation.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Collects what one depot, or one of its days, breaks. */
final class Violations {
    private final String depot;
    private final int day;
    private final Optional<SeasonDay> occurrence;
    private final List<Violation> found = new ArrayList<>();

    private Violations(String depot, int day, Optional<SeasonDay> occurrence) {
        this.depot = depot;
        this.day = day;
        this.occurrence = occurrence;
    }

    static Violations ofDepot(String depot) {
        return new Violations(depot, Violation.EVERY_DAY, Optional.empty());
    }

    static Violations ofDay(String depot, int day, Optional<SeasonDay> occurrence) {
        return new Violations(depot, day, occurrence);
    }

    void add(Kind kind, String subject, String message) {
        add(kind, subject, Violation.NO_MINUTE, 0, 0, message);
    }

    void add(Kind kind, String subject, double measured, double limit, String message) {
        add(kind, subject, Violation.NO_MINUTE, measured, limit, message);
    }

    void add(Kind kind, String subject, int minute, double measured, double limit, String message) {
        found.add(new Violation(kind, depot, day, occurrence, subject, minute, measured, limit, message));
    }

    /** Notes something that the scenario lacks. */
    void missing(String what, String id, String user) {
        add(
                Kind.MISSING_ITEM,
                id,
                "there is no " + what + " \"" + id + "\" in the scenario, but " + user + " needs it");
    }

    List<Violation> list() {
        return List.copyOf(found);
    }

    boolean none() {
        return found.isEmpty();
    }

    /** A time of day as people write it, past 24:00 for the following night. */
    static String clock(int minute) {
        return String.format(Locale.ROOT, "%02d:%02d", minute / 60, minute % 60);
    }

    /** A number with at most two decimals. */
    /** So many packs, such as "1 pack". */
    static String packs(int count) {
        return count + (count == 1 ? " pack" : " packs");
    }

    static String number(double value) {
        String text = String.format(Locale.ROOT, "%.2f", value);
        return text.endsWith(".00") ? text.substring(0, text.length() - 3) : text;
    }
}
