package depot.optimizer.model;

import depot.optimizer.mip.Expr;
import depot.optimizer.mip.MipModel;
import depot.optimizer.mip.Var;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.scenario.PackType;
import java.util.ArrayList;
import java.util.List;

/**
 * Packs wear by charges and by age and are replaced at the faster of the two rates.
 *
 * <p>For each pack type p: replaced[p] &gt;= sum over pools of packs[q,p] / calendarYears[p]; replaced[p] &gt;= charges a year / cycleLife[p]. Its cost is the
 * pack's price every year of the horizon.
 */
final class PackWear {

    private PackWear() {}

    /** Adds the rows, given the charges of each pack type a year. */
    static List<Var> add(MipModel model, DepotProblem problem, CapacityVars capacity, List<Expr> yearlyCycles) {
        List<Var> replaced = new ArrayList<>();
        for (int p = 0; p < problem.packTypes().size(); p++) {
            PackType type = problem.packTypes().get(p);
            Var rate = model.continuous("replaced_" + type.id(), 0, MipModel.INFINITY);
            model.cost(type.price().doubleValue() * problem.money().annuity(), rate);
            Expr byAge = new Expr().add(-1, rate);
            for (Var[] pool : capacity.packs) {
                byAge.add(1 / type.calendarYears(), pool[p]);
            }
            model.atMost("wearByAge_" + type.id(), byAge, 0);
            Expr byUse =
                    new Expr().add(1 / type.cycleLife(), yearlyCycles.get(p)).add(-1, rate);
            model.atMost("wearByUse_" + type.id(), byUse, 0);
            replaced.add(rate);
        }
        return List.copyOf(replaced);
    }

    /** What one charge of a pack type costs where use wears it out first. */
    static double costPerCycle(DepotProblem problem, int pack) {
        PackType type = problem.packTypes().get(pack);
        return type.price().doubleValue() * problem.money().annuity() / type.cycleLife();
    }
}
