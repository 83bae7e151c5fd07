package depot.optimizer.tariff;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Optional;

/** What a record charges for the connection itself, whatever is used, by the day. */
final class StandingCharge {
    static final String FIRST_METER = "fixedchargefirstmeter";
    static final String UNITS = "fixedchargeunits";
    static final String FURTHER_METERS = "fixedchargeeaaddl";
    /** Its name in version 3, always by the month. */
    static final String MONTHLY = "fixedmonthlycharge";

    private static final BigDecimal MONTHS = BigDecimal.valueOf(12);
    /** As many days a year as plans count standing charges for, so that a year's total is the record's. */
    private static final BigDecimal DAYS = new BigDecimal("365.25");

    private StandingCharge() {}

    /** US dollars a day, 0: none; empty after telling what is wrong. */
    static Optional<BigDecimal> perDay(RateFields fields) {
        long before = fields.remarks().errors();
        Optional<BigDecimal> first = charged(fields, FIRST_METER).flatMap(amount -> perDay(fields, amount));
        Optional<BigDecimal> monthly =
                charged(fields, MONTHLY).map(amount -> Amounts.plain(overYear(amount.multiply(MONTHS))));
        charged(fields, FURTHER_METERS).ifPresent(amount -> fields.remarks()
                .notice(
                        FURTHER_METERS,
                        fields.line(FURTHER_METERS),
                        "the charge for each further meter is not used",
                        "a depot has one meter"));
        if (first.isPresent() && monthly.isPresent() && !first.equals(monthly)) {
            String message = "the record has " + FIRST_METER + " as well, and the two differ";
            fields.remarks().error(MONTHLY, fields.line(MONTHLY), message, "delete the one that does not hold");
        }
        return fields.remarks().errors() == before
                ? Optional.of(first.or(() -> monthly).orElse(BigDecimal.ZERO))
                : Optional.empty();
    }

    private static Optional<BigDecimal> charged(RateFields fields, String field) {
        Optional<BigDecimal> amount = fields.number(field);
        if (amount.isPresent() && amount.get().signum() < 0) {
            String message = "a charge of less than nothing: " + amount.get().toPlainString();
            fields.remarks().error(field, fields.line(field), message, "a scenario has charges of 0 or more");
            return Optional.empty();
        }
        return amount.filter(charge -> charge.signum() > 0);
    }

    private static Optional<BigDecimal> perDay(RateFields fields, BigDecimal amount) {
        String unit = fields.text(UNITS).orElse("");
        return switch (unit) {
            case "$/day" -> Optional.of(Amounts.plain(amount));
            case "$/month" -> Optional.of(Amounts.plain(overYear(amount.multiply(MONTHS))));
            case "$/year" -> Optional.of(Amounts.plain(overYear(amount)));
            default -> {
                String known = String.join(", ", List.of("$/day", "$/month", "$/year"));
                String message = unit.isEmpty() ? "the record does not have it" : "not a unit of a charge: " + unit;
                fields.remarks().error(UNITS, fields.line(UNITS), message, "units: " + known);
                yield Optional.empty();
            }
        };
    }

    private static BigDecimal overYear(BigDecimal perYear) {
        return perYear.divide(DAYS, MathContext.DECIMAL128);
    }
}
