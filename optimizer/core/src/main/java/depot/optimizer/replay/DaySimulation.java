package depot.optimizer.replay;

import depot.optimizer.plan.ChargerLoad;
import depot.optimizer.plan.TripPlan.Carried;
import depot.optimizer.scenario.PackType;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Runs one day, minute by minute, from the cycle's start with every pack full. At a handover finished packs are collected, arriving crews
 * hand theirs in, chargers are loaded, departing crews take packs, in this order. What does not go by the plan goes on as it would:
 * packs that are not ready stay in their bays, packs that come late are loaded late, crews leave with what is there.
 */
final class DaySimulation {
    private final Yard yard;
    private final DaySetup setup;
    private final Draw draw;
    private final DayEvents events;
    private final int start;
    private final int end;
    private final double[] watts;
    private UnitControl control;
    private final List<LoadRun> loads = new ArrayList<>();
    private final List<LoadRun> open = new ArrayList<>();
    private final List<TripTurn> turns = new ArrayList<>();
    private int nextLoad;

    /** A trip while the day runs. */
    private static final class TripTurn {
        private final DayCase.Trip trip;
        private final TripTurn before;
        private final int leaveMinute;
        private final int returnMinute;
        private int left = -1;
        private int backMinute = Integer.MAX_VALUE;
        private boolean back;
        private List<PackState> board = List.of();

        TripTurn(DayCase.Trip trip, TripTurn before, int leaveMinute, int returnMinute) {
            this.trip = trip;
            this.before = before;
            this.leaveMinute = leaveMinute;
            this.returnMinute = returnMinute;
        }

        boolean leavesAt(int minute) {
            return left < 0 && leaveMinute <= minute && (before == null || before.back);
        }
    }

    DaySimulation(Yard yard, DaySetup setup, Draw draw, DayEvents events) {
        this.yard = yard;
        this.setup = setup;
        this.draw = draw;
        this.events = events;
        this.start = yard.tables().startMinute();
        this.end = yard.tables().endMinute();
        this.watts = new double[yard.circuits().size()];
    }

    void run() {
        yard.reset();
        prepareLoads();
        prepareTrips();
        for (int u = 0; u < yard.units().size(); u++) {
            yard.units().get(u).start(setup.feeds().get(u), setup.roomWatts()[u], end);
        }
        control = new UnitControl(yard, new SupplyWatch(yard).roomForUnits(setup), setup.demandRoomWatts());
        int next = start;
        for (int t = start; t < end; t++) {
            if (t >= next) {
                handover(t);
                next = nextEvent(t);
            }
            minute(t);
        }
        handover(end);
        close();
    }

    private void prepareLoads() {
        for (ChargerLoad load : setup.day().plan().loads()) {
            ChargerBench bench = yard.bench(load.charger());
            if (bench != null) {
                loads.add(new LoadRun(load, bench));
            }
        }
        loads.sort(Comparator.comparingInt(run -> run.plan().loadMinute()));
    }

    private void prepareTrips() {
        TripTurn before = null;
        for (DayCase.Trip trip : setup.day().trips()) {
            boolean sameCrew = before != null && before.trip.crew().equals(trip.crew());
            before = new TripTurn(
                    trip,
                    sameCrew ? before : null,
                    yard.tables().roundDown(trip.route().leaveMinute()),
                    yard.tables().roundUp(trip.route().returnMinute()));
            turns.add(before);
        }
    }

    private int nextEvent(int now) {
        int next = end;
        if (nextLoad < loads.size()) {
            next = Math.min(next, loads.get(nextLoad).plan().loadMinute());
        }
        for (LoadRun load : open) {
            if (load.plan().collectMinute() > now) {
                next = Math.min(next, load.plan().collectMinute());
            }
        }
        for (TripTurn turn : turns) {
            if (turn.left < 0 && (turn.before == null || turn.before.back)) {
                next = Math.min(next, turn.leaveMinute);
            } else if (!turn.back) {
                next = Math.min(next, turn.backMinute);
            }
        }
        return Math.max(next, now + 1);
    }

