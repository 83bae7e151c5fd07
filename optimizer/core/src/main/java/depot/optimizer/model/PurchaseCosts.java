package depot.optimizer.model;

import depot.optimizer.finance.PresentCost;
import depot.optimizer.mip.Expr;
import depot.optimizer.mip.MipModel;
import depot.optimizer.mip.Var;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.scenario.ChargerType;
import depot.optimizer.scenario.Crew;
import depot.optimizer.scenario.PackType;
import depot.optimizer.scenario.PowerBankType;
import depot.optimizer.scenario.Season;
import depot.optimizer.scenario.SharingUnitType;
import java.math.BigDecimal;

/**
 * Present cost of what is bought and of what is paid whatever the days bring.
 *
 * <p>Of each item the first pieces are those owned already: bought &gt;= pieces - owned. A bought piece costs its whole life's present cost, an owned
 * one only what follows its first purchase.
 */
final class PurchaseCosts implements CapacityRule {

    @Override
    public void add(MipModel model, DepotProblem problem, CapacityVars capacity) {
        addChargers(model, problem, capacity);
        addUnits(model, problem, capacity);
        addPacks(model, problem, capacity);
        addKits(model, problem, capacity);
        for (int k = 0; k < problem.circuits().size(); k++) {
            model.cost(problem.circuits().get(k).circuit().installCost().doubleValue(), capacity.built[k]);
        }
        model.cost(problem.depot().supplyUpgradeCost().doubleValue(), capacity.upgrade);
        addPetrol(model, problem, capacity);
        double annuity = problem.money().electricityAnnuity();
        for (int s = 0; s < capacity.peak.length; s++) {
            Season season = problem.seasons().get(s);
            double months = PresentCost.months(season.weeksPerYear());
            model.cost(problem.tariff().demandPricePerKwMonth() * months * annuity, capacity.peak[s]);
        }
        model.cost(problem.tariff().standingPerDay() * 365.25 * annuity);
        model.cost(problem.crewBaseCostPerYear() * problem.money().annuity());
    }

    /** A crew that stays on petrol pays for it every year. */
    private static void addPetrol(MipModel model, DepotProblem problem, CapacityVars capacity) {
        for (int w = 0; w < problem.crews().size(); w++) {
            Crew crew = problem.crews().get(w);
            if (problem.petrolChoice().contains(crew.id())) {
                double petrol =
                        crew.petrolCostPerYear().doubleValue() * problem.money().annuity();
                model.cost(petrol);
                model.cost(-petrol, capacity.electric[w]);
            }
        }
    }

    private static void addChargers(MipModel model, DepotProblem problem, CapacityVars capacity) {
        for (int c = 0; c < problem.chargers().size(); c++) {
            ChargerType type = problem.chargers().get(c).type();
            Expr pieces = new Expr();
            for (int k = 0; k < problem.circuits().size(); k++) {
                pieces.add(1, capacity.plain[k][c]).add(1, capacity.shared[k][c]);
            }
            addItem(
                    model,
                    "chargers_" + type.id(),
                    pieces,
                    problem.ownedCount(type.id(), ""),
                    LifeCost.of(problem, type.price(), type.installCost(), type.lifeYears()));
        }
    }

    private static void addUnits(MipModel model, DepotProblem problem, CapacityVars capacity) {
        for (int u = 0; u < problem.unitTypes().size(); u++) {
            SharingUnitType type = problem.unitTypes().get(u);
            Expr pieces = new Expr();
            for (Var[] circuit : capacity.unit) {
                pieces.add(1, circuit[u]);
            }
            addItem(
                    model,
                    "units_" + type.id(),
                    pieces,
                    problem.ownedCount(type.id(), ""),
                    LifeCost.of(problem, type.price(), type.installCost(), type.lifeYears()));
        }
    }

    private static void addPacks(MipModel model, DepotProblem problem, CapacityVars capacity) {
        for (int q = 0; q < capacity.packs.length; q++) {
            String pool = problem.pools().get(q);
            String owner = pool.equals(problem.depot().id()) ? "" : pool;
            for (int p = 0; p < capacity.packs[q].length; p++) {
                PackType type = problem.packTypes().get(p);
                double bought = problem.money().stockedPack(type.price().doubleValue());
                addItem(
                        model,
                        "packs_" + pool + "_" + type.id(),
                        new Expr().add(1, capacity.packs[q][p]),
                        problem.ownedCount(type.id(), owner),
                        new LifeCost(bought, 0));
            }
        }
    }

    private static void addKits(MipModel model, DepotProblem problem, CapacityVars capacity) {
        for (int w = 0; w < problem.crews().size(); w++) {
            String crew = problem.crews().get(w).id();
            for (int t = 0; t < capacity.kit[w].length; t++) {
                ChargerType type = problem.portableChargers().get(t).type();
                addItem(
                        model,
                        "kit_" + crew + "_" + type.id(),
                        new Expr().add(1, capacity.kit[w][t]),
                        problem.ownedCount(type.id(), crew),
                        LifeCost.of(problem, type.price(), type.installCost(), type.lifeYears()));
            }
            for (int b = 0; b < capacity.banks[w].length; b++) {
                PowerBankType type = problem.bankTypes().get(b);
                addItem(
                        model,
                        "banks_" + crew + "_" + type.id(),
                        new Expr().add(1, capacity.banks[w][b]),
                        problem.ownedCount(type.id(), crew),
                        LifeCost.of(problem, type.price(), BigDecimal.ZERO, type.lifeYears()));
            }
        }
    }

    /**
     * Present cost of one piece.
     *
     * @param bought of a piece that is bought now
     * @param owned of a piece that is there already
     */
    private record LifeCost(double bought, double owned) {

        static LifeCost of(DepotProblem problem, BigDecimal price, BigDecimal install, double lifeYears) {
            return new LifeCost(
                    problem.money().newPiece(price.doubleValue(), install.doubleValue(), lifeYears),
                    problem.money().ownedPiece(price.doubleValue(), lifeYears));
        }
    }

    private static void addItem(MipModel model, String key, Expr pieces, int owned, LifeCost cost) {
        Var bought = model.continuous("bought_" + key, 0, MipModel.INFINITY);
        model.cost(cost.bought() - cost.owned(), bought);
        model.cost(cost.owned(), pieces);
        model.atMost("owned_" + key, new Expr().add(1, pieces).add(-1, bought), owned);
    }
}
