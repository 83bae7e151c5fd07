package depot.optimizer.report.page;

import depot.optimizer.dictionary.ChangeKind;
import depot.optimizer.report.page.LineChart.Tick;
import depot.optimizer.report.table.CaseFigures;
import depot.optimizer.report.table.RolloutTable;
import depot.optimizer.report.table.SweepFigures;
import depot.optimizer.report.table.SweepFigures.CaseRow;
import depot.optimizer.report.text.Amounts;
import depot.optimizer.report.text.Figures;
import depot.optimizer.scenario.Phase;
import depot.optimizer.sweep.SweepCase.Part;
import depot.optimizer.sweep.change.ChangeWords;
import depot.optimizer.sweep.spec.Sweep.Frontier;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Draws the least cost along a budget, in steps: what a budget buys, every larger one buys too, and no smaller budget has a plan below the bound of a
 * larger one. So the best plan's cost lies between the two steps at every budget, and not only at those that were planned.
 */
final class FrontierDrawing {

    private final SweepFigures figures;
    private final Amounts amounts;
    private final Frontier frontier;
    private final List<CaseRow> rows;
    private final List<CaseRow> planned;
    private final boolean money;
    private final CaseField field;

    private FrontierDrawing(SweepFigures figures, Amounts amounts, Frontier frontier) {
        this.figures = figures;
        this.amounts = amounts;
        this.frontier = frontier;
        money = frontier.axis().subject().kind() == ChangeKind.BUDGET;
        rows = figures.of(Part.FRONTIER, frontier.name());
        field = CaseField.of(rows, frontier.axis().values(), figures.base().cost());
        planned = field.planned();
    }

    static CurveChart of(SweepFigures figures, Amounts amounts, Frontier frontier, String id) {
        return new FrontierDrawing(figures, amounts, frontier).chart(id);
    }

    private CurveChart chart(String id) {
        String what = ChangeWords.of(frontier.axis().subject());
        boolean banded = field.banded();
        return new CurveChart(
                id,
                frontier.name() + ": least cost along a budget",
                description(banded),
                "Present cost (" + amounts.code() + ")",
                what + " (" + (money ? amounts.code() : "times") + ")",
                ticks(),
                field.y().ticks(),
                planned.size() > 1 ? "M" + costs() : "",
                banded ? "M" + costs() + "L" + boundsBackwards() + "Z" : "",
                field.dots(),
                field.y().place(figures.base().cost()),
                "The best plan's cost lies here",
                rows.stream()
                        .filter(row -> row.figures().isEmpty())
                        .map(field::across)
                        .toList(),
                numbers(id));
    }

    private String description(boolean banded) {
        String ends = planned.isEmpty()
                ? "No plan was found."
                : "From %s at %s to %s at %s."
                        .formatted(
                                amounts.showWithCode(amounts.rounded(
                                        CaseField.found(planned.get(0)).cost())),
                                value(planned.get(0)),
                                amounts.showWithCode(amounts.rounded(CaseField.found(planned.get(planned.size() - 1))
                                        .cost())),
                                value(planned.get(planned.size() - 1)));
        return ends
                + field.y().note()
                + (banded ? " The best plan's cost lies in the band, between the budgets too." : "")
                + (planned.size() < rows.size() ? " Crosses: no plan was found that the budget pays for." : "")
                + field.openDots();
    }

    private String value(CaseRow row) {
        return show(row.sweepCase().changes().get(0).value());
    }

    private String show(BigDecimal value) {
        return money ? amounts.showWithCode(amounts.rounded(value)) : "\u00d7 " + Figures.plain(value.doubleValue(), 4);
    }

    /** A mark for each budget, as long as there is room for its label. */
    private List<Tick> ticks() {
        List<Tick> ticks = new ArrayList<>();
        double labelled = Double.NEGATIVE_INFINITY;
        for (CaseRow row : rows) {
            double place = field.across(row);
            BigDecimal value = row.sweepCase().changes().get(0).value();
            boolean room = place - labelled > (money ? 64 : 40);
            labelled = room ? place : labelled;
            ticks.add(new Tick(
                    place, room ? (money ? Figures.read(value, 0) : Figures.plain(value.doubleValue(), 4)) : ""));
        }
        return ticks;
    }

    /** Level to the next budget, then down to what it costs. */
    private String costs() {
        List<String> points = new ArrayList<>();
        for (int i = 0; i < planned.size(); i++) {
            if (i > 0) {
                points.add(point(
                        planned.get(i), CaseField.found(planned.get(i - 1)).cost()));
            }
            points.add(point(planned.get(i), CaseField.found(planned.get(i)).cost()));
        }
        return String.join("L", points);
    }

    /** From the largest budget back: level at its bound to the next smaller budget, then up to the bound of that one. */
    private String boundsBackwards() {
        List<String> points = new ArrayList<>();
        for (int i = planned.size() - 1; i >= 0; i--) {
            if (i < planned.size() - 1) {
                points.add(point(
                        planned.get(i), CaseField.found(planned.get(i + 1)).boundOrCost()));
            }
            points.add(point(planned.get(i), CaseField.found(planned.get(i)).boundOrCost()));
        }
        return String.join("L", points);
    }

    private String point(CaseRow row, double height) {
        return Figures.plain(field.across(row), 1) + " "
                + Figures.plain(field.y().place(height), 1);
    }

    private TableView numbers(String id) {
        List<String> phases = figures.result().scenario().coupling().phases().stream()
                .map(Phase::id)
                .toList();
        TableView.Builder table = TableView.of(id + "-numbers", frontier.name() + "; amounts in " + amounts.code())
                .numbers(ChangeWords.of(frontier.axis().subject()))
                .numbers("Present cost", "No plan costs less than", "Gap", "Against base");
        phases.forEach(phase -> table.numbers(phases.size() == 1 ? "Spent" : "Spent in " + phase));
        table.words("Status", "Note");
        for (CaseRow row : rows) {
            List<String> cells = new ArrayList<>();
            cells.add(money ? money(row.sweepCase().changes().get(0).value().doubleValue()) : value(row));
            cells.add(row.figures().map(found -> money(found.cost())).orElse("-"));
            OptionalDouble bound = row.figures().map(CaseFigures::bound).orElse(OptionalDouble.empty());
            cells.add(bound.isPresent() ? money(bound.getAsDouble()) : "-");
            cells.add(CurveDrawing.gap(row.figures().map(CaseFigures::gap).orElse(OptionalDouble.empty())));
            cells.add(figures.difference(row)
                    .map(difference -> TornadoDrawing.signed(amounts, difference))
                    .orElse(""));
            List<RolloutTable.Step> steps = SweepFigures.spending(row);
            for (int f = 0; f < phases.size(); f++) {
                cells.add(
                        f < steps.size()
                                ? amounts.show(amounts.rounded(steps.get(f).spent()))
                                : "-");
            }
            cells.add(row.status());
            cells.add(row.note());
            table.row(cells.toArray(new String[0]));
        }
        return table.build();
    }

    private String money(double amount) {
        return amounts.show(amounts.rounded(amount));
    }
}
