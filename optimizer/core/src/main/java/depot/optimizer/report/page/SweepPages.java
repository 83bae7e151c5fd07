package depot.optimizer.report.page;

import depot.optimizer.plan.Plan;
import depot.optimizer.report.table.CaseFigures;
import depot.optimizer.report.table.CaseFigures.Ending;
import depot.optimizer.report.table.SweepFigures;
import depot.optimizer.report.table.SweepFigures.CaseRow;
import depot.optimizer.report.table.SweepFigures.LossRow;
import depot.optimizer.report.text.Amounts;
import depot.optimizer.report.text.Figures;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.scenario.SolveSettings;
import depot.optimizer.sweep.SweepCase.Part;
import depot.optimizer.sweep.change.ChangeWords;
import depot.optimizer.sweep.spec.Sweep;
import depot.optimizer.sweep.spec.Sweep.Frontier;
import depot.optimizer.sweep.spec.Sweep.Grid;
import depot.optimizer.sweep.spec.Sweep.Line;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Makes the page of a sweep. */
public final class SweepPages {

    private final SweepFigures figures;
    private final Scenario scenario;
    private final Sweep sweep;
    private final Amounts amounts;

    private SweepPages(SweepFigures figures) {
        this.figures = figures;
        scenario = figures.result().scenario();
        sweep = figures.result().sweep();
        amounts = new Amounts(scenario.currency());
    }

    /** What the page shows. */
    public static SweepPage of(SweepFigures figures) {
        return new SweepPages(figures).page();
    }

    private SweepPage page() {
        List<CurveChart> curves = new ArrayList<>();
        for (Line line : sweep.lines()) {
            curves.add(CurveDrawing.of(figures, amounts, line, "line-" + (curves.size() + 1)));
        }
        List<CurveChart> frontiers = new ArrayList<>();
        for (Frontier frontier : sweep.frontiers()) {
            frontiers.add(FrontierDrawing.of(figures, amounts, frontier, "frontier-" + (frontiers.size() + 1)));
        }
        List<TableView> grids = new ArrayList<>();
        for (Grid grid : sweep.grids()) {
            grids.add(grid(grid, "grid-" + (grids.size() + 1)));
        }
        return new SweepPage(
                sweep.name(),
                "%s: %s around one plan, present cost over %s, in %s."
                        .formatted(
                                scenario.name(),
                                Figures.count(cases(), "variation"),
                                Figures.count(scenario.horizonYears(), "year"),
                                amounts.code()),
                facts(),
                sweep.tornado().isPresent() ? List.of(TornadoDrawing.of(figures, amounts)) : List.of(),
                curves,
                frontiers,
                grids,
                named(),
                losses(),
                all(),
                provenance(),
                inputs());
    }

    private int cases() {
        return figures.rows().size() + figures.losses().size();
    }

