package depot.optimizer.cli;

import depot.optimizer.fleet.FleetPlanner.Method;
import java.math.BigDecimal;
import java.util.Locale;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** How the values of options are read; each says what it wanted when it cannot. */
final class Converters {

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    private static final int MOST_DECIMALS = 30;

    private Converters() {}

    /** A share from 0 to below 1, such as 0.005 or 0.5%. */
    static final class Share implements ITypeConverter<Double> {
        @Override
        public Double convert(String text) {
            boolean percent = text.endsWith("%");
            BigDecimal number = number(percent ? text.substring(0, text.length() - 1) : text, text);
            BigDecimal share = percent ? number.divide(HUNDRED) : number;
            if (share.signum() < 0 || share.compareTo(BigDecimal.ONE) >= 0) {
                throw new TypeConversionException(
                        "'%s' is not a share from 0 to below 1, such as 0.005 or 0.5%%".formatted(text));
            }
            return share.doubleValue();
        }
    }

    /** How a fleet is planned. */
    static final class PlanMethod implements ITypeConverter<Method> {
        @Override
        public Method convert(String text) {
            for (Method method : Method.values()) {
                if (method.name().toLowerCase(Locale.ROOT).equals(text)) {
                    return method;
                }
            }
            throw new TypeConversionException("'%s' is not a method; apart or whole".formatted(text));
        }
    }

    /** A whole number from 1. */
    static final class Count implements ITypeConverter<Integer> {
        @Override
        public Integer convert(String text) {
            return (int) whole(text, Integer.MAX_VALUE);
        }
    }

    /** A whole number from 1 that may be very large. */
    static final class LargeCount implements ITypeConverter<Long> {
        @Override
        public Long convert(String text) {
            return whole(text, Long.MAX_VALUE);
        }
    }

    /** Seconds, more than 0. */
    static final class Seconds implements ITypeConverter<Double> {
        @Override
        public Double convert(String text) {
            double seconds = number(text, text).doubleValue();
            if (seconds <= 0 || Double.isInfinite(seconds)) {
                throw new TypeConversionException("'%s' is not a number of seconds above 0".formatted(text));
            }
            return seconds;
        }
    }

    /** A number above 0 that is kept to its last digit. */
    static final class Amount implements ITypeConverter<BigDecimal> {
        @Override
        public BigDecimal convert(String text) {
            BigDecimal amount = number(text, text);
            boolean usable = amount.signum() > 0 && Math.abs((long) amount.scale()) <= MOST_DECIMALS;
            if (!usable) {
                throw new TypeConversionException("'%s' is not a number above 0, such as 0.92".formatted(text));
            }
            return amount;
        }
    }

    private static long whole(String text, long largest) {
        BigDecimal number = number(text, text);
        boolean fits = number.signum() > 0
                && number.compareTo(BigDecimal.valueOf(largest)) <= 0
                && number.stripTrailingZeros().scale() <= 0;
        if (!fits) {
            throw new TypeConversionException("'%s' is not a whole number from 1 to %d".formatted(text, largest));
        }
        return number.longValueExact();
    }

    private static BigDecimal number(String digits, String text) {
        try {
            return new BigDecimal(digits.strip());
        } catch (NumberFormatException e) {
            throw new TypeConversionException("'%s' is not a number".formatted(text));
        }
    }
}
