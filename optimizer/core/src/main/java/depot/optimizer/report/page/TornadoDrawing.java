package depot.optimizer.report.page;

import depot.optimizer.report.page.TornadoChart.Bar;
import depot.optimizer.report.page.TornadoChart.Piece;
import depot.optimizer.report.table.CaseFigures;
import depot.optimizer.report.table.CaseFigures.Ending;
import depot.optimizer.report.table.SweepFigures;
import depot.optimizer.report.table.SweepFigures.CaseRow;
import depot.optimizer.report.table.SweepFigures.Swing;
import depot.optimizer.report.text.Amounts;
import depot.optimizer.report.text.Figures;
import depot.optimizer.sweep.change.Change;
import depot.optimizer.sweep.change.ChangeWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Draws the tornado. */
final class TornadoDrawing {

    private final SweepFigures figures;
    private final Amounts amounts;
    private final Scale scale;

    private TornadoDrawing(SweepFigures figures, Amounts amounts) {
        this.figures = figures;
        this.amounts = amounts;
        double low = figures.base().cost();
        double high = low;
        for (Swing swing : figures.swings()) {
            for (CaseRow end : List.of(swing.low(), swing.high())) {
                double cost = end.figures().map(CaseFigures::cost).orElse(low);
                low = Math.min(low, cost);
                high = Math.max(high, cost);
            }
        }
        scale = Scale.covering(low, high, TornadoChart.LEFT, TornadoChart.RIGHT);
    }

    static TornadoChart of(SweepFigures figures, Amounts amounts) {
        return new TornadoDrawing(figures, amounts).chart();
    }

    private TornadoChart chart() {
        List<Swing> swings = figures.swings();
        List<Bar> bars = new ArrayList<>();
        for (Swing swing : swings) {
            double top = TornadoChart.TOP + (double) TornadoChart.ROW * bars.size();
            List<Piece> pieces = new ArrayList<>();
            piece("bar-low", 0, swing.low()).ifPresent(pieces::add);
            piece("bar-high", TornadoChart.THICK, swing.high()).ifPresent(pieces::add);
            bars.add(new Bar(words(swing), top, pieces));
        }
        String widest = swings.isEmpty() ? "" : words(swings.get(0));
        return new TornadoChart(
                "tornado-chart",
                "How far each change moves the cost",
                "One change at a time, the widest first: %s. The upright line is the base plan, %s.%s"
                        .formatted(
                                widest,
                                amounts.showWithCode(
                                        amounts.rounded(figures.base().cost())),
                                scale.note()),
                "Present cost (" + amounts.code() + ")",
                scale.ticks(),
                scale.place(figures.base().cost()),
                bars,
                numbers(swings));
    }

    private static String words(Swing swing) {
        Change low = swing.low().sweepCase().changes().get(0);
        Change high = swing.high().sweepCase().changes().get(0);
        boolean met = List.of(swing.low(), swing.high()).stream()
                .allMatch(end ->
                        end.figures().map(found -> found.ending() == Ending.MET).orElse(false));
        return "%s: %s to %s%s"
                .formatted(
                        ChangeWords.of(low.subject()),
                        ChangeWords.value(low),
                        ChangeWords.value(high),
                        met ? "" : " (not every day is met)");
    }

    private Optional<Piece> piece(String css, int down, CaseRow end) {
        return end.figures().map(found -> {
            double base = scale.place(figures.base().cost());
            double place = scale.place(found.cost());
            return new Piece(css, down, Math.min(base, place), Math.round(10 * Math.abs(place - base)) / 10.0);
        });
    }

    private TableView numbers(List<Swing> swings) {
        TableView.Builder table = TableView.of("tornado-table", "One change at a time; costs in " + amounts.code())
                .words("Change", "Low", "High")
                .numbers(
                        "Cost at low",
                        "Against base",
                        "Gap",
                        "Cost at high",
                        "Against base",
                        "Gap",
                        "Span between the two");
        for (Swing swing : swings) {
            Change low = swing.low().sweepCase().changes().get(0);
            Change high = swing.high().sweepCase().changes().get(0);
            List<Cell> cells = new ArrayList<>();
            cells.add(Cell.text(ChangeWords.of(low.subject())));
            cells.add(Cell.text(ChangeWords.value(low)));
            cells.add(Cell.text(ChangeWords.value(high)));
            addEnd(cells, swing.low());
            addEnd(cells, swing.high());
            cells.add(Cell.text(amounts.show(amounts.rounded(swing.span()))));
            table.row(cells);
        }
        return table.build();
    }

    private void addEnd(List<Cell> cells, CaseRow end) {
        cells.add(Cell.text(end.figures()
                .map(found -> amounts.show(amounts.rounded(found.cost())))
                .orElse("no plan")));
        cells.add(Cell.text(figures.difference(end)
                .map(difference -> signed(amounts, difference))
                .orElse("")));
        OptionalDouble gap = end.figures().map(CaseFigures::gap).orElse(OptionalDouble.empty());
        cells.add(Cell.text(gap.isPresent() ? SolveViews.gap(gap.getAsDouble()) : "-"));
    }

    /** An amount with its sign, such as "+1,200.00". */
    static String signed(Amounts amounts, double amount) {
        var rounded = amounts.rounded(amount);
        return (rounded.signum() > 0 ? "+" : "") + Figures.read(rounded, amounts.decimals());
    }
}
