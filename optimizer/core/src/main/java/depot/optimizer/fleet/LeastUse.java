package depot.optimizer.fleet;

import depot.optimizer.fleet.DepotPricing.Question;
import depot.optimizer.fleet.NothingFitsException.TooSmall;
import depot.optimizer.problem.SharedLimit;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.solve.SharedPrices;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The smallest budgets that would do, each by itself: what plans spend when spending is nearly all that counts. */
final class LeastUse {

    /** Price of a unit of money at which nothing else counts beside it; more would make the model's numbers ill-conditioned. */
    private static final double NEARLY_ALL = 1000;

    private final Scenario scenario;
    private final List<SharedLimit> limits;
    private final DepotPricing pricing;
    private final FleetBound bounds;
    private final int depots;

    LeastUse(Scenario scenario, List<SharedLimit> limits, DepotPricing pricing, FleetBound bounds) {
        depots = scenario.depots().size();
        this.scenario = scenario;
        this.limits = limits;
        this.pricing = pricing;
        this.bounds = bounds;
    }

    /** Which budgets are too small, with the smallest that would do. */
    NothingFitsException explained() {
        List<String> words = new ArrayList<>();
        List<TooSmall> tooSmall = new ArrayList<>();
        for (SharedLimit limit : limits) {
            if (limit.kind() == SharedLimit.Kind.BUDGET || limit.kind() == SharedLimit.Kind.REGION_BUDGET) {
                double least = leastOf(limit);
                if (least > limit.most()) {
                    tooSmall.add(new TooSmall(limit, least));
                    words.add("%s is %s %s, and no plan does with less than %s"
                            .formatted(
                                    limit.name(),
                                    whole(limit.most(), RoundingMode.FLOOR),
                                    scenario.currency().getCurrencyCode(),
                                    whole(least, RoundingMode.CEILING)));
                }
            }
        }
        return new NothingFitsException(
                words.isEmpty()
                        ? "no plan was found that keeps all of these together: " + names()
                        : String.join("; ", words),
                tooSmall);
    }

    private double leastOf(SharedLimit limit) {
        Map<SharedLimit, Double> prices = new LinkedHashMap<>();
        prices.put(limit, NEARLY_ALL);
        double sum = 0;
        List<Question> questions = new ArrayList<>();
        for (int d = 0; d < depots; d++) {
            questions.add(new Question(d, bounds.valid(new SharedPrices(prices)), 0, Map.of()));
        }
        for (ProvenDepot depot : pricing.plans(questions)) {
            sum += depot.rollout().use().getOrDefault(limit, 0.0);
        }
        return sum;
    }

    private String names() {
        return String.join(", ", limits.stream().map(SharedLimit::name).toList());
    }

    private static String whole(double amount, RoundingMode mode) {
        return BigDecimal.valueOf(amount).setScale(0, mode).toPlainString();
    }
}
