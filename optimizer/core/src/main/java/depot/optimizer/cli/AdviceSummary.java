package depot.optimizer.cli;

import depot.optimizer.advice.Advice;
import depot.optimizer.advice.Alternative;
import depot.optimizer.advice.DepotAdvice;
import depot.optimizer.advice.Difference;
import depot.optimizer.advice.FleetAdvice;
import depot.optimizer.advice.LimitWorth;
import depot.optimizer.report.table.AdviceFigures;
import depot.optimizer.report.table.AdviceWords;
import depot.optimizer.report.table.BrokenRules;
import depot.optimizer.report.text.Figures;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The answers to questions about a plan in short, depot by depot. */
final class AdviceSummary {

    private final AdviceFigures figures;

    AdviceSummary(Advice advice) {
        figures = AdviceFigures.of(advice);
    }

    /** A few lines for each depot. */
    List<String> lines() {
        List<String> lines = new ArrayList<>();
        figures.advice().fleet().ifPresent(fleet -> add(lines, fleet));
        figures.advice().depots().forEach(depot -> add(lines, depot));
        return lines;
    }

    private void add(List<String> lines, FleetAdvice fleet) {
        lines.add("Fleet: %s %s, gap %s; %s"
                .formatted(
                        money(fleet.certificate().cost()),
                        figures.amounts().code(),
                        PlanSummary.percent(fleet.certificate().gap()),
                        fleet.plannedAnew()
                                ? "what room is worth is that of the fleet planned anew, other answers hold the other depots as they are"
                                : "answers hold the other depots as they are"));
        fleet.limits()
                .forEach(use -> lines.add(PlanSummary.line(
                        "Shared",
                        "%s: %s of %s used; %s"
                                .formatted(
                                        use.limit(),
                                        Figures.read(use.used(), 0),
                                        Figures.read(use.most(), 0),
                                        figures.words().price(use)))));
    }

    private void add(List<String> lines, DepotAdvice depot) {
        double planned = depot.planned().certificate().cost();
        lines.add("%s: %s %s, gap %s"
                .formatted(
                        depot.depot(),
                        money(planned),
                        figures.amounts().code(),
                        PlanSummary.percent(depot.planned().certificate().gap())));
        depot.thumb()
                .ifPresent(plan -> lines.add(PlanSummary.line(
                        "Thumb",
                        "%s by rules of thumb, %s; %s of %s break no rule"
                                .formatted(
                                        money(plan.certificate().cost()),
                                        signed(plan.certificate().cost() - planned),
                                        Figures.read(BrokenRules.daysKept(plan), 0),
                                        Figures.count(Figures.read(plan.days(), 0), "day")))));
        depot.reasons()
                .forEach(reason -> lines.add(PlanSummary.line(
                        "Why",
                        "without %s%s: %s"
                                .formatted(
                                        AdviceWords.of(reason.piece()),
                                        depot.planned().plans().size() > 1 ? " in " + reason.phase() : "",
                                        figures.words().costs(reason.without())))));
        addWorth(lines, depot);
        for (Alternative other : AdviceFigures.nextBest(depot)) {
            double difference =
                    other.answer().difference().map(Difference::found).orElse(0.0);
            lines.add(PlanSummary.line(
                    "Next", "%s: %s".formatted(other.variation().words(), signed(difference))));
        }
    }

    /** Only limits that are worth something for sure, those worth most first. */
    private void addWorth(List<String> lines, DepotAdvice depot) {
        List<LimitWorth> told = depot.limits().stream()
                .filter(limit ->
                        limit.answer().difference().map(Difference::told).orElse(false))
                .sorted(Comparator.comparingDouble(
                        limit -> limit.answer().difference().orElseThrow().found()))
                .toList();
        for (LimitWorth limit : told) {
            lines.add(PlanSummary.line(
                    "Worth",
                    "%d %s more, %s, %s: %s"
                            .formatted(
                                    limit.loosening().step(),
                                    limit.loosening().limit().unit(),
                                    AdviceWords.of(limit.loosening().limit()),
                                    limit.loosening().subject(),
                                    figures.words().saves(limit.answer()))));
        }
        if (told.isEmpty() && !depot.limits().isEmpty()) {
            lines.add(PlanSummary.line("Worth", "more room at no limit saves anything that can be told from the gap"));
        }
    }

    private String money(double amount) {
        return figures.amounts().show(figures.amounts().rounded(amount));
    }

    private String signed(double amount) {
        return (amount > 0 ? "+" : "") + money(amount);
    }
}
