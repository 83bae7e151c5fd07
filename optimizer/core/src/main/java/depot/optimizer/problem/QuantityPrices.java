package depot.optimizer.problem;

import depot.optimizer.finance.FleetOutlays;
import depot.optimizer.finance.PresentCost;
import depot.optimizer.plan.FleetCost;
import depot.optimizer.scenario.Phase;
import depot.optimizer.scenario.PriceTier;
import depot.optimizer.scenario.Scenario;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * What quantity prices take off. All pieces of an item that the fleet buys in a phase cost the price of the tier that their number reaches; a piece is
 * worth at the end of the horizon by what was paid for it, so that what a price takes off is reduced alike.
 */
public final class QuantityPrices {

    private final Scenario scenario;

    /** Those of a scenario. */
    public QuantityPrices(Scenario scenario) {
        this.scenario = scenario;
    }

    /**
     * A tier of an item in a phase.
     *
     * @param off what a piece costs less than its own price, when it is paid
     * @param presentOff the same over the horizon
     */
    public record Tier(String phase, String item, int fromCount, double off, double presentOff) {

        /** What pieces at this tier take off. */
        public FleetCost cost(int pieces) {
            return new FleetCost(phase, FleetCost.Kind.QUANTITY_PRICE, item, pieces, off, -presentOff * pieces);
        }
    }

    /** The tiers that a limit of kind QUANTITY is about, by rising counts. */
    public List<Tier> tiers(SharedLimit limit) {
        Phase phase = scenario.coupling().phase(limit.phase());
        double price = price(limit.subject());
        double present = presentPerMoney(limit.subject(), PresentCost.of(scenario, phase));
        List<Tier> tiers = new ArrayList<>();
        for (PriceTier tier : scenario.coupling().priceTiers()) {
            if (tier.item().equals(limit.subject())) {
                double off = price - tier.price().doubleValue();
                tiers.add(new Tier(phase.id(), tier.item(), tier.fromCount(), off, off * present));
            }
        }
        return List.copyOf(tiers);
    }

    /** A piece that is bought only to reach a tier, at the item's own price: it is kept as new, and worth its price by its life at the end. */
    public FleetCost spare(SharedLimit limit, int pieces) {
        double price = price(limit.subject());
        return new FleetCost(
                limit.phase(),
                FleetCost.Kind.SPARE_PIECES,
                limit.subject(),
                pieces,
                price,
                sparePresentCost(limit) * pieces);
    }

    /** Present cost of one spare piece. */
    public double sparePresentCost(SharedLimit limit) {
        PresentCost money = PresentCost.of(scenario, scenario.coupling().phase(limit.phase()));
        return price(limit.subject()) * presentPerMoney(limit.subject(), money);
    }

    /** The item's own price. */
    public double price(String item) {
        return first(
                        scenario.packTypes().stream()
                                .filter(type -> type.id().equals(item))
                                .map(type -> type.price())
                                .toList(),
                        scenario.chargerTypes().stream()
                                .filter(type -> type.id().equals(item))
                                .map(type -> type.price())
                                .toList(),
                        scenario.sharingUnitTypes().stream()
                                .filter(type -> type.id().equals(item))
                                .map(type -> type.price())
                                .toList(),
                        scenario.powerBankTypes().stream()
                                .filter(type -> type.id().equals(item))
                                .map(type -> type.price())
                                .toList())
                .doubleValue();
    }

    @SafeVarargs
    private static BigDecimal first(List<BigDecimal>... prices) {
        for (List<BigDecimal> found : prices) {
            if (!found.isEmpty()) {
                return found.get(0);
            }
        }
        throw new IllegalArgumentException("no such item");
    }

    /** Present cost of one paid for a piece at its purchase: what it is worth at the end counts against it, unless another has followed by then. */
    private double presentPerMoney(String item, PresentCost money) {
        return FleetOutlays.of(scenario, item, 1).presentCost(money);
    }
}