    private void handover(int t) {
        collect(t);
        for (TripTurn turn : turns) {
            if (!turn.back && turn.left >= 0 && turn.backMinute <= t) {
                turn.back = true;
                turn.board.forEach(pack -> pack.shelf.handIn(pack));
            }
        }
        if (t < end) {
            load(t);
            for (TripTurn turn : turns) {
                if (turn.leavesAt(t)) {
                    depart(turn, t);
                }
            }
        }
        events.shelved(Math.min(t - start, BaseLoads.DAY - 1), yard.room());
    }

    private void collect(int t) {
        open.removeIf(load -> {
            int due = load.plan().collectMinute();
            if (due > t) {
                return false;
            }
            if (due == t && !load.allReady()) {
                events.loadLate(load, t);
            }
            load.bench().collect(load);
            if (load.done()) {
                events.loadEnded(load);
            }
            return load.done();
        });
    }

    private void load(int t) {
        for (LoadRun load : open) {
            load.fill(yard.room());
        }
        while (nextLoad < loads.size() && loads.get(nextLoad).plan().loadMinute() <= t) {
            LoadRun load = loads.get(nextLoad++);
            guestsHandIn(load);
            load.fill(yard.room());
            if (!load.allPlaced()) {
                events.packsNotThere(load, load.waiting(), t);
            }
            open.add(load);
        }
    }

    /** A visiting crew brings the packs of its load along. Whether it comes at that time is for the rules of loads to say. */
    private void guestsHandIn(LoadRun load) {
        for (ChargerLoad.Loaded packs : load.plan().packs()) {
            boolean guest =
                    setup.day().guests().stream().anyMatch(visit -> visit.crew().equals(packs.pool()));
            PackType type = yard.tables().packTypes().get(packs.packType());
            if (guest && type != null && !yard.tables().ownPool(packs.pool())) {
                yard.room().handInGuests(packs.pool(), type, packs.count());
            }
        }
    }

    private void depart(TripTurn turn, int t) {
        DayCase.Trip trip = turn.trip;
        turn.left = t;
        turn.board = new ArrayList<>();
        for (Carried carried : trip.plan().carried()) {
            PackShelf shelf = yard.room()
                    .shelf(yard.tables().pool(trip.crew().id()), carried.packType())
                    .orElse(null);
            int asPlanned = shelf == null ? 0 : take(shelf, carried, turn.board);
            int missing = carried.full() + carried.at80() - asPlanned;
            if (missing > 0) {
                events.packsNotCarried(trip, carried, missing, t);
            }
        }
        // A crew that leaves late comes back late by as much, and then by what this trip adds.
        int delay = Math.max(0, t - turn.leaveMinute);
        turn.backMinute = Math.max(turn.returnMinute, trip.route().returnMinute() + delay + draw.lateMinutes(trip));
        new TripRun(yard.tables(), setup.day().season(), trip, turn.board, events).run(draw);
    }

    /** A pack at 80 % is taken where a full one is missing, and the other way round. Says how many are at least as full as planned. */
    private static int take(PackShelf shelf, Carried carried, List<PackState> board) {
        int asPlanned = 0;
        for (int i = 0; i < carried.full() + carried.at80(); i++) {
            boolean wantsFull = i < carried.full();
            PackState pack = wantsFull ? shelf.takeFull() : shelf.takeEighty();
            boolean planned = pack != null;
            if (pack == null) {
                pack = wantsFull ? shelf.takeEighty() : shelf.takeFull();
                planned = pack != null && !wantsFull;
            }
            if (pack != null) {
                board.add(pack);
            }
            asPlanned += planned ? 1 : 0;
        }
        return asPlanned;
    }

    private void minute(int t) {
        int index = t - start;
        Arrays.fill(watts, 0);
        double demandWatts = setup.demandRoomWatts()[index];
        for (ChargerBench bench : yard.plain()) {
            if (bench.busy()) {
                double drawn = bench.nextWatts();
                watts[bench.circuit()] += drawn;
                demandWatts -= drawn;
                bench.advance(t + 1);
            }
        }
        control.run(index, t + 1, demandWatts, watts);
        events.drawn(index, watts);
    }

    private void close() {
        open.forEach(events::loadEnded);
        for (PackShelf shelf : yard.room().shelves()) {
            if (shelf.fullCount() < shelf.count()) {
                events.notFull(shelf, shelf.count() - shelf.fullCount());
            }
        }
    }
}
