package depot.optimizer.report.compare;

import depot.optimizer.report.compare.Comparison.Line;
import depot.optimizer.report.compare.Comparison.Part;
import depot.optimizer.report.table.CsvTable;
import depot.optimizer.report.table.OutputColumn;
import depot.optimizer.report.table.TableLayout;
import java.util.ArrayList;
import java.util.List;

/** compare.csv: one row per thing compared, one column per run. */
final class ComparisonTable {

    private ComparisonTable() {}

    static CsvTable of(Comparison comparison) {
        List<OutputColumn> columns = new ArrayList<>(List.of(
                OutputColumn.words("part", "what is compared: purchases, costs, years, risk"),
                OutputColumn.words("what", "the thing compared"),
                OutputColumn.words("unit", "of the values").orBlank(),
                OutputColumn.yesNo("differs", "whether the runs differ in it")));
        comparison
                .runs()
                .forEach(run -> columns.add(
                        OutputColumn.words(run, "value of the run " + run).orBlank()));
        CsvTable table = new CsvTable(new TableLayout(RunSet.TABLE, "thing compared", columns));
        for (Part part : comparison.parts()) {
            for (Line line : part.lines()) {
                table.row(row -> {
                    row.text(part.id()).text(line.what()).text(line.unit()).yesNo(line.differs());
                    line.values().forEach(value -> row.text(value.plain(line.decimals())));
                });
            }
        }
        return table;
    }
}
