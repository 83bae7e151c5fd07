package depot.optimizer.model;

import depot.optimizer.mip.Var;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Turns what is bought back into values of the model's variables: the other way round from {@link DecisionReader}. */
public final class CapacityPoint {

    private final Map<Var, Double> values = new HashMap<>();

    private CapacityPoint() {}

    /**
     * The values in the order of {@link CapacityVars#all()}.
     *
     * @param peaks demand paid for by season, kW
     */
    public static double[] of(CapacityVars vars, CapacityDecision decision, double[] peaks) {
        CapacityPoint point = new CapacityPoint();
        point.put(vars.plain, decision.plain());
        point.put(vars.shared, decision.shared());
        point.put(vars.priority, decision.priority());
        point.put(vars.packs, decision.packs());
        point.put(vars.kit, decision.kit());
        point.put(vars.banks, decision.banks());
        point.put(vars.bankPlugs, decision.bankPlugs());
        for (int k = 0; k < vars.built.length; k++) {
            point.values.put(vars.built[k], decision.built().get(k) ? 1.0 : 0.0);
            for (int u = 0; u < vars.unit[k].length; u++) {
                boolean there = decision.unit().get(k) == u;
                point.values.put(vars.unit[k][u], there ? 1.0 : 0.0);
                List<UnitMix> mixes = vars.mixes.get(k).get(u);
                int mix = there ? UnitMix.smallest(mixes, decision.shared().get(k)) : -1;
                for (int m = 0; m < mixes.size(); m++) {
                    point.values.put(vars.mixed[k][u][m], m == mix ? 1.0 : 0.0);
                }
            }
        }
        point.values.put(vars.upgrade, decision.upgraded() ? 1.0 : 0.0);
        for (int w = 0; w < vars.electric.length; w++) {
            if (vars.electric[w] != null) {
                point.values.put(vars.electric[w], decision.electric().get(w) ? 1.0 : 0.0);
            }
        }
        for (int m = 0; m < vars.come.length; m++) {
            int moved = decision.moved().get(m);
            point.values.put(vars.come[m], (double) Math.max(0, moved));
            point.values.put(vars.go[m], (double) Math.max(0, -moved));
        }
        point.put(vars.services, decision.services());
        point.put(vars.hosted, decision.hosted());
        for (int s = 0; s < vars.peak.length; s++) {
            point.values.put(vars.peak[s], peaks[s]);
        }
        return vars.all().stream().mapToDouble(point.values::get).toArray();
    }

    private void put(Var[][] vars, List<List<Integer>> counts) {
        for (int i = 0; i < vars.length; i++) {
            put(vars[i], counts.get(i));
        }
    }

    private void put(Var[] vars, List<Integer> counts) {
        for (int i = 0; i < vars.length; i++) {
            values.put(vars[i], (double) counts.get(i));
        }
    }
}
