package depot.optimizer.dictionary;

import java.math.BigDecimal;
import java.util.regex.Pattern;

/** How numbers are written: digits with a decimal point, no thousands separators, no unit. */
final class NumberSyntax {
    /** Bounded exponent, so that no number can blow up when it is written out. */
    private static final Pattern NUMBER =
            Pattern.compile("[+-]?(\\d{1,30}(\\.\\d{0,30})?|\\.\\d{1,30})([eE][+-]?\\d{1,3})?");

    private static final Pattern COMMAS = Pattern.compile("[+-]?[\\d.,' ]*[,' ][\\d.,' ]*");

    private NumberSyntax() {}

    static BigDecimal decimal(String text, Range range) throws BadValueException {
        if (!NUMBER.matcher(text).matches()) {
            throw new BadValueException("not a number", hint(text));
        }
        BigDecimal value = new BigDecimal(text);
        if (Double.isInfinite(value.doubleValue())) {
            throw new BadValueException("number too large", "allowed: " + range.words());
        }
        if (!range.contains(value)) {
            throw new BadValueException("out of range", "allowed: " + range.words());
        }
        return value;
    }

    static int integer(String text, Range range) throws BadValueException {
        return (int) whole(text, range);
    }

    static long whole(String text, Range range) throws BadValueException {
        BigDecimal value = decimal(text, range);
        if (value.signum() != 0 && value.stripTrailingZeros().scale() > 0) {
            throw new BadValueException("not a whole number", "write a whole number: " + range.words());
        }
        return value.longValueExact();
    }

    private static String hint(String text) {
        if (!text.isEmpty() && COMMAS.matcher(text).matches()) {
            return "write it with a decimal point and no thousands separators, like 1234.5";
        }
        return "write digits only, without a unit or a currency sign, like 12 or 3.5";
    }
}
