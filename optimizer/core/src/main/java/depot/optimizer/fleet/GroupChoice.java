package depot.optimizer.fleet;

import depot.optimizer.problem.DepotRollout;
import depot.optimizer.problem.SharedLimit;
import depot.optimizer.problem.SharedLimit.Kind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Says which depots are planned together: those with most to gain, with those that share most with them; pairs first, then more of them. Depots that were
 * together before come later, so that by and by each is planned with each. All depots of a fleet are never a group.
 */
final class GroupChoice {

    /** Depots of the first group around a depot, and of a later one at most. */
    private static final int FEWEST = 2;

    private static final int MOST = 4;

    /** What depots share with few others, and would have to change together. */
    private static final Set<Kind> CLOSE = EnumSet.of(Kind.CREW, Kind.VISIT, Kind.MOVES, Kind.REGION_BUDGET);

    private final List<DepotRollout> rollouts;
    private final int[] sizes;
    private final int mostVariables;
    private final int[] begun;
    private final int[][] together;

    /**
     * @param sizes variables of each depot's model
     * @param mostVariables of a group's
     */
    GroupChoice(List<DepotRollout> rollouts, int[] sizes, int mostVariables) {
        this.rollouts = rollouts;
        this.sizes = sizes;
        this.mostVariables = mostVariables;
        begun = new int[sizes.length];
        together = new int[sizes.length][sizes.length];
    }

    /**
     * The next groups, no depot in two of them.
     *
     * @param gains how much less each depot might cost
     */
    List<List<Integer>> next(double[] gains, int most) {
        List<List<Integer>> groups = new ArrayList<>();
        boolean[] taken = new boolean[sizes.length];
        List<Integer> first = IntStream.range(0, sizes.length)
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
        int size = sizes[first];
        int most = Math.min(Math.min(FEWEST + begun[first], MOST), sizes.length - 1);
        while (group.size() < most) {
            int best = -1;
            for (int d = 0; d < sizes.length; d++) {
                boolean fits = !taken[d] && !group.contains(d) && size + sizes[d] <= mostVariables;
                if (fits && (best < 0 || score(d, group, gains) > score(best, group, gains))) {
                    best = d;
                }
            }
            if (best < 0) {
                return group;
            }
            group.add(best);
            size += sizes[best];
        }
        return group;
    }

    /** What a depot may gain, more where it shares much with a group, less where it was often together with it. */
    private double score(int depot, List<Integer> group, double[] gains) {
        double close = 0;
        double times = 0;
        for (int member : group) {
            close += close(depot, member);
            times += together[depot][member];
        }
        return (Math.max(0, gains[depot]) + 1e-9) * (1 + close) / ((1 + times) * (1 + times));
    }

    /** Share of what one depot shares closely that it shares with another. */
    private double close(int depot, int other) {
        List<SharedLimit> own = rollouts.get(depot).limits().stream()
                .filter(limit -> CLOSE.contains(limit.kind()))
                .toList();
        long both = own.stream().filter(rollouts.get(other).limits()::contains).count();
        return own.isEmpty() ? 0 : (double) both / own.size();
    }
}
