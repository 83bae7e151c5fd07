package depot.optimizer.fleet;

import depot.optimizer.problem.DepotRollout;
import depot.optimizer.problem.SharedLimit;
import depot.optimizer.solve.UseRange;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Settles where crews with several bases work, by the weights that a relaxation gives to plans. */
final class CrewPlaces {

    /** A crew that no base wants at least this much stays on petrol, where it may. */
    private static final double LEAST_WANTED = 0.5;

    private final List<DepotRollout> rollouts;
    private final List<SharedLimit> crews;
    private final List<FleetColumn> pool;

    /**
     * @param crews limits of kind CREW, phase by phase
     */
    CrewPlaces(List<DepotRollout> rollouts, List<SharedLimit> crews, List<FleetColumn> pool) {
        this.rollouts = rollouts;
        this.crews = crews;
        this.pool = pool;
    }

    /**
     * For each depot of the crews that could work from it whether they do: 1 or 0.
     *
     * @param weights of the pool's plans, in its order
     */
    List<Map<SharedLimit, UseRange>> settled(double[] weights) {
        List<Map<SharedLimit, UseRange>> settled = new ArrayList<>();
        rollouts.forEach(rollout -> settled.add(new LinkedHashMap<>()));
        Map<String, Integer> placed = new HashMap<>();
        for (SharedLimit crew : crews) {
            int place = placed.getOrDefault(crew.subject(), -1);
            if (place < 0) {
                place = place(crew, weights);
            }
            if (place >= 0) {
                placed.put(crew.subject(), place);
            }
            for (int d = 0; d < rollouts.size(); d++) {
                if (rollouts.get(d).limits().contains(crew)) {
                    settled.get(d).put(crew, UseRange.exactly(d == place ? 1 : 0));
                }
            }
        }
        return settled;
    }

    /** The depot that wants a crew most; -1: it stays on petrol. */
    private int place(SharedLimit crew, double[] weights) {
        double[] wanted = new double[rollouts.size()];
        double all = 0;
        for (int c = 0; c < weights.length; c++) {
            double want = weights[c] * pool.get(c).use(crew);
            wanted[pool.get(c).depot()] += want;
            all += want;
        }
        if (!crew.equation() && all < LEAST_WANTED) {
            return -1;
        }
        int most = -1;
        for (int d = 0; d < wanted.length; d++) {
            boolean base = rollouts.get(d).limits().contains(crew);
            if (base && (most < 0 || wanted[d] > wanted[most])) {
                most = d;
            }
        }
        return most;
    }
}
