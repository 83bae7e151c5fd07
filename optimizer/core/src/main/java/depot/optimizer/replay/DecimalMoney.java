package depot.optimizer.replay;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Present values in decimal arithmetic, 34 digits. Payments fall at the end of their year, v = 1 / (1 + rate).
 *
 * @param discount v
 * @param growth what yearly prices of electricity grow by
 */
record DecimalMoney(BigDecimal discount, BigDecimal growth, int horizonYears) {
    static final MathContext DIGITS = MathContext.DECIMAL128;

    /** Rates as they are written in decimals, 0.05 being five per cent. */
    static DecimalMoney of(double rate, double growth, int horizonYears) {
        BigDecimal v = BigDecimal.ONE.divide(BigDecimal.ONE.add(BigDecimal.valueOf(rate)), DIGITS);
        return new DecimalMoney(v, BigDecimal.valueOf(growth), horizonYears);
    }

    /** v^years, for any years from 0. */
    BigDecimal factor(BigDecimal years) {
        BigDecimal whole = years.setScale(0, RoundingMode.FLOOR);
        BigDecimal part = years.subtract(whole);
        BigDecimal factor = discount.pow(whole.intValueExact(), DIGITS);
        return part.signum() == 0 ? factor : factor.multiply(exp(part.multiply(ln(discount), DIGITS)), DIGITS);
    }

    /** v^H at the end of the horizon. */
    BigDecimal endFactor() {
        return discount.pow(horizonYears, DIGITS);
    }

    /** Sum of v^y over the years of the horizon. */
    BigDecimal annuity() {
        return growing(BigDecimal.ZERO);
    }

    /** Sum of (1 + growth)^(y - 1) v^y over the years of the horizon. */
    BigDecimal growingAnnuity() {
        return growing(growth);
    }

    private BigDecimal growing(BigDecimal yearly) {
        BigDecimal sum = BigDecimal.ZERO;
        BigDecimal term = discount;
        BigDecimal ratio = discount.multiply(BigDecimal.ONE.add(yearly), DIGITS);
        for (int y = 1; y <= horizonYears; y++) {
            sum = sum.add(term, DIGITS);
            term = term.multiply(ratio, DIGITS);
        }
        return sum;
    }

    /**
     * Present cost of a piece that is replaced at the end of each life: price * sum of v^(jL) over jL &lt; H, less price * the share of the
     * last one's life that is left at H, at v^H, plus the installation once.
     */
    BigDecimal lifeCost(BigDecimal price, BigDecimal installation, double lifeYears) {
        BigDecimal life = BigDecimal.valueOf(lifeYears);
        BigDecimal horizon = BigDecimal.valueOf(horizonYears);
        BigDecimal sum = BigDecimal.ZERO;
        BigDecimal end = BigDecimal.ZERO;
        while (end.compareTo(horizon) < 0) {
            sum = sum.add(factor(end), DIGITS);
            end = end.add(life);
        }
        BigDecimal left = end.subtract(horizon).divide(life, DIGITS);
        BigDecimal pieces = sum.subtract(left.multiply(endFactor(), DIGITS), DIGITS);
        return price.multiply(pieces, DIGITS).add(installation, DIGITS);
    }

    /** The same for a piece that is owned: neither bought nor installed at the start. */
    BigDecimal ownedLifeCost(BigDecimal price, BigDecimal installation, double lifeYears) {
        return lifeCost(price, installation, lifeYears).subtract(price).subtract(installation);
    }

    /** Series of e^x; x is small here. */
    static BigDecimal exp(BigDecimal x) {
        BigDecimal sum = BigDecimal.ONE;
        BigDecimal term = BigDecimal.ONE;
        for (int k = 1; k < 200 && term.signum() != 0; k++) {
            term = term.multiply(x, DIGITS).divide(BigDecimal.valueOf(k), DIGITS);
            sum = sum.add(term, DIGITS);
        }
        return sum;
    }

    /** ln x = 2 artanh((x - 1) / (x + 1)), quick for x near 1. */
    static BigDecimal ln(BigDecimal x) {
        BigDecimal y = x.subtract(BigDecimal.ONE).divide(x.add(BigDecimal.ONE), DIGITS);
        BigDecimal square = y.multiply(y, DIGITS);
        BigDecimal power = y;
        BigDecimal sum = BigDecimal.ZERO;
        for (int k = 1; k < 2000 && power.abs().compareTo(new BigDecimal("1e-40")) > 0; k += 2) {
            sum = sum.add(power.divide(BigDecimal.valueOf(k), DIGITS), DIGITS);
            power = power.multiply(square, DIGITS);
        }
        return sum.add(sum);
    }
}
