package depot.optimizer.replay;

import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.FleetCost;
import depot.optimizer.plan.Plan;
import depot.optimizer.replay.Violation.Kind;
import depot.optimizer.scenario.PriceTier;
import depot.optimizer.scenario.Scenario;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/** What the fleet pays beside its depots, worked out again: quantity prices that are reached, spare pieces, and the whole cost. */
final class FleetCosts {

    private static final BigDecimal CENT = new BigDecimal("0.01");
    private static final BigDecimal SHARE = new BigDecimal("1e-9");

    private final Scenario scenario;
    private final Plan plan;
    private final PhaseSpending spending;
    private final Violations violations;

    FleetCosts(Scenario scenario, Plan plan, PhaseSpending spending, Violations violations) {
        this.scenario = scenario;
        this.plan = plan;
        this.spending = spending;
        this.violations = violations;
    }

    void check() {
        plan.fleetCosts().forEach(this::check);
        BigDecimal total = BigDecimal.ZERO;
        for (DepotPlan depot : plan.depots()) {
            total = total.add(BigDecimal.valueOf(depot.stop().certificate().cost()));
        }
        for (FleetCost cost : plan.fleetCosts()) {
            total = total.add(BigDecimal.valueOf(cost.presentCost()));
        }
        BigDecimal said = BigDecimal.valueOf(plan.certificate().cost());
        if (!close(total, said, plan.depots().size() + 1)) {
            violations.add(
                    Kind.COST,
                    "cost",
                    total.doubleValue(),
                    said.doubleValue(),
                    "depots and fleet together cost " + cents(total) + ", the certificate says " + cents(said));
        }
    }

    private void check(FleetCost cost) {
        QuantityWorth worth = QuantityWorth.of(scenario, cost.item());
        BigDecimal price = worth.price();
        if (!worth.known()) {
            violations.missing("item", cost.item(), "the fleet's costs");
            return;
        }
        BigDecimal perPiece = price;
        if (cost.kind() == FleetCost.Kind.QUANTITY_PRICE) {
            Optional<PriceTier> tier = tier(cost);
            if (tier.isEmpty()) {
                violations.add(
                        Kind.QUANTITY_PRICE,
                        cost.item(),
                        cost.pieces() + " " + cost.item() + " in " + cost.phase()
                                + " do not reach a quantity price that" + " takes " + cost.price() + " off");
                return;
            }
            perPiece = price.subtract(tier.get().price()).negate();
        }
        BigDecimal present = perPiece.multiply(BigDecimal.valueOf(cost.pieces()))
                .multiply(
                        worth.presentPerMoney(
                                DecimalMoney.of(scenario, scenario.coupling().phase(cost.phase()))),
                        DecimalMoney.DIGITS);
        if (!close(present, BigDecimal.valueOf(cost.presentCost()), 1)) {
            violations.add(
                    Kind.COST,
                    cost.item(),
                    cost.presentCost(),
                    present.doubleValue(),
                    "the fleet's line for " + cost.item() + " in " + cost.phase() + " comes to " + cents(present)
                            + ", not " + cents(BigDecimal.valueOf(cost.presentCost())));
        }
    }

    /** The tier with the price that the line says, if the phase buys enough for it. */
    private Optional<PriceTier> tier(FleetCost cost) {
        int spare = plan.fleetCosts().stream()
                .filter(other -> other.kind() == FleetCost.Kind.SPARE_PIECES
                        && other.phase().equals(cost.phase())
                        && other.item().equals(cost.item()))
                .mapToInt(FleetCost::pieces)
                .sum();
        int bought = spending.bought(cost.phase(), cost.item()) + spare;
        return scenario.coupling().priceTiers().stream()
                .filter(tier -> tier.item().equals(cost.item())
                        && tier.fromCount() <= bought
                        && cost.pieces() <= bought
                        && close(
                                QuantityWorth.of(scenario, cost.item()).price().subtract(tier.price()),
                                BigDecimal.valueOf(cost.price()),
                                1))
                .findFirst();
    }

    private static boolean close(BigDecimal a, BigDecimal b, int lines) {
        BigDecimal allowed =
                CENT.multiply(BigDecimal.valueOf(lines)).max(a.abs().multiply(SHARE));
        return a.subtract(b).abs().compareTo(allowed) <= 0;
    }

    private static String cents(BigDecimal amount) {
        return amount.setScale(2, RoundingMode.HALF_EVEN).toPlainString();
    }
}
