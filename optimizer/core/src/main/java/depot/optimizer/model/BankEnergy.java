package depot.optimizer.model;

import depot.optimizer.problem.DepotProblem;

/** What power banks give and take. */
final class BankEnergy {

    private BankEnergy() {}

    /** Energy that one recharged pack takes from the store, in Wh: the charger's input over the bank's efficiency. */
    static double takenWh(DepotProblem problem, RoadLoad road) {
        return road.fit().gridWh() / problem.bankTypes().get(road.bank()).efficiency();
    }
}
