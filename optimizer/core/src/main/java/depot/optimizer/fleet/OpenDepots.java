package depot.optimizer.fleet;

import depot.optimizer.plan.Certificate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Consumer;

/**
 * Depots whose gaps need to be closed only in sum. Every one is planned with little effort, which leaves most of them well within the gap and some
 * outside it; then those that are widest open are worked on, until the sum is small enough, and the few that would take minutes are left alone.
 */
public final class OpenDepots {

    /** When enough is done. */
    public enum Aim {
        /** The gap of all depots together is closed. */
        SUM,
        /** That, and no depot is poor by itself: where some depots are what is asked about, and the others only keep their plans. */
        EACH
    }

    /** Depots that are worked on before the sum is looked at again: this many at least. */
    private static final int FEWEST = 4;

    /** Each effort takes many times as long as the one before it. */
    private static final Comparator<OpenDepot> LEAST_WORKED_ON = Comparator.comparingInt(OpenDepot::efforts);

    private static final Comparator<OpenDepot> WIDEST =
            Comparator.comparingDouble(OpenDepot::open).reversed();

    /** A gap that is wider than asked for by no more than this is rounding. */
    private static final double ROUNDING = 1e-9;

    private final List<OpenDepot> depots;
    private final DepotThreads threads;

    OpenDepots(List<OpenDepot> depots, DepotThreads threads) {
        this.depots = List.copyOf(depots);
        this.threads = threads;
        if (depots.size() == 1) {
            depots.forEach(OpenDepot::byItself);
        }
    }

    /**
     * The first effort of each.
     *
     * @param planned is told, from several threads
     */
    void first(Consumer<OpenDepot> planned) {
        threads.run(depots.stream()
                .map(depot -> (Runnable) () -> {
                    depot.further();
                    planned.accept(depot);
                })
                .toList());
    }

    /**
     * Works on those that come next.
     *
     * @param most how far cost and bound of all of them may be apart
     * @return whether there was anything to be done
     */
    boolean further(double most) {
        double open = depots.stream().mapToDouble(OpenDepot::open).sum();
        return workOn(next(depots, open - most, Aim.SUM));
    }

    /** The same with the gap of a whole fleet, and depots of it that keep their plans, as in {@link #next}. */
    boolean further(Certificate others, double gap, Aim aim) {
        return workOn(next(depots, others, gap, aim));
    }

    private boolean workOn(List<OpenDepot> chosen) {
        threads.run(chosen.stream().map(depot -> (Runnable) depot::further).toList());
        return !chosen.isEmpty();
    }

    /**
     * Those to be worked on next: of the least worked on, widest open first, as many as could close the fleet's gap together, and some in any case; once it
     * is closed, those that are poor all the same, if the aim says so.
     *
     * @param others cost and bound of the fleet's other depots
     * @param gap asked for, as a share of what all depots cost
     */
    public static List<OpenDepot> next(List<OpenDepot> depots, Certificate others, double gap, Aim aim) {
        double cost = others.cost();
        double open = others.cost() - others.bound();
        for (OpenDepot depot : depots) {
            cost += depot.cost();
            open += depot.open();
        }
        return next(depots, open - (gap + ROUNDING) * Math.abs(cost), aim);
    }

    /** The same for what cost and bound of all of them are too far apart. */
    static List<OpenDepot> next(List<OpenDepot> depots, double excess, Aim aim) {
        List<OpenDepot> chosen = new ArrayList<>();
        double left = excess;
        for (OpenDepot depot : depots.stream()
                .filter(depot -> excess > 0 && !depot.done())
                .sorted(LEAST_WORKED_ON.thenComparing(WIDEST))
                .toList()) {
            if (left <= 0 && chosen.size() >= FEWEST) {
                break;
            }
            chosen.add(depot);
            left -= depot.open();
        }
        return chosen.isEmpty() && aim == Aim.EACH
                ? depots.stream().filter(OpenDepot::poor).toList()
                : chosen;
    }
}
