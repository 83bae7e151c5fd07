package depot.optimizer.cli;

import depot.optimizer.cli.Stages.Outcome;
import depot.optimizer.plan.Certificate;
import depot.optimizer.plan.Plan;
import depot.optimizer.plan.PlanSettings;
import depot.optimizer.replay.CostCheck;
import depot.optimizer.replay.DayReplay;
import depot.optimizer.replay.DepotReplay;
import depot.optimizer.replay.ReplayReport;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;

/** An outcome of a planner that did nothing, with days that end in a given way. */
final class FakePlan {

    private static final double ASKED_GAP = 0.005;

    private FakePlan() {}

    /** A plan of that cost and bound whose days, 150 a year, end like this. */
    static Outcome of(double cost, double bound, DayReplay.Outcome days) {
        Plan plan = new Plan(
                Plan.FORMAT_VERSION,
                "Tiny",
                "EUR",
                Map.of(),
                "none",
                new PlanSettings(ASKED_GAP, 1, 1, 1, 15),
                Certificate.of(cost, bound, ASKED_GAP),
                List.of());
        CostCheck costs =
                new CostCheck(List.of(), BigDecimal.ZERO, BigDecimal.ZERO, BigDecimal.ZERO, BigDecimal.ZERO, List.of());
        DepotReplay depot = new DepotReplay("north", "now", List.of(day(days)), List.of(), costs);
        return new Outcome(plan, new ReplayReport(List.of(depot)), List.of());
    }

    private static DayReplay day(DayReplay.Outcome outcome) {
        return new DayReplay(
                0,
                List.of(),
                150,
                outcome,
                0,
                Optional.empty(),
                List.of(),
                new TreeMap<>(),
                new TreeSet<>(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                BigDecimal.ZERO,
                0,
                List.of());
    }
}
