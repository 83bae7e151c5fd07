package depot.optimizer.problem;

import depot.optimizer.scenario.Depot;
import depot.optimizer.scenario.SolveSettings;
import java.util.ArrayList;
import java.util.List;

/**
 * One depot over all phases: a problem for each, in order. What a phase has, the next one has too.
 *
 * @param limits shared limits that the depot's purchases count in
 */
public record DepotRollout(List<DepotProblem> phases, List<SharedLimit> limits) {

    /** Kinds of day in all phases up to which a depot is searched to the end. */
    private static final int MANY_DAYS = 30;

    /** Copies the lists. */
    public DepotRollout {
        phases = List.copyOf(phases);
        limits = List.copyOf(limits);
    }

    /**
     * A kind of day of a phase.
     *
     * @param phase place of the phase
     * @param kind place of the kind of day in the phase's problem
     */
    public record RolloutDay(int phase, int kind) {}

    /** A single phase that shares no limits. */
    public static DepotRollout of(DepotProblem problem) {
        return new DepotRollout(List.of(problem), List.of());
    }

    /** The depot. */
    public Depot depot() {
        return first().depot();
    }

    /** How the depot is solved. */
    public SolveSettings settings() {
        return first().settings();
    }

    /** The problem of the first phase. */
    public DepotProblem first() {
        return phases.get(0);
    }

    /** Every kind of day, phase by phase. */
    public List<RolloutDay> days() {
        List<RolloutDay> days = new ArrayList<>();
        for (int f = 0; f < phases.size(); f++) {
            for (int d = 0; d < phases.get(f).days().size(); d++) {
                days.add(new RolloutDay(f, d));
            }
        }
        return List.copyOf(days);
    }

    /** Whether there are so many kinds of day in all phases that a plan takes tens of seconds, and a proof minutes. */
    public boolean manyDays() {
        return days().size() > MANY_DAYS;
    }

    /** The problem that a day belongs to. */
    public DepotProblem problemOf(RolloutDay day) {
        return phases.get(day.phase());
    }

    /** What happens on a day. */
    public DayKind kind(RolloutDay day) {
        return problemOf(day).days().get(day.kind());
    }
}
