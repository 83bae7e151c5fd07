package depot.optimizer.report.text;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Currency;

/** Amounts of one currency. Each is rounded once, from its exact value; a total may differ from what is shown above it by the last digit. */
public record Amounts(Currency currency) {

    /** Rounded to the currency's smallest coin. */
    public BigDecimal rounded(double amount) {
        return rounded(BigDecimal.valueOf(amount));
    }

    /** Rounded to the currency's smallest coin. */
    public BigDecimal rounded(BigDecimal amount) {
        return amount.setScale(decimals(), RoundingMode.HALF_UP);
    }

    /** Such as "12,345.60"; the currency stands in the heading. */
    public String show(BigDecimal amount) {
        return Figures.read(amount, decimals());
    }

    /** Such as "EUR 12,345.60". */
    public String showWithCode(BigDecimal amount) {
        return code() + " " + show(amount);
    }

    /** ISO 4217 code. */
    public String code() {
        return currency.getCurrencyCode();
    }

    /** Decimals of the smallest coin. */
    public int decimals() {
        return Figures.decimals(currency);
    }
}
