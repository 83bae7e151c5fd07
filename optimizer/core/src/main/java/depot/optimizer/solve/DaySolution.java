package depot.optimizer.solve;

import depot.optimizer.mip.Outcome;
import depot.optimizer.model.DayVars;
import java.util.List;

/**
 * How one kind of day is run.
 *
 * @param day index of the kind of day
 * @param outcome whose point holds the values of the day's variables
 */
record DaySolution(int day, DayVars vars, Outcome outcome) {

    /** Present cost of running the day, with a price for the charges of each pack type. */
    double costWithCharges(List<Double> cyclePrices) {
        double cost = outcome.value(vars.recourseCost());
        for (int p = 0; p < cyclePrices.size(); p++) {
            cost += cyclePrices.get(p) * outcome.value(vars.cycles().get(p));
        }
        return cost;
    }
}
