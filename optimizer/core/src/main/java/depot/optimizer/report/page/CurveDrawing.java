package depot.optimizer.report.page;

import depot.optimizer.report.page.LineChart.Tick;
import depot.optimizer.report.table.CaseFigures;
import depot.optimizer.report.table.SweepFigures;
import depot.optimizer.report.table.SweepFigures.CaseRow;
import depot.optimizer.report.text.Amounts;
import depot.optimizer.report.text.Figures;
import depot.optimizer.sweep.SweepCase.Part;
import depot.optimizer.sweep.change.Change;
import depot.optimizer.sweep.change.ChangeWords;
import depot.optimizer.sweep.spec.Sweep.Line;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** Draws cost along a change. */
final class CurveDrawing {

    private final SweepFigures figures;
    private final Amounts amounts;
    private final Line line;
    private final List<CaseRow> rows;
    private final List<CaseRow> planned;
    private final CaseField field;

    private CurveDrawing(SweepFigures figures, Amounts amounts, Line line) {
        this.figures = figures;
        this.amounts = amounts;
        this.line = line;
        rows = figures.of(Part.LINE, line.name());
        field = CaseField.of(rows, line.axis().values(), figures.base().cost());
        planned = field.planned();
    }

    static CurveChart of(SweepFigures figures, Amounts amounts, Line line, String id) {
        return new CurveDrawing(figures, amounts, line).chart(id);
    }

    private CurveChart chart(String id) {
        String what = ChangeWords.of(line.axis().subject());
        String unit = ChangeWords.unit(line.axis().subject().kind());
        boolean banded = field.banded();
        return new CurveChart(
                id,
                line.name() + ": cost along " + decapitalised(what),
                description(banded),
                "Present cost (" + amounts.code() + ")",
                unit.isEmpty() ? what : what + " (" + unit + ")",
                ticks(),
                field.y().ticks(),
                planned.size() > 1 ? path(planned, CaseFigures::cost) : "",
                banded ? band() : "",
                field.dots(),
                field.y().place(figures.base().cost()),
                "Gap down to the bound",
                List.of(),
                numbers(id));
    }

    private String description(boolean banded) {
        String ends = planned.isEmpty()
                ? "No plan was found."
                : "From %s at %s to %s at %s."
                        .formatted(
                                show(planned.get(0)),
                                value(planned.get(0)),
                                show(planned.get(planned.size() - 1)),
                                value(planned.get(planned.size() - 1)));
        return ends
                + field.y().note()
                + (banded ? " The band below the line is the gap: the best plan's cost lies in it." : "")
                + field.openDots();
    }

    private String show(CaseRow row) {
        return amounts.showWithCode(amounts.rounded(CaseField.found(row).cost()));
    }

    private static String value(CaseRow row) {
        return ChangeWords.value(change(row));
    }

    private static Change change(CaseRow row) {
        return row.sweepCase().changes().get(0);
    }

    private static String decapitalised(String words) {
        return words.substring(0, 1).toLowerCase(Locale.ROOT) + words.substring(1);
    }

    /** A mark for each value, as long as there is room for its label. */
    private List<Tick> ticks() {
        List<Tick> ticks = new ArrayList<>();
        for (CaseRow row : rows) {
            double place = field.across(row);
            boolean room =
                    ticks.isEmpty() || place - ticks.get(ticks.size() - 1).place() > 40;
            String label = Figures.plain(change(row).value(), 4);
            ticks.add(new Tick(place, room ? label : ""));
        }
        return ticks;
    }

    /** A figure of a case. */
    private interface Height {
        double of(CaseFigures found);
    }

    private String path(List<CaseRow> points, Height height) {
        StringBuilder path = new StringBuilder();
        for (CaseRow row : points) {
            path.append(path.isEmpty() ? "M" : "L")
                    .append(Figures.plain(field.across(row), 1))
                    .append(' ')
                    .append(Figures.plain(field.y().place(height.of(CaseField.found(row))), 1));
        }
        return path.toString();
    }

    private String band() {
        List<CaseRow> back = new ArrayList<>(planned);
        Collections.reverse(back);
        return path(planned, CaseFigures::cost)
                + path(back, CaseFigures::boundOrCost).replace('M', 'L')
                + "Z";
    }

    private TableView numbers(String id) {
        TableView.Builder table = TableView.of(id + "-numbers", line.name() + "; costs in " + amounts.code())
                .words(ChangeWords.of(line.axis().subject()))
                .numbers("Present cost", "No plan costs less than", "Gap", "Against base", "To pay at once")
                .words("Status", "Note");
        for (CaseRow row : rows) {
            table.row(
                    value(row),
                    row.figures().map(found -> money(found.cost())).orElse("-"),
                    optional(row.figures().map(CaseFigures::bound).orElse(OptionalDouble.empty())),
                    gap(row.figures().map(CaseFigures::gap).orElse(OptionalDouble.empty())),
                    figures.difference(row)
                            .map(difference -> TornadoDrawing.signed(amounts, difference))
                            .orElse(""),
                    row.figures()
                            .map(found -> amounts.show(amounts.rounded(found.atOnce())))
                            .orElse("-"),
                    row.status(),
                    row.note());
        }
        return table.build();
    }

    private String money(double amount) {
        return amounts.show(amounts.rounded(amount));
    }

    private String optional(OptionalDouble amount) {
        return amount.isPresent() ? money(amount.getAsDouble()) : "-";
    }

    static String gap(OptionalDouble gap) {
        return gap.isPresent() ? SolveViews.gap(gap.getAsDouble()) : "-";
    }
}
