package depot.optimizer.check;

import depot.optimizer.dictionary.DaysSyntax;
import depot.optimizer.dictionary.Dictionary;
import depot.optimizer.dictionary.Field;
import depot.optimizer.dictionary.Presence;
import depot.optimizer.dictionary.Table;
import depot.optimizer.dictionary.ValueType.Kind;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** The rule of keys, for one table. */
final class KeyRules {
    private static final Set<DayOfWeek> ALL_DAYS = Collections.unmodifiableSet(EnumSet.allOf(DayOfWeek.class));

    private final TypedTable typed;
    private final List<Field<?>> plain;
    private final Optional<Field<Set<DayOfWeek>>> days;

    private KeyRules(TypedTable typed) {
        this.typed = typed;
        List<Field<?>> key = typed.table().key();
        this.plain =
                key.stream().filter(field -> field.type().kind() != Kind.DAYS).toList();
        this.days = daysField(key);
    }

    /** Keys are unique, on each day when days belong to the key. */
    static void unique(Drafts drafts, Findings findings) {
        for (Table table : Dictionary.TABLES) {
            if (!table.key().isEmpty()) {
                new KeyRules(drafts.table(table)).check(findings);
            }
        }
    }

    private void check(Findings findings) {
        Map<List<Object>, List<TypedRow>> earlier = new HashMap<>();
        for (TypedRow row : typed.rows()) {
            key(row).ifPresent(key -> {
                List<TypedRow> before = earlier.computeIfAbsent(key, none -> new ArrayList<>(1));
                for (TypedRow other : before) {
                    if (!Collections.disjoint(days(row), days(other))) {
                        duplicate(row, other, findings);
                        break;
                    }
                }
                before.add(row);
            });
        }
    }

    /** The values of the key without the days, empty: a required one is missing or bad, which was reported. */
    private Optional<List<Object>> key(TypedRow row) {
        List<Object> key = new ArrayList<>(plain.size());
        for (Field<?> field : plain) {
            Optional<?> value = row.find(field);
            if (value.isEmpty() && field.presence() == Presence.REQUIRED) {
                return Optional.empty();
            }
            key.add(value.isPresent() ? value.get() : "");
        }
        return Optional.of(key);
    }

    private void duplicate(TypedRow row, TypedRow other, Findings findings) {
        Set<DayOfWeek> common = EnumSet.copyOf(days(row));
        common.retainAll(days(other));
        String names = plain.stream().map(Field::name).collect(Collectors.joining(", "));
        findings.error(
                row,
                plain.get(plain.size() - 1),
                "a row with the same " + names + " is on line " + other.line()
                        + (days.isPresent() ? " on " + DaysSyntax.text(common) : ""),
                "delete one of the two rows, or give one of them another key");
    }

    private Set<DayOfWeek> days(TypedRow row) {
        return days.isPresent() ? row.find(days.get()).orElse(Set.of()) : ALL_DAYS;
    }

    @SuppressWarnings("unchecked")
    private static Optional<Field<Set<DayOfWeek>>> daysField(List<Field<?>> key) {
        // Only the type of days has that kind.
        return key.stream()
                .filter(field -> field.type().kind() == Kind.DAYS)
                .map(field -> (Field<Set<DayOfWeek>>) field)
                .findFirst();
    }
}
