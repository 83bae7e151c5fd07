package depot.optimizer.model;

import depot.optimizer.mip.Expr;
import depot.optimizer.mip.MipModel;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.DepotProblem.CircuitSite;
import depot.optimizer.problem.Electricity;
import depot.optimizer.problem.Slice;
import depot.optimizer.scenario.Depot;

/**
 * The supply carries, in every slice s, the plate load of everything on plain circuits, what the units draw, and the base load.
 *
 * <p>sum over k of (sum of W[c] plain[k,c] + sum of W[b] bankPlugs[k,b]) / pf[k] + sum over k of energy[k,s] / (hours[s] pf[k]) + D[c] of
 * priority batches in progress / lowest pf + base[s] &lt;= 0.8 VA per ampere (supply amps + upgrade amps), in VA.
 */
final class SupplyLimit implements DayRule {

    private final Tightening tightening;

    SupplyLimit(Tightening tightening) {
        this.tightening = tightening;
    }

    @Override
    public void add(MipModel model, DepotProblem problem, CapacityVars capacity, DayVars day) {
        Depot depot = problem.depot();
        double vaPerAmp =
                Electricity.SUPPLY_CONTINUOUS_FACTOR * Electricity.vaPerAmp(depot.supplyVolts(), depot.supplyPhases());
        for (int s = 0; s < day.kind().slices().size(); s++) {
            Slice slice = day.kind().slices().get(s);
            Expr va = new Expr();
            for (int k = 0; k < problem.circuits().size(); k++) {
                addPlate(va, problem, capacity, k);
                if (day.energy().length > 0) {
                    double pf = problem.circuits().get(k).circuit().powerFactor();
                    va.add(1 / (slice.hours() * pf * tightening.depotShare()), day.energy()[k][s]);
                }
            }
            va.add(1 / lowestPowerFactor(problem), SharedEnergy.drawnAtOnce(problem, day, slice));
            addGrowth(va, problem, capacity);
            model.atMost(
                    "supply_" + slice.fromMinute() + "@" + day.tag(),
                    va,
                    Math.max(0, vaPerAmp * depot.supplyAmps() - slice.supplyBaseVa()));
        }
    }

    private static double lowestPowerFactor(DepotProblem problem) {
        return problem.circuits().stream()
                .mapToDouble(site -> site.circuit().powerFactor())
                .min()
                .orElse(1);
    }

    /** Usable volt-amperes of one ampere of the supply's rating. */
    static double usableVaPerAmp(Depot depot) {
        return Electricity.SUPPLY_CONTINUOUS_FACTOR * Electricity.vaPerAmp(depot.supplyVolts(), depot.supplyPhases());
    }

    /** Takes off what a bigger supply would add, in VA. */
    static void addGrowth(Expr va, DepotProblem problem, CapacityVars capacity) {
        Depot depot = problem.depot();
        double step = depot.upgradeOffered() ? depot.supplyUpgradeAmps() - depot.supplyAmps() : 0;
        va.add(-usableVaPerAmp(depot) * step, capacity.upgrade);
        va.add(-usableVaPerAmp(depot), capacity.relief.supplyAmps());
    }

    /** Adds the plate load of everything on a plain circuit, in VA. */
    static void addPlate(Expr va, DepotProblem problem, CapacityVars capacity, int k) {
        CircuitSite site = problem.circuits().get(k);
        double pf = site.circuit().powerFactor();
        for (int c = 0; c < problem.chargers().size(); c++) {
            va.add(problem.chargers().get(c).type().plateWatts() / pf, capacity.plain[k][c]);
        }
        for (int b = 0; b < problem.bankTypes().size(); b++) {
            va.add(problem.bankTypes().get(b).rechargeWatts() / pf, capacity.bankPlugs[k][b]);
        }
    }
}
