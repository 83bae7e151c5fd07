package depot.optimizer.report.page;

import depot.optimizer.plan.BoundProof;
import depot.optimizer.plan.Plan;
import depot.optimizer.report.table.RolloutTable;
import depot.optimizer.report.text.Amounts;
import depot.optimizer.report.text.Figures;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** The phases of a rollout, and what the fleet's bound is made of. */
final class RolloutViews {

    private RolloutViews() {}

    /** Tables for a plan with phases or with limits that depots share; none for others. */
    static List<TableView> of(PageMaker maker) {
        List<TableView> tables = new ArrayList<>();
        Plan plan = maker.plan();
        if (plan.phases().size() > 1 || plan.proof().given()) {
            tables.add(phases(maker));
        }
        if (plan.proof().given()) {
            tables.add(bound(maker.amounts(), plan));
        }
        return List.copyOf(tables);
    }

    private static TableView phases(PageMaker maker) {
        Amounts amounts = maker.amounts();
        TableView.Builder table = TableView.of("phases", "Phases of the rollout; amounts in " + amounts.code())
                .words("Phase")
                .numbers("Begins in year", "Crews with packs", "Crews on petrol", "Spent", "Budget");
        for (RolloutTable.Step step : RolloutTable.steps(maker.catalog(), maker.plan())) {
            table.row(
                    step.phase().id(),
                    Figures.read(step.phase().year(), 0),
                    Figures.read(step.crewsWithPacks(), 0),
                    Figures.read(step.crewsOnPetrol(), 0),
                    amounts.show(amounts.rounded(step.spent())),
                    step.phase()
                            .budget()
                            .map(amounts::rounded)
                            .map(amounts::show)
                            .orElse("no limit"));
        }
        return table.build();
    }

    /** Limits with prices, and all depots together: the parts of each depot are in plan.json. */
    private static TableView bound(Amounts amounts, Plan plan) {
        TableView.Builder table = TableView.of(
                        "bound-parts",
                        "What the bound is made of: no plan costs less than the depots at these prices, less what the limits are "
                                + "worth. Amounts in " + amounts.code())
                .words("Part")
                .numbers("Limit", "Price of one", "Amount");
        double depots = plan.proof().depots().stream()
                .mapToDouble(BoundProof.DepotBound::bound)
                .sum();
        table.row("All depots, at the prices", "", "", amounts.show(amounts.rounded(depots)));
        for (BoundProof.PricedLimit limit : plan.proof().limits()) {
            if (limit.price() != 0) {
                BigDecimal worth = amounts.rounded(-limit.price() * limit.most());
                table.row(
                        limit.limit(),
                        Figures.read(limit.most(), 0),
                        Figures.plain(limit.price(), 4),
                        amounts.show(worth));
            }
        }
        if (plan.proof().oneModel()) {
            table.row(
                    "Added by one model of all depots",
                    "",
                    "",
                    amounts.show(amounts.rounded(
                            plan.certificate().bound() - plan.proof().bound())));
        }
        return table.total(
                        "Bound",
                        "",
                        "",
                        amounts.show(amounts.rounded(plan.certificate().bound())))
                .build();
    }
}
