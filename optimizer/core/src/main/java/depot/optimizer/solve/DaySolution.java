package depot.optimizer.solve;

import depot.optimizer.mip.Outcome;
import depot.optimizer.model.DayVars;

/**
 * How one kind of day is run.
 *
 * @param day index of the kind of day
 * @param outcome whose point holds the values of the day's variables
 */
record DaySolution(int day, DayVars vars, Outcome outcome) {

    /** Present cost of running the day, wear left out. */
    double cost() {
        return outcome.value(vars.recourseCost());
    }

    /** Charges of a pack type a year. */
    double cycles(int pack) {
        return outcome.value(vars.cycles().get(pack));
    }
}
