package depot.optimizer.dictionary;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Days of the week: {@code Mon}, ranges {@code Mon-Fri} (also over the weekend: {@code Sat-Mon}), and lists of both
 * parted by semicolons, or by commas inside quotes. Upper and lower case are the same.
 */
public final class DaysSyntax {
    private static final List<String> NAMES = List.of("Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun");
    private static final Map<String, DayOfWeek> BY_NAME = byName();
    private static final Pattern PARTS = Pattern.compile("[;,]");
    private static final String HINT = "write Mon, Mon-Fri or Mon;Wed;Sat";

    private DaysSyntax() {}

    /** The shortest usual writing: runs of three days and more as ranges. */
    public static String text(Set<DayOfWeek> days) {
        List<String> parts = new ArrayList<>();
        for (int first = 0; first < NAMES.size(); first++) {
            int last = first;
            while (last < NAMES.size() && days.contains(DayOfWeek.of(last + 1))) {
                last++;
            }
            if (last - first >= 3) {
                parts.add(NAMES.get(first) + "-" + NAMES.get(last - 1));
            } else {
                parts.addAll(NAMES.subList(first, last));
            }
            first = Math.max(first, last);
        }
        return String.join(";", parts);
    }

    static Set<DayOfWeek> days(String text) throws BadValueException {
        EnumSet<DayOfWeek> days = EnumSet.noneOf(DayOfWeek.class);
        for (String part : PARTS.split(text, -1)) {
            for (DayOfWeek day : span(part.strip())) {
                if (!days.add(day)) {
                    throw new BadValueException(
                            NAMES.get(day.getValue() - 1) + " is there twice", "name each day once");
                }
            }
        }
        return Collections.unmodifiableSet(days);
    }

    private static Set<DayOfWeek> span(String part) throws BadValueException {
        String[] ends = part.split("-", -1);
        if (ends.length > 2) {
            throw new BadValueException("not a day or a range of days", HINT);
        }
        DayOfWeek first = day(ends[0].strip());
        DayOfWeek last = day(ends[ends.length - 1].strip());
        EnumSet<DayOfWeek> days = EnumSet.of(first);
        for (DayOfWeek day = first; day != last; day = day.plus(1)) {
            days.add(day.plus(1));
        }
        return days;
    }

    private static DayOfWeek day(String name) throws BadValueException {
        DayOfWeek day = BY_NAME.get(name.toLowerCase(Locale.ROOT));
        if (day == null) {
            throw new BadValueException("no such day", HINT);
        }
        return day;
    }

    private static Map<String, DayOfWeek> byName() {
        Map<String, DayOfWeek> byName = new HashMap<>();
        for (DayOfWeek day : DayOfWeek.values()) {
            String name = day.name().toLowerCase(Locale.ROOT);
            byName.put(name, day);
            byName.put(name.substring(0, 3), day);
        }
        return byName;
    }
}
