package depot.optimizer.model;

import depot.optimizer.mip.Expr;
import depot.optimizer.mip.MipModel;
import depot.optimizer.mip.Var;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.DepotProblem.CircuitSite;
import depot.optimizer.scenario.SharingUnitType;
import java.util.List;
import java.util.function.ToIntFunction;

/**
 * Every charger and power bank has an outlet of its own. A circuit with a load-sharing unit feeds that unit and nothing else.
 *
 * <ul>
 *   <li>sum of plain[k,c] + sum of bankPlugs[k,b] &lt;= outlets[k] (built[k] - sum of unit[k,u])
 *   <li>sum of shared[k,c] &lt;= sum of outlets[u] unit[k,u]
 *   <li>sum of priority[k,c] &lt;= sum of priorityOutlets[u] unit[k,u], priority[k,c] &lt;= shared[k,c]
 *   <li>what is on priority outlets can be fed together at any time, beside the highest base load: sum of D[c] priority[k,c] &lt;= sum of W[k,u] unit[k,u]
 *   <li>sum of unit[k,u] &lt;= built[k]; each unit has one {@link UnitMix} behind it: shared[k,c] &lt;= sum of outlets[u] mixed[k,u,x] over mixes x that have c
 * </ul>
 */
final class Outlets implements CapacityRule {

    @Override
    public void add(MipModel model, DepotProblem problem, CapacityVars capacity) {
        List<SharingUnitType> units = problem.unitTypes();
        for (int k = 0; k < problem.circuits().size(); k++) {
            String id = problem.circuits().get(k).circuit().id();
            int outlets = problem.circuits().get(k).circuit().outlets();
            Expr plugs = Expr.sum(List.of(capacity.plain[k])).add(1, Expr.sum(List.of(capacity.bankPlugs[k])));
            plugs.add(-outlets, capacity.built[k]);
            plugs.add(outlets, Expr.sum(List.of(capacity.unit[k])));
            plugs.add(-1, capacity.relief.outlets(k));
            model.atMost("outlets_" + id, plugs, 0);

            Expr oneUnit = Expr.sum(List.of(capacity.unit[k])).add(-1, capacity.built[k]);
            model.atMost("oneUnit_" + id, oneUnit, 0);
            behindUnit(
                    model, "unitOutlets_" + id, capacity.shared[k], units, capacity.unit[k], SharingUnitType::outlets);
            behindUnit(
                    model,
                    "priorityOutlets_" + id,
                    capacity.priority[k],
                    units,
                    capacity.unit[k],
                    SharingUnitType::priorityOutlets);
            for (int u = 0; u < units.size(); u++) {
                Expr mixed = Expr.sum(List.of(capacity.mixed[k][u])).add(-1, capacity.unit[k][u]);
                model.equal("mix_" + id + "_" + units.get(u).id(), mixed, 0);
            }
            addSurePower(model, problem, capacity, k);
            for (int c = 0; c < problem.chargers().size(); c++) {
                String key = id + "_" + problem.chargers().get(c).type().id();
                model.atMost(
                        "priorityShared_" + key,
                        new Expr().add(1, capacity.priority[k][c]).add(-1, capacity.shared[k][c]),
                        0);
                Expr kind = new Expr().add(1, capacity.shared[k][c]);
                for (int u = 0; u < units.size(); u++) {
                    for (int m = 0; m < capacity.mixed[k][u].length; m++) {
                        if (capacity.mixes.get(k).get(u).get(m).has(c)) {
                            kind.add(-units.get(u).outlets(), capacity.mixed[k][u][m]);
                        }
                    }
                }
                model.atMost("kindBehindUnit_" + key, kind, 0);
            }
        }
    }

    private static void addSurePower(MipModel model, DepotProblem problem, CapacityVars capacity, int k) {
        CircuitSite site = problem.circuits().get(k);
        Expr watts = new Expr();
        for (int c = 0; c < problem.chargers().size(); c++) {
            watts.add(problem.chargers().get(c).peakWatts(), capacity.priority[k][c]);
        }
        for (int u = 0; u < problem.unitTypes().size(); u++) {
            double amps = problem.unitTypes().get(u).amps();
            watts.add(-SharedEnergy.unitWatts(site, amps, site.peakBaseAmps()), capacity.unit[k][u]);
        }
        watts.add(-site.wattsPerAmp() * site.circuit().continuousFactor(), capacity.relief.breakerAmps(k));
        model.atMost("surePower_" + site.circuit().id(), watts, 0);
    }

    private static void behindUnit(
            MipModel model,
            String name,
            Var[] chargers,
            List<SharingUnitType> units,
            Var[] unit,
            ToIntFunction<SharingUnitType> outlets) {
        Expr sum = Expr.sum(List.of(chargers));
        for (int u = 0; u < units.size(); u++) {
            sum.add(-outlets.applyAsInt(units.get(u)), unit[u]);
        }
        model.atMost(name, sum, 0);
    }
}
