package depot.optimizer.report.text;

import depot.optimizer.plan.SeasonDay;
import java.time.DayOfWeek;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Season days in few words, such as "summer Mon-Fri; winter Mon, Wed". */
public final class DayNames {

    private DayNames() {}

    /** All the days, by season in the order given, days of the week in ranges where three or more follow each other. */
    public static String of(List<SeasonDay> days) {
        Map<String, Set<DayOfWeek>> bySeason = new LinkedHashMap<>();
        for (SeasonDay day : days) {
            bySeason.computeIfAbsent(day.season(), season -> EnumSet.noneOf(DayOfWeek.class))
                    .add(day.day());
        }
        return bySeason.entrySet().stream()
                .map(entry -> entry.getKey() + " " + ranges(entry.getValue()))
                .collect(Collectors.joining("; "));
    }

    /** One day, such as "summer Mon". */
    public static String of(SeasonDay day) {
        return of(List.of(day));
    }

    /** A weekday in three letters. */
    public static String weekday(DayOfWeek day) {
        return day.getDisplayName(TextStyle.SHORT, Locale.ROOT);
    }

    private static String ranges(Set<DayOfWeek> days) {
        List<DayOfWeek> sorted = List.copyOf(EnumSet.copyOf(days));
        List<String> parts = new ArrayList<>();
        int from = 0;
        while (from < sorted.size()) {
            int to = from;
            while (to + 1 < sorted.size()
                    && sorted.get(to + 1).getValue() == sorted.get(to).getValue() + 1) {
                to++;
            }
            if (to - from >= 2) {
                parts.add(weekday(sorted.get(from)) + "-" + weekday(sorted.get(to)));
            } else {
                sorted.subList(from, to + 1).forEach(day -> parts.add(weekday(day)));
            }
            from = to + 1;
        }
        return String.join(", ", parts);
    }
}
