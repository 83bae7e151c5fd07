package depot.optimizer.report.page;

import depot.optimizer.advice.Advice;
import depot.optimizer.advice.AdviceSettings.Part;
import depot.optimizer.advice.DepotAdvice;
import depot.optimizer.advice.FleetAdvice;
import depot.optimizer.advice.ReplayedPlan;
import depot.optimizer.report.table.AdviceFigures;
import depot.optimizer.report.table.BrokenRules;
import depot.optimizer.report.text.Amounts;
import depot.optimizer.report.text.Figures;
import depot.optimizer.scenario.SolveSettings;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** Makes the page about a plan's questions. */
public final class AdvicePages {

    private final AdviceFigures figures;
    private final Advice advice;
    private final Amounts amounts;

    private AdvicePages(AdviceFigures figures) {
        this.figures = figures;
        advice = figures.advice();
        amounts = figures.amounts();
    }

    /** What the page shows. */
    public static AdvicePage of(AdviceFigures figures) {
        return new AdvicePages(figures).page();
    }

    private AdvicePage page() {
        List<AdvicePage.Section> sections = new ArrayList<>();
        for (DepotAdvice depot : advice.depots()) {
            sections.add(new AdviceSections(figures, depot, "depot-" + (sections.size() + 1)).section());
        }
        return new AdvicePage(
                advice.plan().scenario(),
                "Why this plan, and not another? Present cost over %s, in %s."
                        .formatted(Figures.count(advice.scenario().horizonYears(), "year"), amounts.code()),
                facts(),
                limits(),
                List.copyOf(sections),
                advice.fleet().isPresent(),
                ThumbWords.of(advice.settings().thumb()),
                Cautions.general(),
                provenance(),
                inputs());
    }

    private TableView limits() {
        TableView.Builder table = TableView.of("limit-table", "What the depots share; money in " + amounts.code())
                .words("Limit")
                .numbers("May be used", "Used", "Left")
                .words("What more of it would be worth");
        advice.fleet().ifPresent(fleet -> {
            for (FleetAdvice.LimitUse use : fleet.limits()) {
                table.row(
                        use.limit(),
                        Figures.read(use.most(), 0),
                        Figures.read(use.used(), 0),
                        Figures.read(use.left(), 0),
                        figures.words().price(use));
            }
        });
        return table.build();
    }

    private void addFleet(List<Fact> facts, FleetAdvice fleet) {
        facts.add(new Fact(
                "The whole fleet, present cost",
                code(fleet.certificate().cost()),
                "no plan costs less than " + code(fleet.certificate().bound())));
        fleet.thumb()
                .ifPresent(thumb -> facts.add(new Fact(
                        "The fleet with these depots by rules of thumb",
                        code(thumb.certificate().cost()),
                        fleet.together().isEmpty()
                                ? "it keeps what the depots share"
                                : fleet.together().get(0).message())));
    }

    private List<Fact> facts() {
        List<Fact> facts = new ArrayList<>();
        advice.fleet().ifPresent(fleet -> addFleet(facts, fleet));
        double planned = advice.depots().stream()
                .mapToDouble(depot -> depot.planned().certificate().cost())
                .sum();
        double bound = advice.depots().stream()
                .mapToDouble(depot -> depot.planned().certificate().bound())
                .sum();
        facts.add(new Fact(
                "The plan, present cost",
                code(planned),
                Figures.count(advice.depots().size(), "depot") + "; no plan costs less than " + code(bound)));
        if (advice.settings().asks(Part.THUMB)) {
            addThumb(facts, planned);
        }
        if (advice.settings().asks(Part.NEXT)) {
            facts.add(new Fact(
                    "Other plans within " + Figures.percent(advice.settings().within()),
                    Integer.toString(figures.planFiles().size()),
                    "other purchases, every day met and replayed"));
        }
        return facts;
    }

    private void addThumb(List<Fact> facts, double planned) {
        List<ReplayedPlan> plans = advice.depots().stream()
                .flatMap(depot -> depot.thumb().stream())
                .toList();
        double cost =
                plans.stream().mapToDouble(plan -> plan.certificate().cost()).sum();
        double kept = plans.stream().mapToDouble(BrokenRules::daysKept).sum();
        double days = plans.stream().mapToDouble(ReplayedPlan::days).sum();
        facts.add(new Fact(
                "By rules of thumb", code(cost), AdviceSections.signed(amounts, cost - planned) + " against the plan"));
        facts.add(new Fact(
                "Days on which the rules of thumb work",
                "%s of %s".formatted(Figures.read(kept, 0), Figures.read(days, 0)),
                "depot days a year, replayed; the plan keeps all of its own"));
    }

    private TableView provenance() {
        SolveSettings solve = advice.scenario().solve();
        return TableView.of("provenance-table", "Settings")
                .words("What", "Value")
                .row("Gap asked for", SolveViews.gap(solve.relativeGap()))
                .row("Branch-and-bound nodes allowed", Figures.read(BigDecimal.valueOf(solve.nodeLimit()), 0))
                .row("Seed", Integer.toString(solve.seed()))
                .row(
                        "Next best, at most dearer by",
                        Figures.percent(advice.settings().within()))
                .row("Solver", advice.plan().solver())
                .build();
    }

    private TableView inputs() {
        TableView.Builder table = TableView.of("inputs", "Input files that the plan was made from")
                .words("File", "SHA-256");
        advice.plan().inputHashes().forEach(table::row);
        return table.build();
    }

    private String code(double amount) {
        return amounts.showWithCode(amounts.rounded(amount));
    }
}
