package depot.optimizer.finance;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What a plan comes to, by itself and against staying on petrol.
 *
 * @param presentCost of the plan's own costs over the horizon
 * @param yearlyCost the same every year: present cost times A/P
 * @param petrolPresentCost of staying on petrol
 * @param petrolYearlyCost the same every year
 * @param netPresentValue of the plan against staying on petrol, carbon and taxes included
 * @param paybackYears empty: not within the horizon
 * @param discountedPaybackYears the same for present values
 * @param rate internal rate of return against staying on petrol
 */
public record Appraisal(
        double presentCost,
        double yearlyCost,
        double petrolPresentCost,
        double petrolYearlyCost,
        double netPresentValue,
        OptionalDouble paybackYears,
        OptionalDouble discountedPaybackYears,
        ReturnRate rate) {

    /** Appraises a cash flow. */
    public static Appraisal of(CashFlow flow) {
        double annuity = flow.money().annuity();
        double cost = flow.money().presentValue(flow.planCosts());
        double petrol = flow.money().presentValue(flow.byKind().get(FlowKind.PETROL_SAVED))
                + flow.money().presentValue(flow.byKind().get(FlowKind.PETROL_EITHER_WAY));
        List<Double> net = flow.net();
        List<Double> discounted = new ArrayList<>();
        for (int year = 0; year < net.size(); year++) {
            discounted.add(net.get(year) * flow.money().factor(year));
        }
        return new Appraisal(
                cost,
                cost / annuity,
                petrol,
                petrol / annuity,
                flow.money().presentValue(net),
                Payback.years(net),
                Payback.years(discounted),
                ReturnRate.of(net));
    }
}
