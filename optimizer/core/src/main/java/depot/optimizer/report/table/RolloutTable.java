package depot.optimizer.report.table;

import static depot.optimizer.report.table.CommonColumns.CURRENCY;
import static depot.optimizer.report.table.CommonColumns.PHASE;
import static depot.optimizer.report.table.OutputColumn.amount;
import static depot.optimizer.report.table.OutputColumn.count;

import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.FleetCost;
import depot.optimizer.plan.Plan;
import depot.optimizer.scenario.Phase;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** rollout.csv: what each phase spends, and how many crews work with packs in it. */
public final class RolloutTable {

    private static final TableLayout LAYOUT = TableLayout.of(
            "rollout.csv",
            "phase of the rollout, in order of time",
            PHASE,
            count("begins_in_year", "years", "years from now to its beginning"),
            count("electric_crews", "crews", "crews that work with packs"),
            count("petrol_crews", "crews", "crews that work with petrol"),
            amount("purchases", "what the depots buy when it begins, installation included, at the items' own prices"),
            amount("fleet_purchases", "spare pieces, less what quantity prices take off"),
            amount("budget", "what the fleet may spend in it; blank: no limit").orBlank(),
            CURRENCY);

    private RolloutTable() {}

    /**
     * A phase of a plan.
     *
     * @param purchases what the depots buy, at the items' own prices
     * @param fleetPurchases spare pieces, less what quantity prices take off
     */
    public record Step(
            Phase phase, int crewsWithPacks, int crewsOnPetrol, BigDecimal purchases, BigDecimal fleetPurchases) {

        /** All that is paid when the phase begins. */
        public BigDecimal spent() {
            return purchases.add(fleetPurchases);
        }
    }

    /** The phases of a plan, in order. */
    public static List<Step> steps(Catalog catalog, Plan plan) {
        List<Step> steps = new ArrayList<>();
        for (String id : plan.phases()) {
            int all = 0;
            int petrol = 0;
            BigDecimal purchases = BigDecimal.ZERO;
            for (DepotPlan depot : plan.depots()) {
                if (depot.phase().equals(id)) {
                    all += depot.crews(catalog.scenario()).size();
                    petrol += depot.onPetrol().size();
                    for (Purchase purchase : Purchases.of(catalog, depot, plan.before(depot))) {
                        purchases = purchases.add(purchase.total());
                    }
                }
            }
            Phase phase = catalog.scenario().coupling().phase(id);
            steps.add(new Step(phase, all - petrol, petrol, purchases, fleetPurchases(plan, id)));
        }
        return List.copyOf(steps);
    }

    private static BigDecimal fleetPurchases(Plan plan, String phase) {
        BigDecimal sum = BigDecimal.ZERO;
        for (FleetCost cost : plan.fleetCosts()) {
            if (cost.phase().equals(phase)) {
                BigDecimal amount = BigDecimal.valueOf(cost.price()).multiply(BigDecimal.valueOf(cost.pieces()));
                sum = cost.kind() == FleetCost.Kind.SPARE_PIECES ? sum.add(amount) : sum.subtract(amount);
            }
        }
        return sum;
    }

    /** One row per phase. */
    public static CsvTable of(Catalog catalog, Plan plan) {
        CsvTable table = new CsvTable(LAYOUT);
        for (Step step : steps(catalog, plan)) {
            Optional<BigDecimal> budget = step.phase().budget();
            table.row(row -> {
                row.text(step.phase().id())
                        .count(step.phase().year())
                        .count(step.crewsWithPacks())
                        .count(step.crewsOnPetrol())
                        .exact(step.purchases())
                        .exact(step.fleetPurchases());
                if (budget.isPresent()) {
                    row.exact(budget.get());
                } else {
                    row.empty();
                }
                row.text(plan.currency());
            });
        }
        return table;
    }
}
