package depot.optimizer.solve;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.NavigableSet;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * Finds the linear relaxation of the whole depot without ever holding all of its days: a few days in full, the others as cuts, which are made where
 * the master stands; the days that it misjudges most are taken in, until it judges them all well. Then the days that matter to what is bought are
 * known, and there are cuts for all of them that meet at the relaxation's optimum.
 */
final class LinearSearch {

    /** Most passes. */
    private static final int MOST_PASSES = 12;

    /** Misjudged by less than this share of the whole cost is judged well. */
    private static final double WELL_JUDGED = 0.0005;

    /** Passes with new cuts alone, after which a day is taken in. */
    private static final int PATIENCE = 4;

    /** Days that may be taken in after one pass. */
    private static final int MOST_NEW_DAYS = 2;

    /** A day that is worth less than this share of the most that one is worth does not matter to what is bought. */
    private static final double LEAST_WORTH = 0.05;

    private final List<DayProblem> days;
    private final CutPool cuts;
    private final Function<SortedSet<Integer>, MasterPoint> relaxation;

    /**
     * @param days one for each day of each phase
     * @param cuts new ones are added
     * @param relaxation solves the linear relaxation of the master with some days in full and the cuts so far
     */
    LinearSearch(List<DayProblem> days, CutPool cuts, Function<SortedSet<Integer>, MasterPoint> relaxation) {
        this.days = days;
        this.cuts = cuts;
        this.relaxation = relaxation;
    }

    /**
     * The days that matter to what is bought.
     *
     * @param first the days to begin with
     */
    NavigableSet<Integer> bindingDays(Collection<Integer> first) {
        NavigableSet<Integer> full = new TreeSet<>(first);
        MasterPoint relaxed = relaxation.apply(full);
        for (int pass = 0; relaxed.outcome().hasPoint() && pass < MOST_PASSES; pass++) {
            List<Miss> misses = misses(relaxed, full);
            if (wellJudged(relaxed, misses)) {
                return withCuts(mattering(relaxed, full));
            }
            misses.stream().limit(MOST_NEW_DAYS).forEach(miss -> full.add(miss.day()));
            relaxed = relaxation.apply(full);
        }
        return full;
    }

    /** Adds cuts for the other days until they are judged well again; a day that cuts do not get at stays in full after all. */
    private NavigableSet<Integer> withCuts(NavigableSet<Integer> full) {
        MasterPoint relaxed = relaxation.apply(full);
        for (int pass = 1; relaxed.outcome().hasPoint() && pass <= MOST_PASSES; pass++) {
            List<Miss> misses = misses(relaxed, full);
            if (wellJudged(relaxed, misses)) {
                return full;
            }
            if (pass % PATIENCE == 0) {
                full.add(misses.get(0).day());
            }
            relaxed = relaxation.apply(full);
        }
        return full;
    }

    private static boolean wellJudged(MasterPoint relaxed, List<Miss> misses) {
        double missed = misses.stream().mapToDouble(Miss::amount).sum();
        return missed <= WELL_JUDGED * relaxed.outcome().objective();
    }

    private List<Miss> misses(MasterPoint relaxed, SortedSet<Integer> full) {
        MasterProblem master = relaxed.master();
        double[] values = master.capacityValues(relaxed.outcome());
        List<Miss> misses = new ArrayList<>();
        for (int d = 0; d < days.size(); d++) {
            if (!full.contains(d)) {
                List<List<Double>> prices = master.cyclePrices(d, relaxed.outcome());
                double judged = master.judged(d, relaxed.outcome(), prices.get(0));
                misses.add(new Miss(d, Math.max(0, cost(d, values, prices) - judged)));
            }
        }
        misses.sort(Miss.WORST_FIRST);
        return misses;
    }

    /** Adds a day's cuts; returns its cost at the first prices. */
    private double cost(int day, double[] values, List<List<Double>> prices) {
        double cost = 0;
        for (List<Double> price : prices) {
            RecourseCut cut = days.get(day).cut(values, price).orElse(null);
            if (cut != null) {
                cuts.add(cut);
                cost = price == prices.get(0) ? cut.value() : cost;
            }
        }
        return cost;
    }

    /** Of the days in full those that matter; the others get cuts in their stead. */
    private NavigableSet<Integer> mattering(MasterPoint relaxed, SortedSet<Integer> full) {
        double[] values = relaxed.master().capacityValues(relaxed.outcome());
        double[] worth = new double[days.size()];
        for (int d : full) {
            for (List<Double> price : relaxed.master().cyclePrices(d, relaxed.outcome())) {
                days.get(d).cut(values, price).ifPresent(cut -> {
                    cuts.add(cut);
                    worth[cut.day()] = Math.max(worth[cut.day()], cut.worthOfCapacity());
                });
            }
        }
        int most = full.stream().max(Comparator.comparingDouble(d -> worth[d])).orElseThrow();
        NavigableSet<Integer> mattering = new TreeSet<>(full);
        mattering.removeIf(d -> d != most && worth[d] < LEAST_WORTH * worth[most]);
        return mattering;
    }
}
