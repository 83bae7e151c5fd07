package depot.optimizer.generate;

import depot.optimizer.dictionary.DaysSyntax;
import depot.optimizer.dictionary.Field;
import depot.optimizer.dictionary.TimeSyntax;
import depot.optimizer.dictionary.ValueType.Kind;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/** Writes a value so that the dictionary reads the same value back. */
final class FieldText {
    private FieldText() {}

    static <T> String of(Field<T> field, T value) {
        if (value instanceof Double number) {
            return decimal(number);
        }
        if (value instanceof BigDecimal amount) {
            return amount.toPlainString();
        }
        if (value instanceof Boolean yes) {
            return yes ? "yes" : "no";
        }
        if (value instanceof Integer minutes && field.type().kind() == Kind.TIME) {
            return TimeSyntax.text(minutes);
        }
        if (value instanceof Set<?> days) {
            return DaysSyntax.text(days.stream().map(DayOfWeek.class::cast).collect(Collectors.toSet()));
        }
        return value instanceof Enum<?> word ? word.name().toLowerCase(Locale.ROOT) : value.toString();
    }

    /** The shortest decimal that reads back as the same number, without an exponent and without a trailing ".0". */
    private static String decimal(double value) {
        BigDecimal exact = BigDecimal.valueOf(value);
        return exact.signum() == 0 ? "0" : exact.stripTrailingZeros().toPlainString();
    }
}
