package depot.optimizer.report.text;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Currency;
import java.util.Locale;

/** Numbers as text: a point before decimals; on pages a comma between thousands. */
public final class Figures {

    private Figures() {}

    /** For tables: at most so many decimals, no separators, no trailing zeros. */
    public static String plain(double value, int decimals) {
        return plain(BigDecimal.valueOf(value), decimals);
    }

    /** For tables: at most so many decimals, no separators, no trailing zeros. */
    public static String plain(BigDecimal value, int decimals) {
        BigDecimal rounded = value.setScale(decimals, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    /** For pages: exactly so many decimals, such as "12,345.6". */
    public static String read(double value, int decimals) {
        return read(BigDecimal.valueOf(value), decimals);
    }

    /** For pages: exactly so many decimals, such as "12,345.6". */
    public static String read(BigDecimal value, int decimals) {
        DecimalFormat format = new DecimalFormat("#,##0", DecimalFormatSymbols.getInstance(Locale.ROOT));
        format.setMinimumFractionDigits(decimals);
        format.setMaximumFractionDigits(decimals);
        return format.format(value.setScale(decimals, RoundingMode.HALF_UP));
    }

    /** For pages: a share between 0 and 1 as a percentage, such as "82.4 %". */
    public static String percent(double share) {
        return read(100 * share, 1) + " %";
    }

    /** A number with its noun, such as "1 depot" or "3 depots". */
    public static String count(long number, String noun) {
        return count(Long.toString(number), noun);
    }

    /** A number as text with its noun, such as "1 day" or "1.5 days". */
    public static String count(String number, String noun) {
        return number + " " + noun + (number.equals("1") ? "" : "s");
    }

    /** Decimals of an amount: those of the currency, none for one without coins. */
    public static int decimals(Currency currency) {
        return Math.max(0, currency.getDefaultFractionDigits());
    }
}
