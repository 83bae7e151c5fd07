package depot.optimizer.report.page;

import depot.optimizer.report.page.CurveChart.Dot;
import depot.optimizer.report.table.CaseFigures;
import depot.optimizer.report.table.CaseFigures.Ending;
import depot.optimizer.report.table.SweepFigures.CaseRow;
import java.math.BigDecimal;
import java.util.List;

/**
 * Where the cases along one change stand in a chart.
 *
 * @param planned those with a plan
 * @param x the change's value across
 * @param y cost upwards, wide enough for costs, bounds and the base plan
 */
record CaseField(List<CaseRow> planned, Scale x, Scale y) {

    /**
     * Measures it out.
     *
     * @param values of the change, rising
     * @param base cost of the base plan
     */
    static CaseField of(List<CaseRow> rows, List<BigDecimal> values, double base) {
        List<CaseRow> planned =
                rows.stream().filter(row -> row.figures().isPresent()).toList();
        double first = values.get(0).doubleValue();
        double last = values.get(values.size() - 1).doubleValue();
        return new CaseField(
                planned,
                new Scale(first, last, last - first, CurveChart.LEFT + 20, CurveChart.RIGHT - 20),
                Scale.covering(
                        planned.stream()
                                .mapToDouble(row -> found(row).boundOrCost())
                                .reduce(base, Math::min),
                        planned.stream().mapToDouble(row -> found(row).cost()).reduce(base, Math::max),
                        CurveChart.BOTTOM,
                        CurveChart.TOP));
    }

    /** Figures of a case with a plan. */
    static CaseFigures found(CaseRow row) {
        return row.figures().orElseThrow();
    }

    /** Where a case stands across. */
    double across(CaseRow row) {
        return x.place(row.sweepCase().changes().get(0).value().doubleValue());
    }

    /** Whether bounds can be drawn as a band. */
    boolean banded() {
        return planned.size() > 1
                && planned.stream().allMatch(row -> found(row).bound().isPresent());
    }

    /** A dot for each cost, open where days are missed. */
    List<Dot> dots() {
        return planned.stream()
                .map(row -> new Dot(across(row), y.place(found(row).cost()), missed(row) ? "dot open" : "dot"))
                .toList();
    }

    /** What open dots mean, empty: there are none. */
    String openDots() {
        return planned.stream().anyMatch(CaseField::missed) ? " Open dots: not every day is met." : "";
    }

    private static boolean missed(CaseRow row) {
        return found(row).ending() != Ending.MET;
    }
}
