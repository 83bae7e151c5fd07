package depot.optimizer.replay;

import depot.optimizer.plan.ChargerPlacement;
import depot.optimizer.scenario.ChargerType;
import java.util.Map;

/**
 * One charger and the packs in its bays. Packs charge in the order in which they were put in, so many together; the next starts when one
 * is done. A charger is fed for a whole minute or not at all.
 */
final class ChargerBench {
    private final ChargerPlacement placement;
    private final ChargerType type;
    private final int circuit;
    private final Map<String, ChargeCurve> curves;
    private final Slot[] slots;
    private int held;
    private int unfinished;
    private boolean changed = true;
    private double remainingMinutes;
    private double missingWh;

    /** A bay with a pack in it. */
    private static final class Slot {
        private PackState pack;
        private LoadRun load;
        private ChargeCurve curve;
        private int target;
        private int charged;
    }

    /**
     * A charger.
     *
     * @param circuit index of its circuit in the depot
     * @param curves by pack type, those that fit
     */
    ChargerBench(ChargerPlacement placement, ChargerType type, int circuit, Map<String, ChargeCurve> curves) {
        this.placement = placement;
        this.type = type;
        this.circuit = circuit;
        this.curves = curves;
        this.slots = new Slot[type.bays()];
        for (int i = 0; i < slots.length; i++) {
            slots[i] = new Slot();
        }
    }

    ChargerPlacement placement() {
        return placement;
    }

    int circuit() {
        return circuit;
    }

    double plateWatts() {
        return type.plateWatts();
    }

    /** Null when the pack type does not fit. */
    ChargeCurve curve(String packType) {
        return curves.get(packType);
    }

    void reset() {
        held = 0;
        unfinished = 0;
        changed = true;
    }

    boolean hasFreeBay() {
        return held < slots.length;
    }

    boolean busy() {
        return unfinished > 0;
    }

    void put(PackState pack, LoadRun load, ChargeCurve curve, int target) {
        Slot slot = slots[held++];
        slot.pack = pack;
        slot.load = load;
        slot.curve = curve;
        slot.target = target;
        slot.charged = 0;
        unfinished++;
        changed = true;
    }

    /** Whether a pack in it that is not done yet is due before a minute. */
    boolean dueBefore(int minute) {
        for (int i = 0; i < held; i++) {
            Slot slot = slots[i];
            if (slot.charged < slot.target && slot.load.plan().collectMinute() < minute) {
                return true;
            }
        }
        return false;
    }

    /** What it draws in the next minute if it is fed. */
    double nextWatts() {
        double watts = 0;
        int active = 0;
        for (int i = 0; i < held && active < type.chargingAtOnce(); i++) {
            Slot slot = slots[i];
            if (slot.charged < slot.target) {
                watts += slot.curve.watts(slot.charged);
                active++;
            }
        }
        return watts;
    }

    /** Charges for one minute, up to {@code endMinute}. */
    void advance(int endMinute) {
        int active = 0;
        changed = true;
        for (int i = 0; i < held && active < type.chargingAtOnce(); i++) {
            Slot slot = slots[i];
            if (slot.charged < slot.target) {
                active++;
                slot.charged++;
                if (slot.charged == slot.target) {
                    slot.pack.setCharge(slot.curve.charge(slot.charged));
                    slot.load.noteReady(endMinute);
                    unfinished--;
                }
            }
        }
    }

    /** Minutes until the last pack is ready if it is fed all the time: the longest pack, or the sum shared out over the bays. */
    double remainingMinutes() {
        look();
        return remainingMinutes;
    }

    /** Watt-hours that all packs in the bays still need. */
    double missingWh() {
        look();
        return missingWh;
    }

    /** Looks into the bays, but only where something has changed: units ask every minute, and most chargers wait or are done. */
    private void look() {
        if (!changed) {
            return;
        }
        changed = false;
        int sum = 0;
        int longest = 0;
        missingWh = 0;
        for (int i = 0; i < held; i++) {
            Slot slot = slots[i];
            int left = slot.target - slot.charged;
            sum += left;
            longest = Math.max(longest, left);
            if (unfinished > 0) {
                missingWh += slot.curve.gridWh(slot.charged, slot.target);
            }
        }
        remainingMinutes = Math.max(longest, (double) sum / type.chargingAtOnce());
    }

    /** Takes out the packs of a load that are ready. */
    void collect(LoadRun load) {
        int kept = 0;
        changed = true;
        for (int i = 0; i < held; i++) {
            Slot slot = slots[i];
            if (slot.load == load && slot.charged >= slot.target) {
                slot.pack.shelf.putCharged(slot.pack, slot.target >= slot.curve.minutesToFull());
                load.noteCollected();
            } else {
                slots[i] = slots[kept];
                slots[kept++] = slot;
            }
        }
        held = kept;
    }

    /** Watt-hours that the packs of a load in the bays still need. */
    double missingWh(LoadRun load) {
        double wattHours = 0;
        for (int i = 0; i < held; i++) {
            Slot slot = slots[i];
            if (slot.load == load) {
                wattHours += slot.curve.gridWh(slot.charged, slot.target);
            }
        }
        return wattHours;
    }
}
