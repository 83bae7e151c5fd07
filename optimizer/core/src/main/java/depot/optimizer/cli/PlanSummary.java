package depot.optimizer.cli;

import depot.optimizer.plan.Certificate;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.Plan;
import depot.optimizer.report.table.Catalog;
import depot.optimizer.report.table.Purchase;
import depot.optimizer.report.table.Purchases;
import depot.optimizer.report.table.RolloutTable;
import depot.optimizer.report.text.Figures;
import depot.optimizer.scenario.Scenario;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** What a plan comes to, on a few lines. */
final class PlanSummary {

    private final Scenario scenario;
    private final Plan plan;

    PlanSummary(Scenario scenario, Plan plan) {
        this.scenario = scenario;
        this.plan = plan;
    }

    /** Cost, bound, gap and what is bought. */
    List<String> lines() {
        Certificate certificate = plan.certificate();
        List<String> lines = new ArrayList<>();
        lines.add("%s: %s%s".formatted(plan.scenario(), Figures.count(depots(), "depot"), phases()));
        lines.add(line(
                "Cost",
                "%s over %s, in today's money"
                        .formatted(money(certificate.cost()), Figures.count(scenario.horizonYears(), "year"))));
        lines.add(line("Bound", money(certificate.bound()) + "; by the model, no plan costs less"));
        lines.add(line(
                "Gap",
                "%s (asked for %s)"
                        .formatted(
                                percent(certificate.gap()),
                                percent(plan.settings().relativeGap()))));
        lines.add(line("To buy", purchases()));
        return lines;
    }

    private int depots() {
        return (int) plan.depots().stream().map(DepotPlan::depot).distinct().count();
    }

    private String phases() {
        int phases = plan.phases().size();
        return phases > 1 ? " in " + Figures.count(phases, "phase") : "";
    }

    /** A warning where the limits ended the search; part of the result, so that quiet runs tell it as well. */
    static Optional<String> openGap(Plan plan) {
        if (plan.certificate().proven()) {
            return Optional.empty();
        }
        return Optional.of(("The limits ended the search at a gap of %s, before the %s that was asked for. "
                        + "--nodes and --time-limit allow more work.")
                .formatted(
                        percent(plan.certificate().gap()),
                        percent(plan.settings().relativeGap())));
    }

    /** A label and what it says, in columns. */
    static String line(String label, String text) {
        return "  %-9s %s".formatted(label, text);
    }

    /** A small share, such as "0.045 %". */
    static String percent(double share) {
        return Figures.plain(100 * share, 3) + " %";
    }

    private String money(double amount) {
        return Figures.read(amount, Figures.decimals(scenario.currency())) + " " + plan.currency();
    }

    /** Pieces by kind over the whole fleet, and what they cost at once and in later phases, quantity prices counted. */
    private String purchases() {
        Catalog catalog = new Catalog(scenario);
        Map<Purchase.Kind, Integer> pieces = new TreeMap<>();
        for (DepotPlan depot : plan.depots()) {
            for (Purchase purchase : Purchases.of(catalog, depot, plan.before(depot))) {
                if (purchase.bought() > 0) {
                    pieces.merge(purchase.kind(), purchase.bought(), Integer::sum);
                }
            }
        }
        if (pieces.isEmpty()) {
            return "nothing";
        }
        String list = pieces.entrySet().stream()
                .map(kind -> Figures.count(kind.getValue(), kind.getKey().words()))
                .collect(Collectors.joining(", "));
        List<RolloutTable.Step> steps = RolloutTable.steps(catalog, plan);
        double all = steps.stream()
                .map(RolloutTable.Step::spent)
                .reduce(BigDecimal.ZERO, BigDecimal::add)
                .doubleValue();
        String first = money(steps.get(0).spent().doubleValue());
        return steps.size() == 1
                ? "%s; %s at once".formatted(list, first)
                : "%s; %s at once, %s over all phases".formatted(list, first, money(all));
    }
}
