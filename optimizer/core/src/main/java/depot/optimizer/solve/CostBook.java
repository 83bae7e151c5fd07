package depot.optimizer.solve;

import depot.optimizer.finance.DepotCosts;
import depot.optimizer.finance.DepotPrices;
import depot.optimizer.plan.CostLine;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.problem.ChargerOption;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.DepotProblem.CircuitSite;
import java.util.List;
import java.util.stream.Stream;

/** Lists what a depot's plan costs over the horizon, line by line. */
final class CostBook {

    private CostBook() {}

    /** What a plan costs; its own lines do not matter. */
    static List<CostLine> of(DepotProblem problem, DepotPlan plan) {
        return DepotCosts.of(prices(problem), plan).stream()
                .map(line -> line.costLine(problem.money()))
                .toList();
    }

    private static DepotPrices prices(DepotProblem problem) {
        return new DepotPrices(
                problem.depot(),
                problem.circuits().stream().map(CircuitSite::circuit).toList(),
                problem.crews(),
                problem.packTypes(),
                Stream.concat(problem.chargers().stream(), problem.portableChargers().stream())
                        .map(ChargerOption::type)
                        .toList(),
                problem.unitTypes(),
                problem.bankTypes(),
                problem.seasons(),
                problem.tariff().standingPerDay(),
                problem.tariff().demandPricePerKwMonth(),
                problem.crewBaseCostPerYear(),
                problem.shortagePerKwh());
    }
}
