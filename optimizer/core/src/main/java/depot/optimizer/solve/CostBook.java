package depot.optimizer.solve;

import depot.optimizer.finance.DepotCosts;
import depot.optimizer.finance.DepotPrices;
import depot.optimizer.plan.CostLine;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.problem.ChargerOption;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.DepotProblem.CircuitSite;
import depot.optimizer.problem.DepotProblem.MoveOffer;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Lists what a depot's plan costs over the horizon, line by line. */
final class CostBook {

    private CostBook() {}

    /**
     * What a plan costs; its own lines do not matter.
     *
     * @param phase number of its phase, from 1
     * @param before plan of the phase before
     */
    static List<CostLine> of(DepotProblem problem, int phase, DepotPlan plan, Optional<DepotPlan> before) {
        return DepotCosts.of(prices(problem), phase, plan, before).stream()
                .map(line -> line.costLine(problem.money()))
                .toList();
    }

    private static DepotPrices prices(DepotProblem problem) {
        return new DepotPrices(
                problem.depot(),
                problem.circuits().stream().map(CircuitSite::circuit).toList(),
                Stream.concat(problem.crews().stream(), problem.petrolOnly().stream())
                        .toList(),
                problem.packTypes(),
                Stream.concat(problem.chargers().stream(), problem.portableChargers().stream())
                        .map(ChargerOption::type)
                        .toList(),
                problem.unitTypes(),
                problem.bankTypes(),
                problem.seasons(),
                problem.tariff().standingPerDay(),
                problem.tariff().demandPricePerKwMonth(),
                problem.baseCostPerYear(),
                problem.moves().stream().collect(Collectors.toMap(MoveOffer::item, MoveOffer::cost)),
                problem.shortagePerKwh());
    }
}
