package depot.optimizer.plan;

import java.util.List;

/**
 * One trip of a crew: from leaving its depot to coming back.
 *
 * @param trip number within the crew's day, from 1
 * @param leaveMinute as in the route, not rounded
 * @param returnMinute as in the route, not rounded
 * @param carried packs on board when it leaves
 * @param roadCharges packs recharged on the way, in order of time
 * @param shortages energy that the plan does not cover
 */
public record TripPlan(
        String crew,
        int trip,
        int leaveMinute,
        int returnMinute,
        List<Carried> carried,
        List<RoadCharge> roadCharges,
        List<Shortage> shortages) {

    /** Packs of one type on board: {@code full} of them full, {@code at80} charged to 80 %. */
    public record Carried(String packType, int full, int at80) {}

    /**
     * Packs that were empty by {@code fromMinute}, full again by {@code toMinute}, and used only after that.
     *
     * @param source where the power comes from
     * @param afterStop stop whose work emptied them (SITE and visits: the stop at which they charge)
     * @param beforeStop first stop whose work they serve
     * @param chargerType of the crew's own portable charger; empty on a visit
     */
    public record RoadCharge(
            RoadSource source,
            int afterStop,
            int beforeStop,
            int fromMinute,
            int toMinute,
            String chargerType,
            String packType,
            int packs) {}

    /** Watt-hours of one pack family that the packs do not cover on the planned day. */
    public record Shortage(String family, double wattHours) {}

    /** Where a pack is recharged on the way. */
    public enum RoadSource {
        /** Mains on site. */
        SITE,
        /** The crew's vehicle. */
        VEHICLE,
        /** A power bank that the crew carries. */
        BANK,
        /** A bay of another depot that the crew visits, to the full. */
        VISIT,
        /** A bay of another depot that the crew visits, to 80 %. */
        VISIT_EIGHTY;

        /** Whether another depot charges them. */
        public boolean atAnotherDepot() {
            return this == VISIT || this == VISIT_EIGHTY;
        }

        /** Whether they charge at the stop that the charge names, and not after it. */
        public boolean atStop() {
            return this == SITE || atAnotherDepot();
        }
    }
}
