package depot.optimizer.model;

import depot.optimizer.mip.Var;
import depot.optimizer.plan.TripPlan.RoadSource;
import depot.optimizer.problem.ChargerOption;
import depot.optimizer.problem.ChargerOption.Fit;

/**
 * Packs recharged on the way.
 *
 * @param emptiedBy index of the last stop whose work has emptied them
 * @param servesFrom index of the first stop whose work they serve
 * @param bank index of the power-bank type, -1 for mains and vehicle
 * @param portable index of the portable charger type
 * @param slots packs that one charger holds and fills
 * @param chargers chargers used
 * @param packs packs filled
 */
record RoadLoad(
        RoadSource source,
        int emptiedBy,
        int servesFrom,
        int from,
        int to,
        int bank,
        int portable,
        ChargerOption option,
        Fit fit,
        int slots,
        Var chargers,
        Var packs) {}
