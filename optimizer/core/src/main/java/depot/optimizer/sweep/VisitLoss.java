package depot.optimizer.sweep;

import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.SharedLimit;
import depot.optimizer.problem.Visit.Service;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.solve.NoPlanException;
import depot.optimizer.solve.UseRange;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A loss at a depot whose crews charge packs at other depots, or that charges packs of guests. What has to be bought on top is bought at this depot: its
 * guests get, and its crews count on, as many packs as in the plan, so that all other depots go on as they were.
 *
 * @param fleet of the phase, as it stands
 */
record VisitLoss(StandingFleet fleet, Loss loss) implements LossWork {

    @Override
    public LossResult result(Workshop workshop) {
        Scenario after = fleet.after(loss);
        LossDays left = new LossDays(fleet, loss, after);
        LossDays.Days days = left.days();
        if (days.holds()) {
            return LossResult.holding(loss, after, days.here().orElseThrow(), days.homes());
        }
        try {
            DepotOutcome found = workshop.outcome(new SettledJob(after, left.rollout(), settled(left)));
            DepotOutcome cured = left.together(found, List.of());
            double more = cured.certificate().cost()
                    - LossWork.costCarriedOut(fleet.problem(loss.depot()), fleet.plan(loss.depot()));
            return new LossResult(loss, after, days.here(), days.homes(), false, Optional.of(cured), more, "");
        } catch (NoPlanException e) {
            return new LossResult(loss, after, days.here(), days.homes(), false, Optional.empty(), 0, e.getMessage());
        }
    }

    /** What the depot may use of visits: its own crews no more than in the plan, others no less. */
    private static Map<SharedLimit, UseRange> settled(LossDays left) {
        DepotProblem problem = left.rollout().first();
        List<String> own = problem.services().stream().map(Service::key).toList();
        Map<SharedLimit, UseRange> ranges = new LinkedHashMap<>();
        for (SharedLimit limit : left.rollout().limits()) {
            int packs = left.planned().getOrDefault(limit.subject(), 0);
            ranges.put(limit, own.contains(limit.subject()) ? UseRange.upTo(packs) : UseRange.exactly(-packs));
        }
        return ranges;
    }
}
