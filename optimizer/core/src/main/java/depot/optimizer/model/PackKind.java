package depot.optimizer.model;

import depot.optimizer.problem.ChargeLevel;
import depot.optimizer.problem.ChargerOption.Fit;

/** Packs of one type that are charged to one level on one type of charger. */
public record PackKind(Fit fit, ChargeLevel level) {

    int minutes() {
        return fit.minutes(level);
    }
}
