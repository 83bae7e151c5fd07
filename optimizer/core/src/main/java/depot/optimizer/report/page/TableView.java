package depot.optimizer.report.page;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A table as it is shown.
 *
 * @param id unique on its page
 * @param caption what it lists, with the units that its columns share
 * @param rows of as many cells as there are columns; the first cell names its row
 * @param totals rows of sums, may be empty
 */
public record TableView(
        String id, String caption, List<Column> columns, List<List<Cell>> rows, List<List<Cell>> totals) {

    /** Columns from which on a table needs smaller type on paper. */
    private static final int WIDE = 9;

    /** Columns from which on it needs the smallest. */
    private static final int WIDEST = 12;

    /** Whether there is anything to show. */
    public boolean empty() {
        return rows.isEmpty();
    }

    /** Class in the style sheet for its width: how small its type has to be on paper. */
    public String css() {
        return columns.size() >= WIDEST ? "wide widest" : columns.size() >= WIDE ? "wide" : "";
    }

    /** A column: its heading with the unit, and how its cells stand. */
    public record Column(String heading, Kind kind) {}

    /** How the cells of a column stand. */
    public enum Kind {
        /** Words, to the left. */
        WORDS("words"),
        /** Numbers, to the right. */
        NUMBER("number"),
        /** Bars, from the left. */
        BAR("bar");

        private final String css;

        Kind(String css) {
            this.css = css;
        }

        /** Class in the style sheet. */
        public String css() {
            return css;
        }
    }

    /** Starts a table. */
    public static Builder of(String id, String caption) {
        return new Builder(id, caption);
    }

    /** Collects columns, then rows. */
    public static final class Builder {

        private final String id;
        private final String caption;
        private final List<Column> columns = new ArrayList<>();
        private final List<List<Cell>> rows = new ArrayList<>();
        private final List<List<Cell>> totals = new ArrayList<>();

        private Builder(String id, String caption) {
            this.id = id;
            this.caption = caption;
        }

        /** Adds columns of words. */
        public Builder words(String... headings) {
            return columns(Kind.WORDS, headings);
        }

        /** Adds columns of numbers. */
        public Builder numbers(String... headings) {
            return columns(Kind.NUMBER, headings);
        }

        /** Adds a column of bars. */
        public Builder bars(String heading) {
            return columns(Kind.BAR, heading);
        }

        /** Adds a row of plain texts. */
        public Builder row(String... texts) {
            return row(Arrays.stream(texts).map(Cell::text).toList());
        }

        /** Adds a row. */
        public Builder row(List<Cell> cells) {
            rows.add(checked(cells));
            return this;
        }

        /** Adds a row of sums. */
        public Builder total(String... texts) {
            totals.add(checked(Arrays.stream(texts).map(Cell::text).toList()));
            return this;
        }

        /** The table. */
        public TableView build() {
            return new TableView(id, caption, List.copyOf(columns), List.copyOf(rows), List.copyOf(totals));
        }

        private Builder columns(Kind kind, String... headings) {
            for (String heading : headings) {
                columns.add(new Column(heading, kind));
            }
            return this;
        }

        private List<Cell> checked(List<Cell> cells) {
            if (cells.size() != columns.size()) {
                throw new IllegalArgumentException(
                        "Table %s has %d columns, a row has %d cells.".formatted(id, columns.size(), cells.size()));
            }
            return List.copyOf(cells);
        }
    }
}
