package depot.optimizer.tariff;

import java.time.Month;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Months of the year as text: {@code Jan}, ranges {@code Apr-Sep} (also over the new year: {@code Oct-Mar}), lists of both parted by commas. */
final class Months {
    private static final List<String> NAMES =
            List.of("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec");

    private Months() {}

    /** Position of a month in the rows of a record, from 0. */
    static int row(Month month) {
        return month.getValue() - 1;
    }

    /** The months that a text names, or empty when a part of it is no month or a month is there twice. */
    static Optional<Set<Month>> parse(String text) {
        EnumSet<Month> months = EnumSet.noneOf(Month.class);
        for (String part : text.split("[,;]", -1)) {
            List<Month> span = span(part.strip());
            if (span.isEmpty() || span.stream().anyMatch(months::contains)) {
                return Optional.empty();
            }
            months.addAll(span);
        }
        return Optional.of(months);
    }

    /** The shortest usual writing: runs of three months and more as ranges. */
    static String text(Set<Month> months) {
        List<String> parts = new ArrayList<>();
        for (int first = 0; first < NAMES.size(); first++) {
            int last = first;
            while (last < NAMES.size() && months.contains(Month.of(last + 1))) {
                last++;
            }
            if (last - first >= 3) {
                parts.add(NAMES.get(first) + "-" + NAMES.get(last - 1));
            } else {
                parts.addAll(NAMES.subList(first, last));
            }
            first = Math.max(first, last);
        }
        return String.join(", ", parts);
    }

    /** Months that have the same value, by value, in the order of the year. */
    static <T> Map<T, Set<Month>> alike(Set<Month> months, Function<Month, T> value) {
        Map<T, Set<Month>> groups = new LinkedHashMap<>();
        for (Month month : Month.values()) {
            if (months.contains(month)) {
                groups.computeIfAbsent(value.apply(month), none -> EnumSet.noneOf(Month.class))
                        .add(month);
            }
        }
        return groups;
    }

    /** Groups of months in words, such as "Jan-May, Dec; Jun-Nov". */
    static String words(Map<?, Set<Month>> groups) {
        return groups.values().stream().map(Months::text).collect(Collectors.joining("; "));
    }

    private static List<Month> span(String part) {
        String[] ends = part.split("-", -1);
        Optional<Month> first = month(ends[0].strip());
        Optional<Month> last = month(ends[ends.length - 1].strip());
        if (ends.length > 2 || first.isEmpty() || last.isEmpty()) {
            return List.of();
        }
        List<Month> span = new ArrayList<>(List.of(first.get()));
        for (Month month = first.get(); month != last.get(); month = month.plus(1)) {
            span.add(month.plus(1));
        }
        return span;
    }

    private static Optional<Month> month(String name) {
        String lower = name.toLowerCase(Locale.ROOT);
        return List.of(Month.values()).stream()
                .filter(month -> lower.equals(month.name().toLowerCase(Locale.ROOT))
                        || lower.equals(NAMES.get(row(month)).toLowerCase(Locale.ROOT)))
                .findFirst();
    }
}
