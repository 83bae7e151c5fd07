package depot.optimizer.replay;

import depot.optimizer.scenario.PackType;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/** The packs of one pool and type that lie in the depot, by level. */
final class PackShelf {
    private final String pool;
    private final PackType type;
    private final List<PackState> all = new ArrayList<>();
    private final Deque<PackState> full = new ArrayDeque<>();
    private final Deque<PackState> eighty = new ArrayDeque<>();
    private final Deque<PackState> depleted = new ArrayDeque<>();

    PackShelf(String pool, PackType type, int count) {
        this.pool = pool;
        this.type = type;
        add(count);
    }

    void add(int count) {
        for (int i = 0; i < count; i++) {
            all.add(new PackState(this));
        }
    }

    String pool() {
        return pool;
    }

    PackType type() {
        return type;
    }

    int count() {
        return all.size();
    }

    int fullCount() {
        return full.size();
    }

    /** Every day starts with every pack full and in the depot. */
    void reset() {
        full.clear();
        eighty.clear();
        depleted.clear();
        for (PackState pack : all) {
            pack.setCharge(1);
            full.add(pack);
        }
    }

    /** Puts a charged pack back. */
    void putCharged(PackState pack, boolean toFull) {
        (toFull ? full : eighty).add(pack);
    }

    /** A pack that comes back needs a full loading, whatever is left in it. */
    void handIn(PackState pack) {
        pack.setCharge(0);
        depleted.add(pack);
    }

    /** A pack to be charged, null: none there. */
    PackState takeDepleted() {
        return depleted.poll();
    }

    /** A full pack, null: none there. */
    PackState takeFull() {
        return full.poll();
    }

    /** A pack charged to 80 %, null: none there. */
    PackState takeEighty() {
        return eighty.poll();
    }
}
