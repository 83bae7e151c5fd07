package depot.optimizer.replay;

import java.util.List;

/**
 * A load-sharing unit, minute by minute. It feeds whole chargers: those on priority outlets first, then those with most work left. What it
 * draws stays below its amperes at that minute, below what the supply has left, and below the energy planned for the slice; where demand is
 * billed that energy is paced evenly.
 *
 * <p>Pacing: a charger may be fed as long as the unit has drawn less since the start of the slice than the planned average would have by the
 * end of the current pacing interval. So the plan is passed by less than one charger's minute, and rounding never starves the last pack.
 */
final class UnitController {
    /** Watt-hours below which a budget counts as used up. */
    private static final double ROUNDING_WH = 1e-6;

    private final String circuit;
    private final int circuitIndex;
    private final List<ChargerBench> plugged;
    private final ChargerBench[] benches;
    private final double[] remaining;
    private FeedPlan feed;
    private double[] roomWatts;
    private double carryLimitWh;
    private int slice;
    private double drawnWh;
    private double carriedWh;

    UnitController(String circuit, int circuitIndex, List<ChargerBench> benches) {
        this.circuit = circuit;
        this.circuitIndex = circuitIndex;
        this.plugged = List.copyOf(benches);
        this.benches = new ChargerBench[benches.size()];
        this.remaining = new double[benches.size()];
    }

    String circuit() {
        return circuit;
    }

    int circuitIndex() {
        return circuitIndex;
    }

    /**
     * Gets ready for a day.
     *
     * @param room watts that it may draw, by minute of the cycle
     * @param kind what becomes of energy that was not drawn in its slice
     */
    void start(FeedPlan planned, double[] room, Pacing kind) {
        plugged.toArray(benches);
        feed = planned;
        roomWatts = room;
        slice = -1;
        drawnWh = 0;
        carriedWh = 0;
        carryLimitWh = 0;
        for (double watts : room) {
            carryLimitWh = Math.max(carryLimitWh, watts * kind.carryMinutes() / 60);
        }
    }

    /**
     * Feeds for one minute of the cycle, up to {@code endMinute} after midnight, and says what it drew.
     *
     * @param supplyWatts what the depot's supply has left for it in that minute
     */
    double run(int index, int endMinute, double supplyWatts) {
        int now = feed.slice(index);
        if (now != slice) {
            double unused = slice < 0 ? 0 : feed.plannedWh(slice) - drawnWh + carriedWh;
            carriedWh = Math.min(unused, carryLimitWh);
            drawnWh = 0;
            slice = now;
        }
        double allowedWh = feed.allowedWh(index) + carriedWh;
        if (drawnWh >= allowedWh - ROUNDING_WH) {
            return 0;
        }
        sort();
        double room = Math.min(roomWatts[index], Math.max(0, supplyWatts));
        double watts = 0;
        for (ChargerBench bench : benches) {
            if (!bench.busy()) {
                continue;
            }
            double next = bench.nextWatts();
            boolean fits = !Tolerance.above(watts + next, room);
            if (fits && drawnWh + watts / 60 < allowedWh - ROUNDING_WH) {
                bench.advance(endMinute);
                watts += next;
            }
        }
        drawnWh += watts / 60;
        return watts;
    }

    /** Insertion sort: from minute to minute the order hardly changes. Equal ones keep their order. */
    private void sort() {
        for (int i = 0; i < benches.length; i++) {
            remaining[i] = benches[i].remainingMinutes();
        }
        for (int i = 1; i < benches.length; i++) {
            ChargerBench bench = benches[i];
            double work = remaining[i];
            int j = i - 1;
            while (j >= 0 && before(bench, work, benches[j], remaining[j])) {
                benches[j + 1] = benches[j];
                remaining[j + 1] = remaining[j];
                j--;
            }
            benches[j + 1] = bench;
            remaining[j + 1] = work;
        }
    }

    private static boolean before(ChargerBench bench, double work, ChargerBench other, double otherWork) {
        boolean first = bench.placement().priority();
        return first == other.placement().priority() ? work > otherWork : first;
    }
}
