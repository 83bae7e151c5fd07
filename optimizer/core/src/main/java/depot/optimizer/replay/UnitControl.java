package depot.optimizer.replay;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Feeds the chargers behind all units of a depot: those on priority outlets first, then those with most work left, as far as their unit, the supply
 * and the demand paid for have room. A charger is fed for a whole minute or not at all.
 */
final class UnitControl {
    private final UnitController[] units;
    private final double[] powerFactors;
    private final double[] supplyVa;
    private final double[] laterWh;
    private final Feedable[] order;

    /** A charger and its unit. */
    private static final class Feedable {
        private final ChargerBench bench;
        private final int unit;
        private final boolean priority;
        private double remaining;

        Feedable(ChargerBench bench, int unit) {
            this.bench = bench;
            this.unit = unit;
            this.priority = bench.placement().priority();
        }

        boolean before(Feedable other) {
            return priority == other.priority ? remaining > other.remaining : priority;
        }
    }

    /**
     * For one day.
     *
     * @param supplyVa what the supply has left by minute of the cycle
     * @param demandWatts what the demand paid for has left
     */
    UnitControl(Yard yard, double[] supplyVa, double[] demandWatts) {
        this.supplyVa = supplyVa;
        units = yard.units().toArray(UnitController[]::new);
        powerFactors = Arrays.stream(units)
                .mapToDouble(unit -> yard.circuits().get(unit.circuitIndex()).powerFactor())
                .toArray();
        double powerFactor = Arrays.stream(powerFactors).min().orElse(1);
        double[] room = new double[supplyVa.length];
        for (int i = 0; i < room.length; i++) {
            room[i] = Math.min(supplyVa[i] * powerFactor, demandWatts[i]);
        }
        laterWh = UnitController.laterWh(room);
        order = IntStream.range(0, units.length)
                .boxed()
                .flatMap(u -> units[u].plugged().stream().map(bench -> new Feedable(bench, u)))
                .toArray(Feedable[]::new);
    }

    /**
     * Feeds for one minute of the cycle, up to {@code endMinute} after midnight, and adds what is drawn to the circuits' watts.
     *
     * @param demandLeftWatts what the demand paid for has left
     */
    void run(int index, int endMinute, double demandLeftWatts, double[] watts) {
        if (!anyBusy()) {
            return;
        }
        double missing = 0;
        for (UnitController unit : units) {
            missing += unit.missingWh();
        }
        boolean pressed = missing >= UnitController.WAITING_SHARE * laterWh[index];
        for (UnitController unit : units) {
            unit.startMinute(index, pressed);
        }
        sort();
        double leftVa = Math.max(0, supplyVa[index]);
        double leftWatts = Math.max(0, demandLeftWatts);
        for (Feedable next : order) {
            if (next.bench.busy()) {
                double powerFactor = powerFactors[next.unit];
                double room = Math.min(leftVa * powerFactor, leftWatts);
                double drawn = units[next.unit].feed(next.bench, index, endMinute, room);
                leftVa -= drawn / powerFactor;
                leftWatts -= drawn;
            }
        }
        for (UnitController unit : units) {
            watts[unit.circuitIndex()] += unit.watts();
        }
    }

    private boolean anyBusy() {
        for (Feedable next : order) {
            if (next.bench.busy()) {
                return true;
            }
        }
        return false;
    }

    /** Insertion sort: from minute to minute the order hardly changes. Equal ones keep their order. */
    private void sort() {
        for (Feedable next : order) {
            next.remaining = next.bench.remainingMinutes();
        }
        for (int i = 1; i < order.length; i++) {
            Feedable next = order[i];
            int j = i - 1;
            while (j >= 0 && next.before(order[j])) {
                order[j + 1] = order[j];
                j--;
            }
            order[j + 1] = next;
        }
    }
}
