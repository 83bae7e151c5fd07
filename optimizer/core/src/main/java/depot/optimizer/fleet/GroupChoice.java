package depot.optimizer.fleet;

import depot.optimizer.problem.DepotRollout;
import depot.optimizer.problem.SharedLimit;
import depot.optimizer.problem.SharedLimit.Kind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.IntUnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Says which depots are planned together: those with most to gain, with those that share most with them; pairs first, then more of them. Depots that were
 * together before come later, so that by and by each is planned with each. All depots of a fleet are never a group.
 */
final class GroupChoice {

    /** Depots of the first group around a depot, and of a later one at most. */
    private static final int FEWEST = 2;

    static final int MOST_DEPOTS = 4;

    /** What depots share with few others, and would have to change together. */
    private static final Set<Kind> CLOSE = EnumSet.of(Kind.CREW, Kind.VISIT, Kind.MOVES, Kind.REGION_BUDGET);

    private final int depots;
    private final List<Set<SharedLimit>> close = new ArrayList<>();
    private final IntUnaryOperator sizes;
    private final int mostVariables;
    private final int[] begun;
    private final int[][] together;

    /**
     * @param sizes variables of each depot's model
     * @param mostVariables of a group's
     */
    GroupChoice(List<DepotRollout> rollouts, IntUnaryOperator sizes, int mostVariables) {
        depots = rollouts.size();
        for (DepotRollout rollout : rollouts) {
            close.add(rollout.limits().stream()
                    .filter(limit -> CLOSE.contains(limit.kind()))
                    .collect(Collectors.toCollection(LinkedHashSet::new)));
        }
        this.sizes = sizes;
        this.mostVariables = mostVariables;
        begun = new int[depots];
        together = new int[depots][depots];
    }

    /**
     * The next groups, no depot in two of them.
     *
     * @param gains how much less each depot might cost
     */
    List<List<Integer>> next(double[] gains, int most) {
        List<List<Integer>> groups = new ArrayList<>();
        boolean[] taken = new boolean[depots];
        List<Integer> first = IntStream.range(0, depots)
                .boxed()
                .sorted(Comparator.<Integer>comparingInt(d -> begun[d]).thenComparingDouble(d -> -gains[d]))
                .toList();
        for (int d : first) {
            if (!taken[d] && groups.size() < most) {
                List<Integer> group = around(d, gains, taken);
                group.forEach(member -> taken[member] = true);
                if (group.size() > 1) {
                    note(d, group);
                    groups.add(group.stream().sorted().toList());
                }
            }
        }
        return groups;
    }

    private void note(int first, List<Integer> group) {
        begun[first]++;
        for (int a : group) {
            for (int b : group) {
                together[a][b]++;
            }
        }
    }

    private List<Integer> around(int first, double[] gains, boolean[] taken) {
        List<Integer> group = new ArrayList<>(List.of(first));
        int size = sizes.applyAsInt(first);
        int most = Math.min(Math.min(FEWEST + begun[first], MOST_DEPOTS), depots - 1);
        while (group.size() < most) {
            int best = -1;
            for (int d = 0; d < depots; d++) {
                boolean fits = !taken[d] && !group.contains(d) && size + sizes.applyAsInt(d) <= mostVariables;
                if (fits && (best < 0 || score(d, group, gains) > score(best, group, gains))) {
                    best = d;
                }
            }
            if (best < 0) {
                return group;
            }
            group.add(best);
            size += sizes.applyAsInt(best);
        }
        return group;
    }

    /** What a depot may gain, more where it shares much with a group, less where it was often together with it. */
    private double score(int depot, List<Integer> group, double[] gains) {
        double shared = 0;
        double times = 0;
        for (int member : group) {
            shared += close(depot, member);
            times += together[depot][member];
        }
        return (Math.max(0, gains[depot]) + 1e-9) * (1 + shared) / ((1 + times) * (1 + times));
    }

    /** Share of what one depot shares closely that it shares with another. */
    private double close(int depot, int other) {
        Set<SharedLimit> own = close.get(depot);
        long both = own.stream().filter(close.get(other)::contains).count();
        return own.isEmpty() ? 0 : (double) both / own.size();
    }
}
