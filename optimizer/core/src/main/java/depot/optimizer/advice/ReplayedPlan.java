package depot.optimizer.advice;

import depot.optimizer.plan.Certificate;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.replay.DayReplay;
import depot.optimizer.replay.DepotReplay;

/** A depot's plan and what its replay said. */
public record ReplayedPlan(DepotPlan plan, DepotReplay replay) {

    /** Energy below this is rounding, in kWh a year. */
    private static final double ROUNDING_KWH = 0.01;

    /** Cost and bound. */
    public Certificate certificate() {
        return plan.stop().certificate();
    }

    /** Energy not covered in a year, declared or not. */
    public double shortKwhPerYear() {
        return replay.days().stream()
                        .mapToDouble(day -> day.shortWh() * day.daysPerYear())
                        .sum()
                / 1000;
    }

    /** Whether all work is done, as far as numbers tell. */
    public boolean covered() {
        return shortKwhPerYear() < ROUNDING_KWH;
    }

    /** Days of a year with work. */
    public double days() {
        return replay.days().stream().mapToDouble(DayReplay::daysPerYear).sum();
    }

    /** Days of a year that end in a way. */
    public double days(DayReplay.Outcome outcome) {
        return replay.days().stream()
                .filter(day -> day.outcome() == outcome)
                .mapToDouble(DayReplay::daysPerYear)
                .sum();
    }
}
