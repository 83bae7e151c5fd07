package depot.optimizer.cli;

import depot.optimizer.report.text.Figures;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.sweep.CaseResult;
import depot.optimizer.sweep.DepotOutcome;
import depot.optimizer.sweep.FleetOutcome;
import depot.optimizer.sweep.LossResult;
import depot.optimizer.sweep.SweepCase;
import depot.optimizer.sweep.SweepResult;
import java.util.ArrayList;
import java.util.List;

/** What a sweep comes to, on a few lines, and the exit status that follows from it. */
final class SweepSummary {

    private static final double ROUNDING_DAYS = 1e-6;

    private final SweepResult result;

    SweepSummary(SweepResult result) {
        this.result = result;
    }

    /** The base plan decides, and whatever does not come to a plan that the replay agrees with. */
    ExitStatus status() {
        boolean contradicted = !result.base().proven()
                || result.cases().stream().anyMatch(SweepSummary::anewAndUnproven)
                || result.losses().stream()
                        .flatMap(loss -> loss.cured().stream())
                        .anyMatch(cured -> !cured.proven());
        if (contradicted) {
            return ExitStatus.REPLAY_FAILED;
        }
        if (result.cases().stream().anyMatch(each -> !each.planned() && !tooSmall(each))) {
            return ExitStatus.NO_PLAN;
        }
        return falls(result.base()) ? ExitStatus.SHORTAGES : ExitStatus.PROVEN;
    }

    /** That a budget is too small is what a frontier is asked for. */
    private static boolean tooSmall(CaseResult each) {
        return each.sweepCase().part() == SweepCase.Part.FRONTIER
                && each.least().isPresent();
    }

    private static boolean anewAndUnproven(CaseResult each) {
        return switch (each.sweepCase().purchases()) {
            case ANEW -> !each.fleet().map(FleetOutcome::proven).orElse(true);
            // What was bought for the base plan may break rules of another scenario: that is an answer.
            case KEPT -> false;
        };
    }

    private static boolean falls(FleetOutcome fleet) {
        return fleet.sum(DepotOutcome::daysShort) > ROUNDING_DAYS;
    }

    List<String> lines() {
        List<String> lines = new ArrayList<>();
        double base = result.base().pricedCost(result.scenario());
        lines.add("%s: %s around the plan of %s"
                .formatted(
                        result.sweep().name(),
                        Figures.count(result.cases().size() + result.losses().size(), "variation"),
                        result.scenario().name()));
        lines.add(PlanSummary.line(
                "Base",
                money(base) + "; gap " + PlanSummary.percent(result.base().gap())));
        result.cases().forEach(each -> lines.add(line(each, base)));
        if (!result.losses().isEmpty()) {
            long held = result.losses().stream().filter(LossResult::holds).count();
            lines.add(PlanSummary.line(
                    "Losses",
                    "the base plan bears %d of %d"
                            .formatted(held, result.losses().size())));
        }
        return lines;
    }

    private String line(CaseResult each, double base) {
        SweepCase asked = each.sweepCase();
        if (each.fleet().isEmpty()) {
            String least = each.least().isPresent()
                    ? "; no plan does with less than "
                            + Figures.read(each.least().getAsDouble(), 2)
                    : "";
            return "  %14s  %s: no plan%s".formatted("", asked.name(), least);
        }
        FleetOutcome fleet = each.fleet().get();
        double difference = each.cost() - base;
        String days = fleet.proven() ? falls(fleet) ? ", falls short" : "" : ", does not work";
        return "  %14s  %s%s".formatted((difference > 0 ? "+" : "") + Figures.read(difference, 0), asked.name(), days);
    }

    private String money(double amount) {
        Scenario scenario = result.scenario();
        return Figures.read(amount, Figures.decimals(scenario.currency())) + " "
                + scenario.currency().getCurrencyCode();
    }
}
