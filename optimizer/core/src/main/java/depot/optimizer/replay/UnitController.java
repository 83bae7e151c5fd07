package depot.optimizer.replay;

import java.util.List;

/**
 * A load-sharing unit, minute by minute. What it draws stays below its amperes at that minute. Loads that stay to the end of the cycle wait for the
 * slice that the plan has their energy drawn in, unless little time or power is left for their work; what could not be drawn in its slice is drawn later.
 * What is collected earlier never waits for a slice.
 *
 * <p>A charger may be fed as long as the unit has drawn less than it may have by now, so that the plan is passed by less than one minute of its
 * chargers, and rounding never starves the last pack.
 */
final class UnitController {
    /** Watt-hours below which a budget counts as used up. */
    private static final double ROUNDING_WH = 1e-6;

    /** Chargers wait for their slice only as long as their work takes up no more than this share of the time, or of the energy, that is left. */
    static final double WAITING_SHARE = 0.92;

    private final String circuit;
    private final int circuitIndex;
    private final ChargerBench[] plugged;
    private FeedPlan feed;
    private double[] roomWatts;
    private int end;
    private double[] laterWh;
    private double drawnWh;
    private double watts;
    private boolean pressed;

    UnitController(String circuit, int circuitIndex, List<ChargerBench> benches) {
        this.circuit = circuit;
        this.circuitIndex = circuitIndex;
        this.plugged = benches.toArray(ChargerBench[]::new);
    }

    String circuit() {
        return circuit;
    }

    int circuitIndex() {
        return circuitIndex;
    }

    List<ChargerBench> plugged() {
        return List.of(plugged);
    }

    /**
     * Gets ready for a day.
     *
     * @param room watts that it may draw, by minute of the cycle
     * @param cycleEnd minute at which the cycle ends
     */
    void start(FeedPlan planned, double[] room, int cycleEnd) {
        feed = planned;
        roomWatts = room;
        end = cycleEnd;
        drawnWh = 0;
        watts = 0;
        laterWh = laterWh(room);
    }

    /** Watt-hours that may be drawn from each minute of the cycle on, given the watts of each. */
    static double[] laterWh(double[] room) {
        double[] later = new double[room.length + 1];
        for (int i = room.length - 1; i >= 0; i--) {
            later[i] = later[i + 1] + Math.max(0, room[i]) / 60;
        }
        return later;
    }

    /**
     * Begins a minute in which nothing has been drawn yet.
     *
     * @param depotPressed the depot as a whole has little to spare, so that no unit waits
     */
    void startMinute(int index, boolean depotPressed) {
        watts = 0;
        pressed = depotPressed || missingWh() >= WAITING_SHARE * laterWh[index];
    }

    /** Watt-hours that what is in its chargers still needs. */
    double missingWh() {
        double wattHours = 0;
        for (ChargerBench bench : plugged) {
            wattHours += bench.busy() ? bench.missingWh() : 0;
        }
        return wattHours;
    }

    /** Drawn in the minute that runs. */
    double watts() {
        return watts;
    }

    /**
     * Feeds one of its chargers for a minute of the cycle, up to {@code endMinute} after midnight, and says what it draws: 0 when it has to wait.
     *
     * @param leftWatts what the depot has left
     */
    double feed(ChargerBench bench, int index, int endMinute, double leftWatts) {
        double next = bench.nextWatts();
        if (Tolerance.above(watts + next, roomWatts[index]) || Tolerance.above(next, leftWatts)) {
            return 0;
        }
        boolean daytime = bench.dueBefore(end);
        boolean urgent = pressed || bench.remainingMinutes() >= WAITING_SHARE * (end - endMinute + 1);
        if (!daytime && !urgent && drawnWh >= feed.allowedWh(index) - ROUNDING_WH) {
            return 0;
        }
        bench.advance(endMinute);
        watts += next;
        drawnWh += daytime ? 0 : next / 60;
        return next;
    }
}
