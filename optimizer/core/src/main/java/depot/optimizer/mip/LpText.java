package depot.optimizer.mip;

import depot.optimizer.mip.MipModel.Column;
import depot.optimizer.mip.MipModel.Row;
import java.util.BitSet;
import java.util.List;
import java.util.function.Predicate;

/**
 * A model in the LP format: sums, comparisons and lists of names, for people to read. The format has no place for a constant in the objective, so it
 * is the coefficient of a variable that is fixed at one. A variable without any coefficient is listed in the objective, with a zero.
 */
final class LpText {

    private static final String OBJECTIVE = "Obj";
    private static final String ONE = "Constant";

    /** Readers take lines of at least 255 characters. */
    private static final int WIDTH = 120;

    private final MipModel model;
    private final String name;
    private final List<String> columnNames;
    private final List<Row> rows;
    private final List<String> rowNames;
    private final StringBuilder text = new StringBuilder();
    private int lineStart;

    LpText(MipModel model) {
        this.model = model;
        ExportNames names = ExportNames.forLp(OBJECTIVE, ONE);
        name = names.legal(model.name());
        columnNames = names.ofColumns(model);
        rows = RowKind.binding(model);
        rowNames = names.ofRows(rows);
    }

    String write() {
        line("\\ " + name);
        line("Minimize");
        objective();
        line("Subject To");
        for (int r = 0; r < rowNames.size(); r++) {
            row(rowNames.get(r), rows.get(r));
        }
        line("Bounds");
        line(" " + ONE + " = 1");
        for (int i = 0; i < columnNames.size(); i++) {
            bounds(columnNames.get(i), model.columns().get(i));
        }
        list("Generals", column -> column.integer() && !binary(column));
        list("Binaries", LpText::binary);
        line("End");
        return text.toString();
    }

    private void line(String content) {
        text.append(content).append('\n');
        lineStart = text.length();
    }

    private void objective() {
        text.append(' ').append(OBJECTIVE).append(':');
        term(model.objectiveConstant(), ONE);
        model.objective().forEachTerm((i, value) -> term(value, columnNames.get(i)));
        BitSet used = used();
        for (int i = used.nextClearBit(0); i < columnNames.size(); i = used.nextClearBit(i + 1)) {
            term(0, columnNames.get(i));
        }
        line("");
    }

    private BitSet used() {
        BitSet used = new BitSet();
        model.objective().forEachTerm((i, value) -> used.set(i));
        for (Row row : rows) {
            row.expr().forEachTerm((i, value) -> used.set(i));
        }
        return used;
    }

    private void term(double coefficient, String variable) {
        String number = ExportNumbers.text(Math.abs(coefficient));
        String term = " %s %s %s".formatted(coefficient < 0 ? "-" : "+", number, variable);
        if (text.length() - lineStart + term.length() > WIDTH) {
            line("");
            text.append(' ');
        }
        text.append(term);
    }

    /** A sum needs a term, even where nothing is added up. */
    private void row(String rowName, Row row) {
        text.append(' ').append(rowName).append(':');
        int start = text.length();
        row.expr().forEachTerm((i, value) -> term(value, columnNames.get(i)));
        if (text.length() == start) {
            term(0, ONE);
        }
        String sign =
                switch (RowKind.of(row)) {
                    case AT_MOST -> "<=";
                    case AT_LEAST -> ">=";
                    case EQUAL -> "=";
                };
        line(" " + sign + " " + ExportNumbers.text(RowKind.side(row)));
    }

    private void bounds(String variable, Column column) {
        if (binary(column) || (column.lower() == 0 && column.upper() == MipModel.INFINITY)) {
            return;
        }
        if (column.lower() == column.upper()) {
            line(" %s = %s".formatted(variable, limit(column.lower())));
        } else if (column.lower() == -MipModel.INFINITY && column.upper() == MipModel.INFINITY) {
            line(" %s free".formatted(variable));
        } else if (column.upper() == MipModel.INFINITY) {
            line(" %s >= %s".formatted(variable, limit(column.lower())));
        } else {
            line(" %s <= %s <= %s".formatted(limit(column.lower()), variable, limit(column.upper())));
        }
    }

    private static String limit(double bound) {
        return bound == -MipModel.INFINITY ? "-inf" : ExportNumbers.text(bound);
    }

    private static boolean binary(Column column) {
        return column.integer() && column.lower() == 0 && column.upper() == 1;
    }

    private void list(String heading, Predicate<Column> listed) {
        boolean headed = false;
        for (int i = 0; i < columnNames.size(); i++) {
            if (listed.test(model.columns().get(i))) {
                if (!headed) {
                    line(heading);
                    headed = true;
                }
                line(" " + columnNames.get(i));
            }
        }
    }
}
