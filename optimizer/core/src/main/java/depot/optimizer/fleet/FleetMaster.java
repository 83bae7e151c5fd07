package depot.optimizer.fleet;

import depot.optimizer.mip.Engine;
import depot.optimizer.mip.Expr;
import depot.optimizer.mip.Limits;
import depot.optimizer.mip.MipModel;
import depot.optimizer.mip.Outcome;
import depot.optimizer.mip.Var;
import depot.optimizer.plan.FleetCost;
import depot.optimizer.problem.QuantityPrices;
import depot.optimizer.problem.SharedLimit;
import depot.optimizer.problem.SharedLimit.Kind;
import depot.optimizer.solve.QuantityRows;
import depot.optimizer.solve.SharedPrices;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Chooses one column for each depot so that together they keep the shared limits at least cost (the master of Dantzig and Wolfe 1960, from memory).
 *
 * <p>Variables: weight of a column; pieces bought at a tier; 1 if a tier is reached; spare pieces; how far a limit is exceeded. Rows: the weights of a
 * depot add up to 1; use of a limit, reductions and spare pieces counted, is at most the limit; the pieces at tiers are at most those bought; those
 * at a tier are at least its count.
 */
final class FleetMaster {

    private final List<SharedLimit> limits;
    private final QuantityPrices quantities;
    private final int depots;
    private final double penalty;
    private final Map<SharedLimit, Double> shares;

    /**
     * @param depots how many there are
     * @param penalty cost of exceeding a limit by one unit, in a first search for prices
     * @param shares what the depots have of each limit; all of it where none is given
     */
    FleetMaster(
            List<SharedLimit> limits,
            QuantityPrices quantities,
            int depots,
            double penalty,
            Map<SharedLimit, Double> shares) {
        this.shares = shares;
        this.limits = limits;
        this.quantities = quantities;
        this.depots = depots;
        this.penalty = penalty;
    }

    /**
     * Prices from the linear relaxation.
     *
     * @param weights of the columns, in their order
     */
    record Relaxed(double objective, SharedPrices prices, double[] weights) {}

    /** The chosen columns, one for each depot in order, and what the fleet pays beside them. */
    record Choice(double cost, List<FleetColumn> columns, List<FleetCost> fleetCosts) {}

    private final class Program {
        private final MipModel model = new MipModel("fleet");
        private final List<Var> weights = new ArrayList<>();
        private final Map<SharedLimit, Integer> rows = new LinkedHashMap<>();
        private final Map<SharedLimit, Expr> uses = new LinkedHashMap<>();
        private final QuantityRows tiers = new QuantityRows(model, quantities);

        private Program(List<FleetColumn> columns, boolean elastic) {
            limits.forEach(limit -> uses.put(limit, new Expr()));
            List<Expr> ones = new ArrayList<>();
            for (int d = 0; d < depots; d++) {
                ones.add(new Expr());
            }
            for (int c = 0; c < columns.size(); c++) {
                FleetColumn column = columns.get(c);
                Var weight = model.integer("w" + c, 0, 1);
                weights.add(weight);
                model.cost(column.cost(), weight);
                ones.get(column.depot()).add(1, weight);
                limits.forEach(limit -> uses.get(limit).add(column.use(limit), weight));
            }
            limits.stream()
                    .filter(limit -> limit.kind() == Kind.QUANTITY)
                    .forEach(limit -> tiers.add(limit, mostPieces(limit), uses));
            for (int d = 0; d < depots; d++) {
                model.equal("depot" + d, ones.get(d), 1);
            }
            for (SharedLimit limit : limits) {
                addLimit(limit, elastic);
            }
        }

        private double mostPieces(SharedLimit limit) {
            double most = 0;
            for (int d = 0; d < depots; d++) {
                most += mostOfDepot.getOrDefault(d, Map.of()).getOrDefault(limit, 0.0);
            }
            return most;
        }

        private void addLimit(SharedLimit limit, boolean elastic) {
            Expr use = uses.get(limit);
            if (elastic) {
                Var over = model.continuous("over " + limit.name(), 0, MipModel.INFINITY);
                model.cost(scale(limit), over);
                use.add(-1, over);
                if (limit.equation()) {
                    Var under = model.continuous("under " + limit.name(), 0, MipModel.INFINITY);
                    model.cost(scale(limit), under);
                    use.add(1, under);
                }
            }
            if (use.isEmpty()) {
                return;
            }
            rows.put(limit, model.rowCount());
            double most = limit.most() * shares.getOrDefault(limit, 1.0);
            if (limit.equation()) {
                model.equal(limit.name(), use, most);
            } else {
                model.atMost(limit.name(), use, most);
            }
        }
    }

    private final Map<Integer, Map<SharedLimit, Double>> mostOfDepot = new LinkedHashMap<>();

    private double scale(SharedLimit limit) {
        return switch (limit.kind()) {
            case BUDGET, REGION_BUDGET -> penalty;
            case DELIVERY, QUANTITY, MOVES -> penalty * quantities.price(limit.subject());
            case CREW -> penalty * 10_000;
            case VISIT -> penalty * 100;
        };
    }

    private void noteMost(List<FleetColumn> columns) {
        for (FleetColumn column : columns) {
            Map<SharedLimit, Double> most = mostOfDepot.computeIfAbsent(column.depot(), d -> new LinkedHashMap<>());
            for (SharedLimit limit : limits) {
                if (limit.kind() == Kind.QUANTITY) {
                    most.merge(limit, -column.use(limit), Math::max);
                }
            }
        }
    }

    /** The linear relaxation; limits may be exceeded at a penalty, so that it always has prices. */
    Relaxed relax(List<FleetColumn> columns) {
        noteMost(columns);
        Program program = new Program(columns, true);
        Outcome outcome = Engine.SIMPLEX.solve(program.model, new Limits(0, 1, 600, 1));
        if (!outcome.hasPoint()) {
            throw new IllegalStateException("the fleet's master has no optimum: " + outcome.stop());
        }
        Map<SharedLimit, Double> prices = new LinkedHashMap<>();
        program.rows.forEach((limit, row) -> {
            double price = -outcome.duals()[row];
            prices.put(limit, limit.equation() ? price : Math.max(0, price));
        });
        double[] weights = program.weights.stream().mapToDouble(outcome::value).toArray();
        return new Relaxed(outcome.objective(), new SharedPrices(prices), weights);
    }

    /** The best choice in whole numbers; empty where no choice keeps the limits, or none was found. */
    Optional<Choice> choose(List<FleetColumn> columns, Limits work) {
        noteMost(columns);
        Program program = new Program(columns, false);
        Outcome outcome = Engine.BRANCH_AND_CUT.solve(program.model, work);
        if (!outcome.hasPoint()) {
            return Optional.empty();
        }
        FleetColumn[] chosen = new FleetColumn[depots];
        double cost = 0;
        for (int c = 0; c < columns.size(); c++) {
            if (outcome.count(program.weights.get(c)) == 1) {
                chosen[columns.get(c).depot()] = columns.get(c);
                cost += columns.get(c).cost();
            }
        }
        List<FleetCost> costs = program.tiers.costs(outcome);
        cost += costs.stream().mapToDouble(FleetCost::presentCost).sum();
        return Optional.of(new Choice(cost, List.of(chosen), List.copyOf(costs)));
    }
}
