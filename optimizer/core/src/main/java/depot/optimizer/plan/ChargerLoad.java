package depot.optimizer.plan;

import java.util.List;

/**
 * One loading of one charger: packs go in at a handover and stay until a later one.
 *
 * @param charger id of the charger in its depot
 * @param loadMinute handover at which the packs go in
 * @param collectMinute handover from which they may be taken
 * @param packs in the order in which they charge
 */
public record ChargerLoad(String charger, int loadMinute, int collectMinute, List<Loaded> packs) {

    /**
     * Packs of one type, pool and level next to each other in the charging order.
     *
     * @param pool the depot, one of its crews, or a crew of another depot that visits it
     */
    public record Loaded(String packType, String pool, Level level, int count) {

        /** Whether others differ in their number at most. */
        public boolean sameKind(Loaded other) {
            return packType.equals(other.packType) && pool.equals(other.pool) && level == other.level;
        }
    }

    /** How far a pack is charged before it is taken. */
    public enum Level {
        /** To 80 % of its energy. */
        EIGHTY,
        /** To the full. */
        FULL
    }
}
