package depot.optimizer.fleet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Consumer;

/**
 * Depots whose gaps need to be closed only in sum. Every one is planned with little effort, which leaves most of them well within the gap and some
 * outside it; then those that are widest open are worked on, until the sum is small enough.
 */
final class OpenDepots {

    /** Depots that are worked on before the sum is looked at again: this many at least. */
    private static final int FEWEST = 4;

    private final List<OpenDepot> depots;
    private final DepotThreads threads;

    OpenDepots(List<OpenDepot> depots, DepotThreads threads) {
        this.depots = List.copyOf(depots);
        this.threads = threads;
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

    /** What cost and bound of all of them are apart. */
    private double open() {
        return depots.stream().mapToDouble(OpenDepot::open).sum();
    }

    /**
     * Works on the widest open: as many as could close the sum together, and some in any case.
     *
     * @param most how far cost and bound of all of them may be apart
     * @return whether there was anything to be done
     */
    boolean further(double most) {
        double excess = open() - most;
        if (excess <= 0) {
            return false;
        }
        List<OpenDepot> widest = new ArrayList<>();
        for (OpenDepot depot : depots.stream()
                .filter(depot -> !depot.done())
                .sorted(Comparator.comparingDouble(OpenDepot::open).reversed())
                .toList()) {
            if (excess <= 0 && widest.size() >= FEWEST) {
                break;
            }
            widest.add(depot);
            excess -= depot.open();
        }
        threads.run(widest.stream().map(depot -> (Runnable) depot::further).toList());
        return !widest.isEmpty();
    }
}
