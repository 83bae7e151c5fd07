package depot.optimizer.solve;

import depot.optimizer.mip.MipModel;
import depot.optimizer.mip.Outcome;
import depot.optimizer.model.CapacityDecision;
import depot.optimizer.model.CapacityVars;
import depot.optimizer.model.DayDecision;
import depot.optimizer.model.DecisionReader;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.MovedPieces;
import depot.optimizer.plan.SolveStop;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.DepotProblem.MoveOffer;
import depot.optimizer.problem.DepotRollout;
import depot.optimizer.scenario.Owned;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Makes a depot's plans of all phases: what one phase buys is there in the next. */
final class RolloutAssembler {

    private final DepotRollout rollout;
    private final List<CapacityVars> shapes;

    RolloutAssembler(DepotRollout rollout) {
        this.rollout = rollout;
        shapes = rollout.phases().stream()
                .map(problem -> CapacityVars.relaxed(new MipModel("purchases"), problem, Set.of()))
                .toList();
    }

    /**
     * The plans.
     *
     * @param values of what is bought, phase by phase
     * @param days decisions for the days of all phases
     */
    RolloutPlan assemble(double[] values, List<DayDecision> days, SolveStop stop) {
        List<CapacityDecision> capacities = new ArrayList<>();
        int from = 0;
        for (int f = 0; f < shapes.size(); f++) {
            DepotProblem problem = rollout.phases().get(f);
            CapacityVars vars = shapes.get(f);
            double[] ofPhase =
                    Arrays.copyOfRange(values, from, from + vars.all().size());
            from += ofPhase.length;
            capacities.add(new DecisionReader(problem, Outcome.at(vars.all(), ofPhase)).capacity(vars));
        }
        return assemble(capacities, days, stop);
    }

    private RolloutPlan assemble(List<CapacityDecision> capacities, List<DayDecision> days, SolveStop stop) {
        List<MovedPieces> moves = moves(capacities.get(0));
        List<Owned> more = new ArrayList<>();
        moves.forEach(moved -> more.add(owned(Optional.empty(), moved.item(), moved.count())));
        List<DepotPlan> plans = new ArrayList<>();
        int from = 0;
        for (int f = 0; f < capacities.size(); f++) {
            DepotProblem problem = rollout.phases().get(f).withMoreOwned(more);
            List<DayDecision> ofPhase = days.subList(from, from + problem.days().size());
            from += ofPhase.size();
            Optional<DepotPlan> before = f == 0 ? Optional.empty() : Optional.of(plans.get(f - 1));
            DepotPlan plan = new PlanAssembler(problem, capacities.get(f), ofPhase)
                    .assemble(f + 1, f == 0 ? moves : List.of(), before, stop);
            plans.add(plan);
            addBought(more, plan);
        }
        return RolloutPlan.of(rollout, plans);
    }

    private Owned owned(Optional<String> crew, String item, int count) {
        return new Owned(rollout.depot().id(), Optional.empty(), crew, item, count);
    }

    private void addBought(List<Owned> more, DepotPlan plan) {
        plan.packs().forEach(stock -> {
            Optional<String> crew = stock.pool().equals(plan.depot()) ? Optional.empty() : Optional.of(stock.pool());
            more.add(owned(crew, stock.packType(), stock.count() - stock.owned()));
        });
        plan.chargers().stream()
                .filter(charger -> !charger.owned())
                .forEach(charger -> more.add(owned(Optional.empty(), charger.chargerType(), 1)));
        plan.units().stream()
                .filter(unit -> !unit.owned())
                .forEach(unit -> more.add(owned(Optional.empty(), unit.unitType(), 1)));
        plan.kits().forEach(kit -> more.add(owned(Optional.of(kit.crew()), kit.item(), kit.count() - kit.owned())));
    }

    private List<MovedPieces> moves(CapacityDecision first) {
        List<MoveOffer> offers = rollout.first().moves();
        List<MovedPieces> moves = new ArrayList<>();
        for (int m = 0; m < offers.size(); m++) {
            if (first.moved().get(m) != 0) {
                moves.add(new MovedPieces(offers.get(m).item(), first.moved().get(m)));
            }
        }
        return List.copyOf(moves);
    }
}
