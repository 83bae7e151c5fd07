package depot.optimizer.replay;

import depot.optimizer.plan.ChargerLoad;
import depot.optimizer.plan.ChargerLoad.Level;
import depot.optimizer.plan.ChargerLoad.Loaded;

/** One planned loading of a charger while a day runs: how many of its packs are in, ready and collected. */
final class LoadRun {
    private final ChargerLoad plan;
    private final ChargerBench bench;
    private final int[] placed;
    private final int total;
    private int ready;
    private int collected;
    private int readyMinute = LoadTiming.NEVER;

    LoadRun(ChargerLoad plan, ChargerBench bench) {
        this.plan = plan;
        this.bench = bench;
        this.placed = new int[plan.packs().size()];
        this.total = plan.packs().stream().mapToInt(Loaded::count).sum();
    }

    ChargerLoad plan() {
        return plan;
    }

    ChargerBench bench() {
        return bench;
    }

    boolean allReady() {
        return ready == total;
    }

    boolean done() {
        return collected == total;
    }

    boolean allPlaced() {
        int in = 0;
        for (int count : placed) {
            in += count;
        }
        return in == total;
    }

    int readyMinute() {
        return allReady() ? readyMinute : LoadTiming.NEVER;
    }

    void noteReady(int minute) {
        ready++;
        readyMinute = minute;
    }

    void noteCollected() {
        collected++;
    }

    /** Puts in what is there, in the planned order, as far as bays are free; the rest waits for a later handover. */
    void fill(PackRoom room) {
        for (int i = 0; i < placed.length; i++) {
            Loaded item = plan.packs().get(i);
            PackShelf shelf = room.shelf(item.pool(), item.packType()).orElse(null);
            ChargeCurve curve = bench.curve(item.packType());
            while (shelf != null && curve != null && placed[i] < item.count() && bench.hasFreeBay()) {
                PackState pack = shelf.takeDepleted();
                if (pack == null) {
                    break;
                }
                bench.put(pack, this, curve, item.level() == Level.FULL ? curve.minutesToFull() : curve.minutesTo80());
                placed[i]++;
            }
        }
    }

    /** Packs that are not in yet. */
    int waiting() {
        int in = 0;
        for (int count : placed) {
            in += count;
        }
        return total - in;
    }

    /** Watt-hours from the mains that the packs in its bays still need. */
    double missingWh() {
        return bench.missingWh(this);
    }
}
