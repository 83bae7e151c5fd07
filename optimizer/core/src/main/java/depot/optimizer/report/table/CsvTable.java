package depot.optimizer.report.table;

import depot.optimizer.report.text.Clock;
import depot.optimizer.report.text.Figures;
import depot.optimizer.report.text.SafeText;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.function.Consumer;

/**
 * A table on its way to a file: RFC 4180 (comma, CRLF, quotes doubled), UTF-8. Texts that a spreadsheet would take for a formula get an
 * apostrophe in front.
 */
public final class CsvTable {

    private final TableLayout layout;
    private final StringBuilder text = new StringBuilder();

    /** An empty table: only its heading. */
    public CsvTable(TableLayout layout) {
        this.layout = layout;
        row(row -> layout.columns().forEach(column -> row.text(column.name())));
    }

    /** Its columns. */
    public TableLayout layout() {
        return layout;
    }

    /** Name of the file in the run's folder. */
    public String fileName() {
        return layout.file();
    }

    /** The file's whole content so far. */
    public String content() {
        return text.toString();
    }

    /**
     * Adds a row.
     *
     * @throws IllegalStateException if it has more or fewer cells than the table has columns
     */
    public void row(Consumer<Row> cells) {
        Row row = new Row(text);
        cells.accept(row);
        int width = layout.columns().size();
        if (row.count != width) {
            throw new IllegalStateException(
                    "%s has %d columns, a row has %d cells.".formatted(layout.file(), width, row.count));
        }
        text.append("\r\n");
    }

    /** A text as a cell: neutralised where it looks like a formula, quoted where it must be. */
    static String cell(String value) {
        String safe = SafeText.neutral(value);
        boolean quoted = safe.chars().anyMatch(c -> c == ',' || c == '"' || c == '\r' || c == '\n');
        return quoted ? '"' + safe.replace("\"", "\"\"") + '"' : safe;
    }

    /** The cells of one row, from left to right. */
    public static final class Row {

        private final StringBuilder text;
        private int count;

        private Row(StringBuilder text) {
            this.text = text;
        }

        /** Words. */
        public Row text(String value) {
            if (count > 0) {
                text.append(',');
            }
            count++;
            text.append(cell(value));
            return this;
        }

        /** A whole number. */
        public Row count(long value) {
            return text(Long.toString(value));
        }

        /** A number with at most so many decimals. */
        public Row number(double value, int decimals) {
            return text(Figures.plain(value, decimals));
        }

        /** An amount, all its decimals. */
        public Row exact(BigDecimal value) {
            return text(value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString());
        }

        /** An amount of money with so many decimals. */
        public Row money(double value, int decimals) {
            return text(BigDecimal.valueOf(value)
                    .setScale(decimals, RoundingMode.HALF_UP)
                    .toPlainString());
        }

        /** Minutes after midnight as a time. */
        public Row time(int minute) {
            return text(Clock.time(minute));
        }

        /** "yes" or "no". */
        public Row yesNo(boolean value) {
            return text(value ? "yes" : "no");
        }

        /** Nothing. */
        public Row empty() {
            return text("");
        }
    }
}
