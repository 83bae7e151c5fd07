package depot.optimizer.model;

import depot.optimizer.mip.Expr;
import depot.optimizer.mip.MipModel;
import depot.optimizer.problem.DayKind;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.DepotRollout;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Puts the families of constraints together. The order of the rules is the order of the rows. */
public final class DepotModel {

    private static final List<CapacityRule> CAPACITY_RULES = List.of(
            new CircuitCurrent(),
            new Outlets(),
            new Places(),
            new BankOutlets(),
            new SupplyPlate(),
            new KitWeight(),
            new PieceLimits());

    private DepotModel() {}

    /** Adds what can be bought in a single phase, its limits and its cost. */
    public static CapacityVars addCapacity(MipModel model, DepotProblem problem, Set<LimitKind> open) {
        return addRollout(model, DepotRollout.of(problem), open).phases().get(0);
    }

    /** Adds what can be bought in each phase, its limits and its cost. */
    public static RolloutVars addRollout(MipModel model, DepotRollout rollout, Set<LimitKind> open) {
        List<CapacityVars> phases = new ArrayList<>();
        for (int f = 0; f < rollout.phases().size(); f++) {
            DepotProblem problem = rollout.phases().get(f);
            PhaseNames.enter(model, rollout, f);
            CapacityVars capacity = CapacityVars.relaxed(model, problem, open);
            CAPACITY_RULES.forEach(rule -> rule.add(model, problem, capacity));
            PhaseNames.leave(model, rollout, f);
            phases.add(capacity);
        }
        return new RolloutVars(List.copyOf(phases), PurchaseCosts.add(model, rollout, phases));
    }

    /** Adds one kind of day; its running cost is in the returned holder and not yet in the objective. */
    public static DayVars addDay(
            MipModel model, DepotProblem problem, CapacityVars capacity, DayKind kind, String tag, DayTerms terms) {
        DayVars day = new DayDeclaration(model, problem, capacity, kind, tag, terms.shortage()).declare();
        for (DayRule rule : dayRules(terms)) {
            rule.add(model, problem, capacity, day);
        }
        return day;
    }

    private static List<DayRule> dayRules(DayTerms terms) {
        Tightening tightening = terms.tightening();
        return List.of(
                new TripNeeds(),
                new VehicleLimits(),
                new RoadCharging(tightening),
                new PackBalance(),
                new Bays(),
                new Turns(),
                new GuestLoads(terms.shortage()),
                new MobileHandovers(),
                new SharedEnergy(tightening),
                new SupplyLimit(tightening),
                new DemandPeak(tightening),
                new DayCosts());
    }

    /** Adds the wear of packs, given their charges a year. */
    public static void addWear(MipModel model, DepotProblem problem, CapacityVars capacity, List<Expr> yearlyCycles) {
        PackWear.add(model, problem, capacity, yearlyCycles);
    }

    /** Present cost of one charge of a pack type where use wears it out before age does. */
    public static double costPerCycle(DepotProblem problem, int pack) {
        return PackWear.costPerCycle(problem, pack);
    }
}
