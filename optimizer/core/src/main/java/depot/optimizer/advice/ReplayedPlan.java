package depot.optimizer.advice;

import depot.optimizer.plan.Certificate;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.Plan;
import depot.optimizer.replay.DayReplay;
import depot.optimizer.replay.DepotReplay;
import depot.optimizer.replay.Violation;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/**
 * A depot's plans of all phases and what their replays said.
 *
 * @param plans phase by phase, at least one
 * @param replays one for each of them
 * @param fleet plan of the whole fleet that they belong to, where depots share limits or have several phases
 * @param together rules that the depots of that fleet break together
 */
public record ReplayedPlan(
        List<DepotPlan> plans, List<DepotReplay> replays, Optional<Plan> fleet, List<Violation> together) {

    /** Energy below this is rounding, in kWh a year. */
    private static final double ROUNDING_KWH = 0.01;

    /** Copies the lists. */
    public ReplayedPlan {
        plans = List.copyOf(plans);
        replays = List.copyOf(replays);
        together = List.copyOf(together);
    }

    /** Of a single phase that shares nothing. */
    public ReplayedPlan(DepotPlan plan, DepotReplay replay) {
        this(List.of(plan), List.of(replay), Optional.empty(), List.of());
    }

    /** The plan of the first phase. */
    public DepotPlan plan() {
        return plans.get(0);
    }

    /** The plan of the last phase, which has all that is ever bought. */
    public DepotPlan last() {
        return plans.get(plans.size() - 1);
    }

    /** One of the phases by itself. */
    ReplayedPlan phase(int phase) {
        return new ReplayedPlan(plans.get(phase), replays.get(phase));
    }

    /** Cost and bound of the depot; in a fleet its share of the fleet's. */
    public Certificate certificate() {
        double cost = sum(Certificate::cost);
        double bound = sum(Certificate::bound);
        return plans.size() == 1
                ? plan().stop().certificate()
                : new Certificate(
                        cost,
                        bound,
                        plan().stop().certificate().gap(),
                        plans.stream()
                                .allMatch(plan -> plan.stop().certificate().proven()));
    }

    private double sum(ToDoubleFunction<Certificate> part) {
        return plans.stream()
                .mapToDouble(plan -> part.applyAsDouble(plan.stop().certificate()))
                .sum();
    }

    /** Whether no rule is broken, by the depot or by the fleet. */
    public boolean proven() {
        return together.isEmpty() && replays.stream().allMatch(DepotReplay::proven);
    }

    /** The first rule that is broken, in words. */
    Optional<String> trouble() {
        return Stream.concat(replays.stream().flatMap(replay -> replay.allViolations().stream()), together.stream())
                .findFirst()
                .map(Violation::message);
    }

    /** Energy not covered in a year, declared or not; of all phases together. */
    public double shortKwhPerYear() {
        return allDays().mapToDouble(day -> day.shortWh() * day.daysPerYear()).sum() / 1000;
    }

    /** Whether all work is done, as far as numbers tell. */
    public boolean covered() {
        return shortKwhPerYear() < ROUNDING_KWH;
    }

    /** Days of a year with work, of each phase. */
    public double days() {
        return allDays().mapToDouble(DayReplay::daysPerYear).sum();
    }

    /** Days of a year that end in a way. */
    public double days(DayReplay.Outcome outcome) {
        return allDays()
                .filter(day -> day.outcome() == outcome)
                .mapToDouble(DayReplay::daysPerYear)
                .sum();
    }

    private Stream<DayReplay> allDays() {
        return replays.stream().flatMap(replay -> replay.days().stream());
    }
}
