package depot.optimizer.model;

import depot.optimizer.mip.Expr;
import depot.optimizer.mip.Var;
import depot.optimizer.problem.ChargeLevel;
import depot.optimizer.problem.ChargerOption.Fit;
import java.util.List;

/**
 * Packs of one type and pool, loaded into one batch and brought to one level.
 *
 * @param batch where and when
 * @param pool index of the pool, or after the pools that of a guest's service
 * @param pack index of the pack type
 * @param slots packs of this kind that one charger of the batch can hold
 * @param rounds packs by their turn on the charger; a single variable where turns cost the same
 */
record Load(BatchSpan batch, PackKind kind, int pool, int pack, int slots, List<Var> rounds) {

    /** All packs of the load. */
    Expr count() {
        return Expr.sum(rounds);
    }

    Fit fit() {
        return kind.fit();
    }

    ChargeLevel level() {
        return kind.level();
    }

    /** Energy from the mains for one of them, in Wh. */
    double gridWh() {
        return fit().gridWh(level());
    }

    /** Minutes that one of them takes. */
    int minutes() {
        return kind.minutes();
    }
}
