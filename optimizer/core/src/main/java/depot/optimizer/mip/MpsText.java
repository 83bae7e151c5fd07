package depot.optimizer.mip;

import depot.optimizer.mip.MipModel.Column;
import depot.optimizer.mip.MipModel.Row;
import java.util.ArrayList;
import java.util.List;

/**
 * A model as free MPS: sections whose heading begins in the first column, and lines of fields between blanks. Written by column, so every variable
 * is listed, one without any coefficient with a zero in the objective.
 *
 * <p>Readers differ about two things, which are therefore always said. The sign of a constant in the objective, given as its right-hand side:
 * instead, it is the coefficient of a variable that is fixed at one. And the bounds of whole numbers, which stand between markers.
 */
final class MpsText {

    private static final String OBJECTIVE = "COST";
    private static final String ONE = "Constant";

    private final MipModel model;
    private final String name;
    private final List<String> columnNames;
    private final List<Row> rows;
    private final List<String> rowNames;
    private final StringBuilder text = new StringBuilder();
    private int markers;

    MpsText(MipModel model) {
        this.model = model;
        ExportNames names = ExportNames.forMps(OBJECTIVE, ONE);
        name = names.legal(model.name());
        columnNames = names.ofColumns(model);
        rows = RowKind.binding(model);
        rowNames = names.ofRows(rows);
    }

    String write() {
        line("NAME", name);
        rows();
        columns();
        rightHandSides();
        bounds();
        line("ENDATA");
        return text.toString();
    }

    private void line(String... fields) {
        text.append(String.join(" ", fields)).append('\n');
    }

    /** A blank in front tells a line from a heading. */
    private void data(String... fields) {
        text.append(' ');
        line(fields);
    }

    private void rows() {
        line("ROWS");
        data("N", OBJECTIVE);
        for (int r = 0; r < rowNames.size(); r++) {
            data(kind(rows.get(r)), rowNames.get(r));
        }
    }

    private static String kind(Row row) {
        return switch (RowKind.of(row)) {
            case AT_MOST -> "L";
            case AT_LEAST -> "G";
            case EQUAL -> "E";
        };
    }

    private record Entry(String row, double coefficient) {}

    private void columns() {
        line("COLUMNS");
        data(ONE, OBJECTIVE, ExportNumbers.text(model.objectiveConstant()));
        List<List<Entry>> entries = entriesByColumn();
        boolean whole = false;
        for (int i = 0; i < columnNames.size(); i++) {
            whole = mark(whole, model.columns().get(i).integer());
            for (Entry entry : entries.get(i)) {
                data(columnNames.get(i), entry.row(), ExportNumbers.text(entry.coefficient()));
            }
            if (entries.get(i).isEmpty()) {
                data(columnNames.get(i), OBJECTIVE, "0");
            }
        }
        mark(whole, false);
    }

    private List<List<Entry>> entriesByColumn() {
        List<List<Entry>> entries = new ArrayList<>();
        columnNames.forEach(column -> entries.add(new ArrayList<>()));
        model.objective().forEachTerm((i, value) -> entries.get(i).add(new Entry(OBJECTIVE, value)));
        for (int r = 0; r < rowNames.size(); r++) {
            String row = rowNames.get(r);
            rows.get(r).expr().forEachTerm((i, value) -> entries.get(i).add(new Entry(row, value)));
        }
        return entries;
    }

    /** Opens or closes the whole numbers where the kind of variable changes. */
    private boolean mark(boolean before, boolean now) {
        if (before != now) {
            data("MARKER" + markers++, "'MARKER'", now ? "'INTORG'" : "'INTEND'");
        }
        return now;
    }

    private void rightHandSides() {
        line("RHS");
        for (int r = 0; r < rowNames.size(); r++) {
            double side = RowKind.side(rows.get(r));
            if (side != 0) {
                data("RHS", rowNames.get(r), ExportNumbers.text(side));
            }
        }
    }

    private void bounds() {
        line("BOUNDS");
        data("FX", "BOUND", ONE, "1");
        for (int i = 0; i < columnNames.size(); i++) {
            Column column = model.columns().get(i);
            if (column.lower() == column.upper()) {
                bound("FX", i, column.lower());
            } else if (column.lower() == -MipModel.INFINITY && column.upper() == MipModel.INFINITY) {
                data("FR", "BOUND", columnNames.get(i));
            } else {
                lower(i, column);
                upper(i, column);
            }
        }
    }

    private void lower(int i, Column column) {
        if (column.lower() == -MipModel.INFINITY) {
            data("MI", "BOUND", columnNames.get(i));
        } else if (column.lower() != 0) {
            bound("LO", i, column.lower());
        }
    }

    private void upper(int i, Column column) {
        if (column.upper() != MipModel.INFINITY) {
            bound("UP", i, column.upper());
        } else if (column.integer()) {
            data("PL", "BOUND", columnNames.get(i));
        }
    }

    private void bound(String kind, int i, double value) {
        data(kind, "BOUND", columnNames.get(i), ExportNumbers.text(value));
    }
}
