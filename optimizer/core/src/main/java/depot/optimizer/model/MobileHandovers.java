package depot.optimizer.model;

import depot.optimizer.mip.Expr;
import depot.optimizer.mip.MipModel;
import depot.optimizer.mip.Var;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.Trip;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * A handover at which only crews with other bases come by is one only if one of them works from here: for each such time t and each batch b of the depot's
 * own packs that begins or ends then, chargers[b] &lt;= most chargers * sum over those crews of electric[w].
 */
final class MobileHandovers implements DayRule {

    @Override
    public void add(MipModel model, DepotProblem problem, CapacityVars capacity, DayVars day) {
        if (problem.mobile().isEmpty()) {
            return;
        }
        List<Integer> handovers = day.kind().handovers();
        for (int h = 1; h < handovers.size() - 1; h++) {
            int time = handovers.get(h);
            List<Var> comers = comers(problem, day, time);
            if (!comers.isEmpty()) {
                int number = 0;
                for (Batch batch : day.batches()) {
                    BatchSpan span = batch.span();
                    if (!span.guests() && (span.from() == time || span.to() == time)) {
                        Expr row = new Expr().add(1, batch.chargers()).add(-most(problem), Expr.sum(comers));
                        model.atMost("mobile_" + time + "_" + number++ + "@" + day.tag(), row, 0);
                    }
                }
            }
        }
    }

    /** The crews on which a handover hangs; empty where it does not hang on any. */
    private static List<Var> comers(DepotProblem problem, DayVars day, int time) {
        Set<Var> comers = new HashSet<>();
        List<Var> inOrder = new ArrayList<>();
        for (TripVars trip : day.trips()) {
            Trip at = trip.trip();
            if (at.departure() == time || at.arrival() == time) {
                if (!problem.mobile().contains(at.crew()) || trip.electric() == null) {
                    return List.of();
                }
                if (comers.add(trip.electric())) {
                    inOrder.add(trip.electric());
                }
            }
        }
        // A time that no trip makes a handover is one of the staffed hours.
        return staffed(problem, time) ? List.of() : inOrder;
    }

    private static boolean staffed(DepotProblem problem, int time) {
        if (problem.depot().staffedFromMinute().isEmpty()) {
            return false;
        }
        int from = problem.depot().staffedFromMinute().get();
        int to = problem.depot().staffedToMinute().orElse(from);
        int step = problem.depot().swapMinutes().orElse(60);
        return time >= from && time <= to && (time - from) % step == 0;
    }

    private static double most(DepotProblem problem) {
        return problem.circuits().stream()
                .mapToInt(site -> site.circuit().outlets())
                .sum();
    }
}
