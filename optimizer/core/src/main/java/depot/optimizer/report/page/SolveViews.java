package depot.optimizer.report.page;

import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.Plan;
import depot.optimizer.plan.SolveStop;
import depot.optimizer.report.text.Amounts;
import depot.optimizer.report.text.Figures;
import depot.optimizer.scenario.Scenario;
import java.math.BigDecimal;
import java.util.TreeMap;

/** How plans came about, for those who check or repeat them. */
final class SolveViews {

    private SolveViews() {}

    static TableView ofDepot(Amounts amounts, DepotPlan plan) {
        SolveStop stop = plan.stop();
        return facts("solve-table", "The search for this depot's plan")
                .row("Why it stopped", stop.reason())
                .row(
                        "Cost the search ended with (" + amounts.code() + ")",
                        amount(amounts, stop.certificate().cost()))
                .row(
                        "No plan costs less than (" + amounts.code() + ")",
                        amount(amounts, stop.certificate().bound()))
                .row("Gap between the two", gap(stop.certificate().gap()))
                .row("Proven to the gap asked for", stop.certificate().proven() ? "yes" : "no")
                .row("Different days of the year", whole(stop.kindsOfDay()))
                .row("Of these in the final model", whole(stop.bindingDays()))
                .row("Rounds of adding days", whole(stop.rounds()))
                .row("Days tightened after a replay", whole(stop.tightenings()))
                .row("Variables in the final model", whole(stop.variables()))
                .row("Constraints in the final model", whole(stop.constraints()))
                .row("Branch-and-bound nodes", whole(stop.nodes()))
                .build();
    }

    static TableView ofFleet(Scenario scenario, Plan plan) {
        return facts("provenance-table", "Settings")
                .row("Scenario", plan.scenario())
                .row("Solver", plan.solver())
                .row("Horizon", Figures.count(scenario.horizonYears(), "year"))
                .row("Discount rate", Figures.percent(scenario.discountRate()) + " a year")
                .row("Days covered by the packs carried", Figures.percent(scenario.demandQuantile()))
                .row("Spread of the energy a stop needs", Figures.percent(scenario.demandSpread()))
                .row("Pack health planned for", Figures.percent(scenario.packHealth()))
                .row("Gap asked for", gap(plan.settings().relativeGap()))
                .row("Branch-and-bound nodes allowed", whole(plan.settings().nodeLimit()))
                .row("Seed", Integer.toString(plan.settings().seed()))
                .row("Handovers rounded outward to", plan.settings().handoverMinutes() + " min")
                .row("Format of plan.json", Integer.toString(plan.formatVersion()))
                .build();
    }

    static TableView inputs(Plan plan) {
        TableView.Builder table = TableView.of("inputs", "Input files that the plan was made from")
                .words("File", "SHA-256");
        new TreeMap<>(plan.inputHashes()).forEach(table::row);
        return table.build();
    }

    static String gap(double gap) {
        return Figures.read(100 * gap, 2) + " %";
    }

    private static TableView.Builder facts(String id, String caption) {
        return TableView.of(id, caption).words("What", "Value");
    }

    private static String amount(Amounts amounts, double amount) {
        return amounts.show(amounts.rounded(amount));
    }

    private static String whole(long count) {
        return Figures.read(BigDecimal.valueOf(count), 0);
    }
}
