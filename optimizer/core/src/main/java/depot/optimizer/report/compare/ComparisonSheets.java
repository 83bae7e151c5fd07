package depot.optimizer.report.compare;

import depot.optimizer.report.compare.Comparison.Line;
import depot.optimizer.report.compare.Comparison.Part;
import depot.optimizer.report.compare.Comparison.Value;
import depot.optimizer.report.workbook.SideBySide;
import java.util.List;

/** A comparison as sheets of a workbook. */
final class ComparisonSheets {

    private ComparisonSheets() {}

    static List<SideBySide.Sheet> of(Comparison comparison) {
        return comparison.parts().stream()
                .map(part -> new SideBySide.Sheet(
                        part.id(), part.title(), comparison.warnings(), comparison.runs(), rows(part)))
                .toList();
    }

    private static List<SideBySide.Row> rows(Part part) {
        return part.lines().stream().map(ComparisonSheets::row).toList();
    }

    private static SideBySide.Row row(Line line) {
        return new SideBySide.Row(
                line.what(),
                line.unit(),
                line.values().stream().map(Value::number).toList(),
                line.values().stream().map(Value::remark).toList());
    }
}
