package depot.optimizer.finance;

import depot.optimizer.scenario.Phase;
import depot.optimizer.scenario.Scenario;
import java.util.ArrayList;
import java.util.List;

/**
 * Present costs over a horizon of whole years, yearly amounts paid at the end of each year. What is bought is bought when a phase begins, and what is
 * paid every year is paid in the years of that phase.
 *
 * <p>Formulas: the factors P/F and P/A of engineering economy, v = 1 / (1 + rate).
 *
 * @param horizonYears H, at least 1
 * @param discountRate a year, above -1
 * @param electricityPriceGrowth a year, above -1
 * @param fromYear years from now to the beginning of the phase, from 0
 * @param toYear years from now to its end, above the former and at most H
 */
public record PresentCost(
        int horizonYears, double discountRate, double electricityPriceGrowth, int fromYear, int toYear) {

    /** Rounding of times, in years. */
    static final double ROUNDING = 1e-9;

    /** A single phase: all is bought now and used until the horizon ends. */
    public PresentCost(int horizonYears, double discountRate, double electricityPriceGrowth) {
        this(horizonYears, discountRate, electricityPriceGrowth, 0, horizonYears);
    }

    /** The whole horizon and the rates of a scenario. */
    public static PresentCost of(Scenario scenario) {
        return new PresentCost(scenario.horizonYears(), scenario.discountRate(), scenario.electricityPriceGrowth());
    }

    /** A phase of a scenario: it lasts until the next one begins, the last one until the horizon ends. */
    public static PresentCost of(Scenario scenario, Phase phase) {
        int end = scenario.coupling().phases().stream()
                .mapToInt(Phase::year)
                .filter(year -> year > phase.year())
                .min()
                .orElse(scenario.horizonYears());
        return new PresentCost(
                scenario.horizonYears(), scenario.discountRate(), scenario.electricityPriceGrowth(), phase.year(), end);
    }

    /** Months in a number of weeks: a month is a twelfth of 365.25 days. */
    public static double months(double weeks) {
        return weeks * (7 * 12 / 365.25);
    }

    /** P/F: present value of 1 paid after {@code years}. */
    public double factor(double years) {
        return Math.pow(1 + discountRate, -years);
    }

    /** Present value of yearly flows, the first of them now. */
    public double presentValue(List<Double> yearly) {
        double sum = 0;
        for (int year = 0; year < yearly.size(); year++) {
            sum += yearly.get(year) * factor(year);
        }
        return sum;
    }

    /** Present value of 1 paid when the phase begins. */
    public double atStart() {
        return factor(fromYear);
    }

    /** P/A: present value of 1 a year over the years of the phase. */
    public double annuity() {
        return growingAnnuity(0);
    }

    /** Present value of a year's electricity that costs 1 at the end of the first year and grows from there. */
    public double electricityAnnuity() {
        return growingAnnuity(electricityPriceGrowth);
    }

    /** What is paid at the end of each year of the horizon for what costs 1 in the first and grows from there; nothing outside the phase. */
    public List<Double> growing(double growth) {
        List<Double> paid = new ArrayList<>();
        double amount = 1;
        for (int year = 1; year <= horizonYears; year++) {
            paid.add(year > fromYear && year <= toYear ? amount : 0);
            amount *= 1 + growth;
        }
        return List.copyOf(paid);
    }

    private double growingAnnuity(double growth) {
        List<Double> paid = growing(growth);
        double sum = 0;
        for (int year = 1; year <= horizonYears; year++) {
            sum += paid.get(year - 1) * factor(year);
        }
        return sum;
    }

    /**
     * Present cost of a piece bought when the phase begins: its price and mounting, the price of each piece that follows it when a life ends before the horizon, less
     * what the last one is still worth by its remaining life.
     */
    public double newPiece(double price, double installCost, double lifeYears) {
        return (price + installCost) * atStart() + laterPieces(price, lifeYears) - residual(price, lifeYears);
    }

    /** The same for a piece that is there already and as good as new: only the pieces that follow it cost, and only they leave a value. */
    public double ownedPiece(double price, double lifeYears) {
        double later = laterPieces(price, lifeYears);
        return later == 0 ? 0 : later - residual(price, lifeYears);
    }

    /** Years from now at which a life ends before the horizon does and the next piece is bought. */
    public List<Double> replacementYears(double lifeYears) {
        List<Double> years = new ArrayList<>();
        for (int pieces = 1; fromYear + pieces * lifeYears < horizonYears - ROUNDING; pieces++) {
            years.add(fromYear + pieces * lifeYears);
        }
        return List.copyOf(years);
    }

    /** What the last piece is worth at the end of the horizon: its price by its remaining life. */
    public double valueAtEnd(double price, double lifeYears) {
        int years = horizonYears - fromYear;
        double lastEnd = Math.ceil(years / lifeYears - ROUNDING) * lifeYears;
        return price * (lastEnd - years) / lifeYears;
    }

    private double laterPieces(double price, double lifeYears) {
        double later = 0;
        for (double years : replacementYears(lifeYears)) {
            later += price * factor(years);
        }
        return later;
    }

    private double residual(double price, double lifeYears) {
        return valueAtEnd(price, lifeYears) * factor(horizonYears);
    }

    /** A pack bought when the phase begins for a stock that is kept whole by replacing what wears: its price less its price at the end. */
    public double stockedPack(double price) {
        return price * (atStart() - factor(horizonYears));
    }
}
