package depot.optimizer.replay;

import depot.optimizer.scenario.Phase;
import depot.optimizer.scenario.Scenario;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Present values in decimal arithmetic, 34 digits. Payments fall at the end of their year, v = 1 / (1 + rate); purchases fall at the beginning of the
 * phase, yearly payments in its years.
 *
 * @param discount v
 * @param growth what yearly prices of electricity grow by
 * @param fromYear years from now to the beginning of the phase
 * @param toYear years from now to its end
 */
record DecimalMoney(BigDecimal discount, BigDecimal growth, int horizonYears, int fromYear, int toYear) {
    static final MathContext DIGITS = MathContext.DECIMAL128;

    /** Rates as they are written in decimals, 0.05 being five per cent; one phase over the whole horizon. */
    static DecimalMoney of(double rate, double growth, int horizonYears) {
        BigDecimal v = BigDecimal.ONE.divide(BigDecimal.ONE.add(BigDecimal.valueOf(rate)), DIGITS);
        return new DecimalMoney(v, BigDecimal.valueOf(growth), horizonYears, 0, horizonYears);
    }

    /** The rates of a scenario, in a phase: it ends where the next one begins. */
    static DecimalMoney of(Scenario scenario, Phase phase) {
        int end = scenario.horizonYears();
        for (Phase other : scenario.coupling().phases()) {
            end = other.year() > phase.year() ? Math.min(end, other.year()) : end;
        }
        DecimalMoney whole = of(scenario.discountRate(), scenario.electricityPriceGrowth(), scenario.horizonYears());
        return new DecimalMoney(whole.discount, whole.growth, whole.horizonYears, phase.year(), end);
    }

    /** v^s at the beginning of the phase. */
    BigDecimal startFactor() {
        return discount.pow(fromYear, DIGITS);
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

    /** Sum of v^y over the years of the phase. */
    BigDecimal annuity() {
        return growing(BigDecimal.ZERO);
    }

    /** Sum of (1 + growth)^(y - 1) v^y over the years of the phase. */
    BigDecimal growingAnnuity() {
        return growing(growth);
    }

    private BigDecimal growing(BigDecimal yearly) {
        BigDecimal sum = BigDecimal.ZERO;
        BigDecimal term = discount;
        BigDecimal ratio = discount.multiply(BigDecimal.ONE.add(yearly), DIGITS);
        for (int y = 1; y <= toYear; y++) {
            sum = y > fromYear ? sum.add(term, DIGITS) : sum;
            term = term.multiply(ratio, DIGITS);
        }
        return sum;
    }

    /**
     * Present cost of a piece that is bought at s and replaced at the end of each life: price * sum of v^(s + jL) over s + jL &lt; H, less price *
     * the share of the last one's life that is left at H, at v^H, plus the installation once, at v^s.
     */
    BigDecimal lifeCost(BigDecimal price, BigDecimal installation, double lifeYears) {
        BigDecimal life = BigDecimal.valueOf(lifeYears);
        BigDecimal horizon = BigDecimal.valueOf(horizonYears);
        BigDecimal sum = BigDecimal.ZERO;
        BigDecimal end = BigDecimal.valueOf(fromYear);
        while (end.compareTo(horizon) < 0) {
            sum = sum.add(factor(end), DIGITS);
            end = end.add(life);
        }
        BigDecimal left = end.subtract(horizon).divide(life, DIGITS);
        BigDecimal pieces = sum.subtract(left.multiply(endFactor(), DIGITS), DIGITS);
        return price.multiply(pieces, DIGITS).add(installation.multiply(startFactor(), DIGITS), DIGITS);
    }

    /** The same for a piece that is owned: neither bought nor installed at the start. One that outlives the horizon costs nothing. */
    BigDecimal ownedLifeCost(BigDecimal price, BigDecimal installation, double lifeYears) {
        if (BigDecimal.valueOf(lifeYears).compareTo(BigDecimal.valueOf((long) horizonYears - fromYear)) >= 0) {
            return BigDecimal.ZERO;
        }
        BigDecimal first = price.add(installation).multiply(startFactor(), DIGITS);
        return lifeCost(price, installation, lifeYears).subtract(first, DIGITS);
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
