package depot.optimizer.fleet;

import depot.optimizer.plan.DayPlan;
import depot.optimizer.problem.DepotProblem;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/** Tries a depot's days with more or less demand paid for, where the tariff bills it. */
final class DemandTrials {

    /** Shares of the hungriest charger that are paid for on top, for days that are late because there is no room to feed one at all. */
    private static final double[] OF_A_CHARGER = {0.25, 0.5, 0.75, 1};

    private static final int HALVINGS = 4;

    /** Change of the demand paid for, at first and at last, and how often it is changed at most. */
    private static final double FIRST_STEP = 0.02;

    private static final double LAST_STEP = 0.005;

    private static final int MOST_STEPS = 8;

    private final DepotProblem problem;
    private final BestDays best;

    /** For the best days so far, which change. */
    DemandTrials(DepotProblem problem, BestDays best) {
        this.problem = problem;
        this.best = best;
    }

    /** Pays for more demand while loads are late, then for less or more as it pays; says whether anything changed. */
    boolean improve() {
        boolean changed = false;
        double step = FIRST_STEP;
        for (int i = 0; i < MOST_STEPS && step >= LAST_STEP; i++) {
            double less = 1 - step;
            double more = 1 + step;
            boolean better = pay(best.days(), paid -> paid * less) || pay(best.days(), paid -> paid * more);
            changed |= better;
            step = better ? step : step / 2;
        }
        return changed;
    }

    /** Where loads are late, pays for a share of a charger on top, the least with which none is. */
    void payForCharger() {
        if (!best.late()) {
            return;
        }
        double kilowatts = hungriestWatts() / 1000;
        List<DayPlan> before = best.days();
        double tooLittle = 0;
        double inTime = 0;
        for (double share : OF_A_CHARGER) {
            if (best.late()) {
                tooLittle = inTime;
                inTime = share;
                pay(before, paid -> paid + share * kilowatts);
            }
        }
        for (int i = 0; i < HALVINGS && !best.late(); i++) {
            double share = (tooLittle + inTime) / 2;
            if (pay(before, paid -> paid + share * kilowatts)) {
                inTime = share;
            } else {
                tooLittle = share;
            }
        }
    }

    private double hungriestWatts() {
        return problem.chargers().stream()
                .filter(option -> best.plan().chargers().stream().anyMatch(charger -> charger.chargerType()
                        .equals(option.type().id())))
                .mapToDouble(option -> option.type().plateWatts())
                .max()
                .orElse(0);
    }

    private boolean pay(List<DayPlan> from, DoubleUnaryOperator change) {
        return best.tryTogether(from.stream()
                .map(day -> day.withDemand(change.applyAsDouble(day.demandKw())))
                .toList());
    }
}
