package depot.optimizer.model;

import depot.optimizer.mip.Expr;
import depot.optimizer.mip.MipModel;
import depot.optimizer.mip.Var;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.Visit.Service;

/**
 * What the depot gives to a visiting crew is charged on every day of the visit: for each service i of a guest, packs loaded for it = hosted[i].
 *
 * <p>Only in relaxations packs may be turned away instead, at the price of the energy that the crew would be short of.
 */
final class GuestLoads implements DayRule {

    private final ShortagePolicy policy;

    GuestLoads(ShortagePolicy policy) {
        this.policy = policy;
    }

    @Override
    public void add(MipModel model, DepotProblem problem, CapacityVars capacity, DayVars day) {
        int first = problem.pools().size();
        for (int i = 0; i < capacity.hosted.length; i++) {
            Service service = problem.guestServices().get(i);
            if (day.kind().guests().contains(service.visit())) {
                Expr packs = new Expr().add(-1, capacity.hosted[i]);
                for (Load load : day.allLoads()) {
                    if (load.pool() == first + i) {
                        packs.add(1, load.count());
                    }
                }
                if (policy == ShortagePolicy.RELAX) {
                    packs.add(1, turnedAway(model, problem, day, service, i));
                }
                model.equal("guest_" + i + "@" + day.tag(), packs, 0);
            }
        }
    }

    private static Var turnedAway(MipModel model, DepotProblem problem, DayVars day, Service service, int i) {
        Var packs = model.continuous("turnedAway_" + i + "@" + day.tag(), 0, MipModel.INFINITY);
        double kwh = service.charge().level().share()
                * problem.usableWh(service.charge().pack(), day.kind())
                / 1000;
        double years = day.kind().daysPerYear() * problem.money().annuity();
        day.recourseCost().add(years * problem.shortagePerKwh() * kwh, packs);
        return packs;
    }
}
