package depot.optimizer.model;

import depot.optimizer.mip.Var;
import depot.optimizer.plan.TripPlan.RoadSource;
import depot.optimizer.problem.ChargeLevel;
import depot.optimizer.problem.ChargerOption;
import depot.optimizer.problem.ChargerOption.Fit;
import depot.optimizer.problem.Visit;
import depot.optimizer.problem.Visit.Service;

/**
 * Packs recharged on the way.
 *
 * @param emptiedBy index of the last stop whose work has emptied them
 * @param servesFrom index of the first stop whose work they serve
 * @param bank index of the power-bank type, -1 for all other sources
 * @param portable index of the portable charger type, -1 on a visit
 * @param option the portable charger; null on a visit
 * @param fit the pack type, on a visit without times
 * @param slots packs that one portable charger holds and fills
 * @param chargers portable chargers used; null on a visit
 * @param packs packs filled
 * @param service index of what the host of a visit gives, {@link #NO_SERVICE} for all other sources
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
        Var packs,
        int service) {

    /** Nothing that another depot gives. */
    static final int NO_SERVICE = -1;

    /**
     * Packs charged at another depot.
     *
     * @param index of the service
     * @param stop place of the visit in the trip
     */
    static RoadLoad ofVisit(Service service, int index, int stop, Var packs) {
        RoadSource source = service.charge().level() == ChargeLevel.FULL ? RoadSource.VISIT : RoadSource.VISIT_EIGHTY;
        Fit fit = new Fit(service.charge().pack(), 0, 0, 0);
        Visit visit = service.visit();
        return new RoadLoad(
                source,
                stop - 1,
                stop + 1,
                visit.arrival(),
                visit.departure(),
                -1,
                -1,
                null,
                fit,
                0,
                null,
                packs,
                index);
    }

    boolean visit() {
        return service != NO_SERVICE;
    }

    /** Share of a pack's energy that the load gives. */
    double share() {
        return source == RoadSource.VISIT_EIGHTY ? ChargeLevel.EIGHTY.share() : ChargeLevel.FULL.share();
    }
}
