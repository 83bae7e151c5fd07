package depot.optimizer.report.page;

import depot.optimizer.advice.Alternative;
import depot.optimizer.advice.Answer;
import depot.optimizer.advice.DepotAdvice;
import depot.optimizer.advice.Difference;
import depot.optimizer.advice.LimitWorth;
import depot.optimizer.advice.Reason;
import depot.optimizer.advice.ReplayedPlan;
import depot.optimizer.report.table.AdviceFigures;
import depot.optimizer.report.table.AdviceFigures.Differing;
import depot.optimizer.report.table.AdviceWords;
import depot.optimizer.report.table.BrokenRules;
import depot.optimizer.report.table.Words;
import depot.optimizer.report.text.Amounts;
import depot.optimizer.report.text.Figures;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Makes the part of the page about a plan's questions that is about one depot. */
final class AdviceSections {

    private final AdviceFigures figures;
    private final DepotAdvice depot;
    private final String id;
    private final Amounts amounts;

    /**
     * @param id unique on the page
     */
    AdviceSections(AdviceFigures figures, DepotAdvice depot, String id) {
        this.figures = figures;
        this.depot = depot;
        this.id = id;
        amounts = figures.amounts();
    }

    AdvicePage.Section section() {
        return new AdvicePage.Section(
                id,
                figures.catalog().depot(depot.depot()).name(),
                thumb(),
                broken(),
                differing(),
                why(),
                worth(),
                next());
    }

    private TableView thumb() {
        TableView.Builder table = TableView.of(id + "-thumb", "The plan and rules of thumb; costs in " + amounts.code())
                .words("Plan")
                .numbers("Present cost", "Against the plan", "To pay at once", "Days a year that break no rule");
        depot.thumb().ifPresent(plan -> {
            row(table, "The plan", depot.planned());
            row(table, "By rules of thumb", plan);
        });
        return table.build();
    }

    private void row(TableView.Builder table, String name, ReplayedPlan plan) {
        double cost = plan.certificate().cost();
        double against = cost - depot.planned().certificate().cost();
        table.row(
                name,
                money(cost),
                plan.equals(depot.planned()) ? "" : signed(amounts, against),
                amounts.show(figures.atOnce(plan)),
                "%s of %s".formatted(Figures.read(BrokenRules.daysKept(plan), 0), Figures.read(plan.days(), 0)));
    }

    private TableView broken() {
        TableView.Builder table = TableView.of(id + "-broken", "Rules that the plan by rules of thumb breaks")
                .words("Rule")
                .numbers("Days a year")
                .words("The first time");
        depot.thumb().ifPresent(plan -> BrokenRules.of(plan)
                .forEach(rule -> table.row(Words.of(rule.kind()), Figures.read(rule.daysPerYear(), 0), rule.first())));
        return table.build();
    }

    private TableView differing() {
        TableView.Builder table = TableView.of(id + "-differing", "Where they differ in what they have, in pieces")
                .words("Kind", "Item")
                .numbers("The plan", "By rules of thumb");
        depot.thumb().ifPresent(plan -> AdviceFigures.differing(depot.pieces(), figures.pieces(plan))
                .forEach(item -> table.row(
                        AdviceWords.of(item.item().kind()),
                        item.item().name(),
                        Integer.toString(item.planned()),
                        Integer.toString(item.other()))));
        return table.build();
    }

    private TableView why() {
        if (depot.planned().plans().size() > 1) {
            return whyInPhases();
        }
        TableView.Builder table = TableView.of(
                        id + "-why",
                        "What is bought, when it is needed most, and what happens without; in " + amounts.code())
                .words("Bought", "Needed most", "Without any of it", "With one fewer");
        for (Reason reason : depot.reasons()) {
            table.row(
                    AdviceWords.of(reason.piece()),
                    needed(reason),
                    figures.words().costs(reason.without()),
                    words(reason.oneFewer()));
        }
        return table.build();
    }

    private TableView whyInPhases() {
        TableView.Builder table = TableView.of(
                        id + "-why",
                        "What each phase buys, when it is needed most in it, and what happens without, or when it is bought later; in "
                                + amounts.code())
                .words("Phase", "Is there then")
                .numbers("Bought")
                .words("Needed most", "Without what it buys", "With one fewer", "Bought in a later phase");
        for (Reason reason : depot.reasons()) {
            table.row(
                    reason.phase(),
                    AdviceWords.of(reason.piece()),
                    Integer.toString(reason.piece().bought()),
                    needed(reason),
                    figures.words().costs(reason.without()),
                    words(reason.oneFewer()),
                    words(reason.later()));
        }
        return table.build();
    }

    private static String needed(Reason reason) {
        return reason.binding().map(AdviceWords::of).orElse("on no day as planned");
    }

    private String words(Optional<Answer> answer) {
        return answer.map(figures.words()::costs).orElse("-");
    }

    private TableView worth() {
        TableView.Builder table = TableView.of(
                        id + "-worth",
                        "What a little more room would save; present cost and every year, in " + amounts.code())
                .words("Limit", "Of")
                .numbers("More by", "Saved every year")
                .words("Saved in all");
        for (LimitWorth limit : depot.limits()) {
            table.row(
                    AdviceWords.of(limit.loosening().limit()),
                    limit.loosening().subject(),
                    Figures.count(
                                    limit.loosening().step(),
                                    limit.loosening().limit().unit())
                            .replace(" As", " A")
                            .replace(" mins", " min"),
                    perYear(limit.answer()),
                    figures.words().saves(limit.answer()));
        }
        return table.build();
    }

    /** Only what is told for sure has a figure; nothing at all is a figure as well. */
    private String perYear(Answer answer) {
        Optional<Difference> saving = answer.difference().map(AdviceWords::turned);
        return saving.filter(found -> found.told() || found.surelyNone())
                .map(found -> money(figures.perYear(found.found())))
                .orElse("-");
    }

    private TableView next() {
        TableView.Builder table = TableView.of(
                        id + "-next", "Other plans, the cheapest first; costs in " + amounts.code())
                .words("Structure")
                .numbers("Present cost", "Against the plan", "Share")
                .words("Pieces: the plan's, then its own", "In words", "File");
        for (Alternative other : depot.alternatives()) {
            Optional<Difference> difference = other.answer().difference();
            double planned = depot.planned().certificate().cost();
            table.row(
                    other.variation().words(),
                    difference.map(found -> money(planned + found.found())).orElse("-"),
                    difference.map(found -> signed(amounts, found.found())).orElse(""),
                    difference
                            .map(found -> Figures.percent(planned == 0 ? 0 : found.found() / planned))
                            .orElse(""),
                    difference.isPresent() ? pieces(other) : "",
                    figures.words().costs(other.answer())
                            + (other.sameAs().isEmpty() ? "" : "; buys the same as " + other.sameAs()),
                    figures.planFiles().getOrDefault(other, ""));
        }
        return table.build();
    }

    private String pieces(Alternative other) {
        List<Differing> items = AdviceFigures.differing(depot.pieces(), other.pieces());
        return items.isEmpty()
                ? "the same, placed otherwise"
                : items.stream()
                        .map(item -> "%s %s: %d, %d"
                                .formatted(
                                        AdviceWords.of(item.item().kind()),
                                        item.item().name(),
                                        item.planned(),
                                        item.other()))
                        .collect(Collectors.joining("; "));
    }

    private String money(double amount) {
        return amounts.show(amounts.rounded(amount));
    }

    /** An amount with its sign in front, also above 0. */
    static String signed(Amounts amounts, double amount) {
        return TornadoDrawing.signed(amounts, amount);
    }
}
