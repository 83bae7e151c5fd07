package depot.optimizer.solve;

import depot.optimizer.mip.Expr;
import depot.optimizer.mip.MipModel;
import depot.optimizer.mip.Outcome;
import depot.optimizer.mip.Var;
import depot.optimizer.plan.FleetCost;
import depot.optimizer.problem.QuantityPrices;
import depot.optimizer.problem.QuantityPrices.Tier;
import depot.optimizer.problem.SharedLimit;
import depot.optimizer.problem.SharedLimit.Kind;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Quantity prices in a model of the fleet. For an item i in a phase f with tiers t: pieces[t] are bought at the tier's price, at[t] is 1 if it is
 * reached, spare pieces are bought only to reach it.
 *
 * <ul>
 *   <li>from[t] at[t] &lt;= pieces[t] &lt;= most at[t]; sum of at[t] &lt;= 1
 *   <li>sum of pieces[t] &lt;= bought by the depots + spare (the row of the limit)
 *   <li>the fleet's budget of the phase pays the reduced price, and the spare pieces; they count in the limit of delivery. A region's budget counts
 *       the item's own price, since its share of a reduction is not known.
 * </ul>
 */
public final class QuantityRows {

    private final MipModel model;
    private final QuantityPrices quantities;
    private final Map<SharedLimit, Map<Tier, Var>> pieces = new LinkedHashMap<>();
    private final Map<SharedLimit, Var> spares = new LinkedHashMap<>();

    /** Rows for a model. */
    public QuantityRows(MipModel model, QuantityPrices quantities) {
        this.model = model;
        this.quantities = quantities;
    }

    /**
     * Adds the tiers of an item in a phase.
     *
     * @param most pieces that the depots can buy
     * @param uses what is used of each limit so far; reductions and spare pieces are added
     */
    public void add(SharedLimit limit, double most, Map<SharedLimit, Expr> uses) {
        Map<Tier, Var> ofLimit = new LinkedHashMap<>();
        Expr all = new Expr();
        Expr chosen = new Expr();
        Optional<Expr> budget = of(Kind.BUDGET, limit, "", uses);
        for (Tier tier : quantities.tiers(limit)) {
            String key = limit.name() + " from " + tier.fromCount();
            Var bought = model.integer("pieces " + key, 0, Math.rint(most) + tier.fromCount());
            Var at = model.integer("at " + key, 0, 1);
            model.cost(-tier.presentOff(), bought);
            all.add(1, bought);
            chosen.add(1, at);
            model.atLeast("least " + key, new Expr().add(1, bought).add(-tier.fromCount(), at), 0);
            model.atMost("most " + key, new Expr().add(1, bought).add(-most - tier.fromCount(), at), 0);
            budget.ifPresent(use -> use.add(-tier.off(), bought));
            ofLimit.put(tier, bought);
        }
        model.atMost("one tier of " + limit.name(), chosen, 1);
        Var spare = model.integer("spare " + limit.name(), 0, 9999);
        model.cost(quantities.sparePresentCost(limit), spare);
        budget.ifPresent(use -> use.add(quantities.price(limit.subject()), spare));
        of(Kind.DELIVERY, limit, limit.subject(), uses).ifPresent(use -> use.add(1, spare));
        uses.get(limit).add(1, all).add(-1, spare);
        pieces.put(limit, ofLimit);
        spares.put(limit, spare);
    }

    private static Optional<Expr> of(Kind kind, SharedLimit quantity, String subject, Map<SharedLimit, Expr> uses) {
        return uses.entrySet().stream()
                .filter(use -> use.getKey().kind() == kind
                        && use.getKey().phase().equals(quantity.phase())
                        && use.getKey().subject().equals(subject))
                .map(Map.Entry::getValue)
                .findFirst();
    }

    /** What a point takes off and pays for spare pieces. */
    public List<FleetCost> costs(Outcome outcome) {
        List<FleetCost> costs = new ArrayList<>();
        pieces.forEach((limit, tiers) -> {
            int spare = outcome.count(spares.get(limit));
            if (spare > 0) {
                costs.add(quantities.spare(limit, spare));
            }
            tiers.forEach((tier, bought) -> {
                int count = outcome.count(bought);
                if (count > 0) {
                    costs.add(tier.cost(count));
                }
            });
        });
        return List.copyOf(costs);
    }
}
