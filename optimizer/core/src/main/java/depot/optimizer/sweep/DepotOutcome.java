package depot.optimizer.sweep;

import depot.optimizer.plan.Certificate;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.replay.DayReplay;
import depot.optimizer.replay.DayReplay.Outcome;
import depot.optimizer.replay.DepotReplay;
import depot.optimizer.replay.Violation;

/**
 * A depot's plan in a case, and what its replay said.
 *
 * @param daysMet days of a year on which all work is done
 * @param daysShort days of a year that fall short, as the plan says
 * @param daysFailed days of a year that do not go as the plan says
 * @param shortKwh energy not covered in a year, declared or not
 * @param proven no rule is broken and the cost is right
 * @param trouble the first rule that is broken, in words; empty: none
 */
public record DepotOutcome(
        DepotPlan plan,
        double daysMet,
        double daysShort,
        double daysFailed,
        double shortKwh,
        boolean proven,
        String trouble) {

    /** Energy below this is rounding, in kWh a year. */
    private static final double ROUNDING_KWH = 0.01;

    /** The figures of a replay. */
    public static DepotOutcome of(DepotPlan plan, DepotReplay replay) {
        return new DepotOutcome(
                plan,
                days(replay, Outcome.MET),
                days(replay, Outcome.SHORT),
                days(replay, Outcome.FAILED),
                replay.days().stream()
                                .mapToDouble(day -> day.shortWh() * day.daysPerYear())
                                .sum()
                        / 1000,
                replay.proven(),
                replay.allViolations().stream()
                        .findFirst()
                        .map(Violation::message)
                        .orElse(replay.proven() ? "" : "the replay does not agree with the cost"));
    }

    private static double days(DepotReplay replay, Outcome outcome) {
        return replay.days().stream()
                .filter(day -> day.outcome() == outcome)
                .mapToDouble(DayReplay::daysPerYear)
                .sum();
    }

    /** Whether it is proven, and leaves no more uncovered than another one of the depot. */
    boolean bears(DepotOutcome base) {
        return proven && shortKwh <= base.shortKwh + ROUNDING_KWH;
    }

    /** The same, when it breaks a rule together with other depots. */
    DepotOutcome broken(String rule) {
        return new DepotOutcome(plan, daysMet, daysShort, daysFailed, shortKwh, false, rule);
    }

    /** Cost and bound. */
    public Certificate certificate() {
        return plan.stop().certificate();
    }
}
