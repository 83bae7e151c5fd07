package depot.optimizer.rerun;

import depot.optimizer.plan.CrewKit;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.PackStock;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.DepotRollout;
import depot.optimizer.rerun.Reckoning.Sharing;
import depot.optimizer.scenario.Owned;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What is left to do of an earlier plan of a depot: its phases from the one carried out last on, with what stands counted as owned. A phase that the
 * earlier plan does not know goes on as the one before it.
 */
final class CarriedOut {

    private final EarlierRun run;
    private final DepotRollout rollout;
    private final List<Owned> bought = new ArrayList<>();

    private CarriedOut(EarlierRun run, DepotRollout rollout) {
        this.run = run;
        this.rollout = rollout;
    }

    /**
     * The plans, one for each phase.
     *
     * @param rollout problem of the depot in a scenario in which all that was carried out is there
     */
    static List<DepotPlan> of(EarlierRun run, DepotRollout rollout) {
        return new CarriedOut(run, rollout).plans();
    }

    private List<DepotPlan> plans() {
        String depot = rollout.depot().id();
        List<String> done = run.phasesCarriedOut();
        DepotPlan now = run.depot(depot).orElseThrow();
        List<DepotPlan> plans = new ArrayList<>();
        for (int f = 0; f < rollout.phases().size(); f++) {
            DepotProblem problem = rollout.phases().get(f);
            now = done.contains(problem.phase())
                    ? now
                    : run.depot(depot, problem.phase()).orElse(now);
            Optional<DepotPlan> before = f == 0 ? Optional.empty() : Optional.of(plans.get(f - 1));
            plans.add(phase(problem.withMoreOwned(bought), f + 1, now, before));
            addBought(plans.get(f));
        }
        return List.copyOf(plans);
    }

    private static DepotPlan phase(DepotProblem problem, int number, DepotPlan then, Optional<DepotPlan> before) {
        PlanParts parts = new PlanParts(then);
        parts.phase = problem.phase();
        parts.moves = List.of();
        return Reckoning.of(problem, number, parts.plan(), before, Sharing.OWNERS);
    }

    private void addBought(DepotPlan plan) {
        for (PackStock stock : plan.packs()) {
            Optional<String> owner = stock.pool().equals(plan.depot()) ? Optional.empty() : Optional.of(stock.pool());
            add(owner, stock.packType(), stock.count() - stock.owned());
        }
        for (CrewKit kit : plan.kits()) {
            add(Optional.of(kit.crew()), kit.item(), kit.count() - kit.owned());
        }
        plan.chargers().stream()
                .filter(charger -> !charger.owned())
                .forEach(charger -> add(Optional.empty(), charger.chargerType(), 1));
        plan.units().stream().filter(unit -> !unit.owned()).forEach(unit -> add(Optional.empty(), unit.unitType(), 1));
    }

    private void add(Optional<String> owner, String item, int count) {
        if (count > 0) {
            bought.add(new Owned(rollout.depot().id(), Optional.empty(), owner, item, count));
        }
    }
}
