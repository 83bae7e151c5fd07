package depot.optimizer.model;

import depot.optimizer.mip.Expr;
import depot.optimizer.mip.MipModel;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.scenario.Crew;

/**
 * What a vehicle carries on each trip.
 *
 * <ul>
 *   <li>sum of packs on board &lt;= pack places of the crew * electric[w]: a crew that stays on petrol takes none along for nothing
 *   <li>weight of packs, portable chargers and power banks &lt;= payload, in kg
 * </ul>
 */
final class VehicleLimits implements DayRule {

    @Override
    public void add(MipModel model, DepotProblem problem, CapacityVars capacity, DayVars day) {
        for (TripVars trip : day.trips()) {
            int w = trip.crew();
            Crew crew = problem.crews().get(w);
            Expr packs = new Expr().add(-1, capacity.relief.packPlaces(w));
            Expr weight = KitWeight.weight(problem, capacity, w).add(-1, capacity.relief.payloadKg(w));
            trip.carried().forEach(c -> {
                packs.add(1, c.count());
                weight.add(c.type().weightKg(), c.count());
            });
            String key = crew.id() + "_" + trip.trip().number() + "@" + day.tag();
            if (trip.electric() == null) {
                model.atMost("packPlaces_" + key, packs, crew.packPlaces());
            } else {
                model.atMost("packPlaces_" + key, packs.add(-crew.packPlaces(), trip.electric()), 0);
            }
            model.atMost("payload_" + key, weight, crew.payloadKg());
        }
    }
}
