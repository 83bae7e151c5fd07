package depot.optimizer.model;

import depot.optimizer.mip.Expr;
import depot.optimizer.mip.MipModel;
import depot.optimizer.mip.Var;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.Slice;
import java.util.List;

/**
 * What it costs to run a kind of day as often as it occurs, and how much it wears the depot's packs; those of guests wear at their home. Fills {@link DayVars#recourseCost()} and
 * {@link DayVars#cycles()}.
 *
 * <ul>
 *   <li>energy of chargers that draw at once: price of the pack's two stages from the minute its turn begins, in the cheapest order of what a charger
 *       holds; where that has too many forms, the least price of the minutes at which the turn may begin
 *   <li>energy of chargers that wait: price of the slice
 *   <li>energy of power banks: mean price of the recharge after the crew's last return
 *   <li>shortage: its price per kWh
 * </ul>
 */
final class DayCosts implements DayRule {

    @Override
    public void add(MipModel model, DepotProblem problem, CapacityVars capacity, DayVars day) {
        double energyYears = day.kind().daysPerYear() * problem.money().electricityAnnuity();
        Expr cost = day.recourseCost();
        PlainPrice price = new PlainPrice(day.kind());
        for (Load load : day.allLoads()) {
            if (!load.batch().guests()) {
                day.cycles().get(load.pack()).add(day.kind().daysPerYear(), load.count());
            }
            if (!load.batch().waits() && !day.fillings().containsKey(load.batch())) {
                for (int r = 0; r < load.rounds().size(); r++) {
                    cost.add(
                            energyYears * leastPrice(day, load, r, price),
                            load.rounds().get(r));
                }
            }
        }
        day.fillings().values().stream()
                .flatMap(List::stream)
                .forEach(filling -> cost.add(energyYears * filling.energyCost(), filling.chargers()));
        for (Var[] circuit : day.energy()) {
            for (int s = 0; s < circuit.length; s++) {
                Slice slice = day.kind().slices().get(s);
                cost.add(energyYears * slice.pricePerKwh().doubleValue() / 1000, circuit[s]);
            }
        }
        for (TripVars trip : day.trips()) {
            addTrip(problem, day, trip, price, energyYears);
        }
    }

    /**
     * Least price of a pack in a turn. The packs before it may be of any kind in the span, so that the turn begins somewhere between that many of
     * the fastest and that many of the slowest; the least of these keeps the bound valid, and the plan's own cost is worked out from its order.
     */
    private static double leastPrice(DayVars day, Load load, int turn, PlainPrice price) {
        int fastest = load.minutes();
        int slowest = load.minutes();
        for (Load other : day.loads().get(load.batch())) {
            fastest = Math.min(fastest, other.minutes());
            slowest = Math.max(slowest, other.minutes());
        }
        int from = load.batch().from();
        double least = price.ofPack(load.fit(), load.level(), from + turn * slowest);
        for (int wait = turn * fastest; wait < turn * slowest; wait++) {
            least = Math.min(least, price.ofPack(load.fit(), load.level(), from + wait));
        }
        return least;
    }

    private static void addTrip(
            DepotProblem problem, DayVars day, TripVars trip, PlainPrice price, double energyYears) {
        Expr cost = day.recourseCost();
        double years = day.kind().daysPerYear() * problem.money().annuity();
        trip.shortWh().forEach(wh -> cost.add(years * problem.shortagePerKwh() / 1000, wh));
        for (RoadLoad road : trip.roads()) {
            day.cycles().get(trip.packIndex(road)).add(day.kind().daysPerYear(), road.packs());
            if (road.bank() >= 0) {
                int back = day.kind().lastReturn(trip.trip().crew());
                int minutes = problem.bankTypes().get(road.bank()).rechargeMinutes();
                double kwh = BankEnergy.takenWh(problem, road) / 1000;
                cost.add(energyYears * kwh * price.mean(back, back + minutes), road.packs());
            }
        }
    }
}
