package depot.optimizer.report.compare;

import depot.optimizer.report.compare.Comparison.Line;
import depot.optimizer.report.compare.Comparison.Part;
import depot.optimizer.report.table.CsvTable;
import java.util.ArrayList;
import java.util.List;

/** compare.csv: one row per thing compared, one column per run. */
final class ComparisonTable {

    private ComparisonTable() {}

    static CsvTable of(Comparison comparison) {
        List<String> columns = new ArrayList<>(List.of("part", "what", "unit", "differs"));
        columns.addAll(comparison.runs());
        CsvTable table = new CsvTable(RunSet.TABLE, columns.toArray(new String[0]));
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