    private List<Fact> facts() {
        CaseFigures base = figures.base();
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact("Base plan, present cost", code(base.cost()), base.status()));
        facts.add(new Fact(
                "No base plan costs less than",
                code(base.bound().orElse(0)),
                "gap " + CurveDrawing.gap(base.gap()) + ", asked for "
                        + SolveViews.gap(scenario.solve().relativeGap())));
        facts.add(new Fact(
                "To pay at once",
                amounts.showWithCode(amounts.rounded(base.atOnce())),
                scenario.coupling().singlePhase()
                        ? "base plan, installation included"
                        : "base plan, when phase %s begins, installation included"
                                .formatted(scenario.coupling().phases().get(0).id())));
        if (figures.petrol()) {
            facts.add(new Fact(
                    "Petrol avoided", code(base.petrol()), "present value of what the crews' petrol tools cost today"));
        }
        if (!figures.rows().isEmpty()) {
            long met = figures.rows().stream()
                    .filter(row -> row.figures()
                            .map(found -> found.ending() == Ending.MET)
                            .orElse(false))
                    .count();
            facts.add(new Fact(
                    "Cases that meet every day",
                    "%d of %d".formatted(met, figures.rows().size()),
                    "replayed"));
        }
        if (!figures.losses().isEmpty()) {
            long held = figures.losses().stream()
                    .filter(row -> row.result().holds())
                    .count();
            facts.add(new Fact(
                    "Losses that the base plan bears",
                    "%d of %d".formatted(held, figures.losses().size()),
                    "days planned anew and replayed"));
        }
        return facts;
    }

    private TableView grid(Grid grid, String id) {
        String down = ChangeWords.of(grid.rows().subject());
        String across = ChangeWords.of(grid.columns().subject());
        TableView.Builder table = TableView.of(
                        id,
                        "%s: present cost in %s, and against the base plan; across: %s"
                                .formatted(grid.name(), amounts.code(), across))
                .words(down);
        grid.columns()
                .values()
                .forEach(value ->
                        table.numbers(ChangeWords.value(grid.columns().subject().to(value))));
        List<CaseRow> cells = figures.of(Part.GRID, grid.name());
        int width = grid.columns().values().size();
        for (int r = 0; r < grid.rows().values().size(); r++) {
            List<Cell> row = new ArrayList<>();
            row.add(Cell.text(ChangeWords.value(
                    grid.rows().subject().to(grid.rows().values().get(r)))));
            cells.subList(r * width, (r + 1) * width).forEach(cell -> row.add(Cell.text(inGrid(cell))));
            table.row(row);
        }
        return table.build();
    }

    private String inGrid(CaseRow cell) {
        return cell.figures()
                .map(found -> "%s (%s)%s"
                        .formatted(
                                amounts.show(amounts.rounded(found.cost())),
                                percent(found.cost() - figures.base().cost()),
                                found.ending() == Ending.MET ? "" : " *"))
                .orElse("no plan");
    }

    private String percent(double difference) {
        double share = figures.share(difference);
        return (share >= 0.0005 ? "+" : "") + Figures.percent(share);
    }

    private TableView named() {
        TableView.Builder table = TableView.of("case-table", "Named cases; costs in " + amounts.code())
                .words("Case", "Changes", "How planned")
                .numbers("Present cost", "Against base", "Gap", "To pay at once")
                .words("Status", "Note");
        for (CaseRow row : figures.of(Part.CASE, "cases")) {
            table.row(
                    row.sweepCase().name(),
                    ChangeWords.of(row.sweepCase().changes()),
                    mode(row),
                    cost(row),
                    against(row),
                    gap(row),
                    atOnce(row),
                    row.status(),
                    row.note());
        }
        return table.build();
    }

    private TableView losses() {
        TableView.Builder table = TableView.of("loss-table", "What may fail; costs in " + amounts.code())
                .words("Depot", "Loss", "Does the base plan hold?", "What makes it hold")
                .numbers("To pay at once", "Present cost more");
        for (LossRow row : figures.losses()) {
            table.row(
                    row.result().loss().depot(),
                    row.result().loss().words(),
                    row.status(),
                    row.cure(),
                    row.cured()
                            .map(cured -> amounts.show(amounts.rounded(cured.atOnce())))
                            .orElse(""),
                    row.cured()
                            .map(cured ->
                                    TornadoDrawing.signed(amounts, row.result().curedCost()))
                            .orElse(""));
        }
        return table.build();
    }

    private TableView all() {
        TableView.Builder table = TableView.of("all-table", "Every case; costs in " + amounts.code())
                .words("Case", "Changes", "How planned")
                .numbers(
                        "Present cost",
                        "Against base",
                        "Share",
                        "Gap",
                        "To pay at once",
                        "Days met a year",
                        "Short, kWh a year")
                .words("Status", "Note");
        for (CaseRow row : figures.rows()) {
            table.row(
                    row.sweepCase().name(),
                    ChangeWords.of(row.sweepCase().changes()),
                    mode(row),
                    cost(row),
                    against(row),
                    figures.difference(row).map(this::percent).orElse(""),
                    gap(row),
                    atOnce(row),
                    row.figures()
                            .map(found -> Figures.read(found.daysMet(), 0) + " of " + Figures.read(found.days(), 0))
                            .orElse("-"),
                    row.figures()
                            .map(found -> Figures.read(found.shortKwh(), 1))
                            .orElse("-"),
                    row.status(),
                    row.note());
        }
        return table.build();
    }

    private static String mode(CaseRow row) {
        return switch (row.sweepCase().purchases()) {
            case ANEW -> "planned anew";
            case KEPT -> "purchases kept";
        };
    }

    private String cost(CaseRow row) {
        return row.figures()
                .map(found -> amounts.show(amounts.rounded(found.cost())))
                .orElse("-");
    }

    private String against(CaseRow row) {
        return figures.difference(row)
                .map(difference -> TornadoDrawing.signed(amounts, difference))
                .orElse("");
    }

    private static String gap(CaseRow row) {
        return CurveDrawing.gap(row.figures().map(CaseFigures::gap).orElse(OptionalDouble.empty()));
    }

    private String atOnce(CaseRow row) {
        return row.figures()
                .map(found -> amounts.show(amounts.rounded(found.atOnce())))
                .orElse("-");
    }

    private TableView provenance() {
        SolveSettings solve = scenario.solve();
        return TableView.of("provenance-table", "Settings")
                .words("What", "Value")
                .row("Scenario", scenario.name())
                .row("Horizon", Figures.count(scenario.horizonYears(), "year"))
                .row("Discount rate", Figures.percent(scenario.discountRate()) + " a year")
                .row("Gap asked for", SolveViews.gap(solve.relativeGap()))
                .row("Branch-and-bound nodes allowed", Figures.read(BigDecimal.valueOf(solve.nodeLimit()), 0))
                .row("Seed", Integer.toString(solve.seed()))
                .row("Format of plans", Integer.toString(Plan.FORMAT_VERSION))
                .build();
    }

    private TableView inputs() {
        TableView.Builder table = TableView.of("inputs", "Input files that the sweep was made from")
                .words("File", "SHA-256");
        figures.result().inputHashes().forEach(table::row);
        return table.build();
    }

    private String code(double amount) {
        return amounts.showWithCode(amounts.rounded(amount));
    }
}
