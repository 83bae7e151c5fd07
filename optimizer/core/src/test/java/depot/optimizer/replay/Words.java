package depot.optimizer.replay;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** One line of a fixture drawn in text: plain words in order, and name=value words in any order. */
final class Words {
    private final List<String> plain = new ArrayList<>();
    private final Map<String, String> named = new HashMap<>();

    Words(String line) {
        for (String word : line.strip().split("\\s+", -1)) {
            int at = word.indexOf('=');
            if (at < 0) {
                plain.add(word);
            } else {
                named.put(word.substring(0, at), word.substring(at + 1));
            }
        }
    }

    String kind() {
        return plain.get(0);
    }

    String at(int index) {
        return plain.get(index);
    }

    int count() {
        return plain.size();
    }

    boolean says(String word) {
        return plain.contains(word);
    }

    String text(String name, String otherwise) {
        return named.getOrDefault(name, otherwise);
    }

    double number(String name, double otherwise) {
        return named.containsKey(name) ? Double.parseDouble(named.get(name)) : otherwise;
    }

    int whole(String name, int otherwise) {
        return named.containsKey(name) ? Integer.parseInt(named.get(name)) : otherwise;
    }

    boolean has(String name) {
        return named.containsKey(name);
    }

    /** A time such as 07:30 or, in the following night, 30:00. */
    static int time(String clock) {
        String[] parts = clock.split(":", -1);
        return Integer.parseInt(parts[0]) * 60 + Integer.parseInt(parts[1]);
    }

    /** Mon, Mon-Fri, or every day. */
    Set<DayOfWeek> days() {
        return range(text("days", "Mon-Sun"));
    }

    static Set<DayOfWeek> range(String days) {
        String[] ends = days.split("-", -1);
        return EnumSet.range(day(ends[0]), day(ends[ends.length - 1]));
    }

    static DayOfWeek day(String name) {
        for (DayOfWeek day : DayOfWeek.values()) {
            if (day.name().startsWith(name.toUpperCase(Locale.ROOT))) {
                return day;
            }
        }
        throw new IllegalArgumentException("no day " + name);
    }
}
