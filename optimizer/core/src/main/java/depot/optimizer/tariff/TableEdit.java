package depot.optimizer.tariff;

import depot.optimizer.dictionary.Field;
import depot.optimizer.dictionary.Table;
import depot.optimizer.read.RawRow;
import depot.optimizer.read.RawTable;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Changes the rows of one tariff in the text of a table and leaves every other row byte for byte as it is. New rows take the file's own
 * order of columns and its line ends.
 */
final class TableEdit {
    private final RawTable table;
    private final List<Piece> pieces;

    /**
     * A row as it stands in the file, with its line end.
     *
     * @param row empty: the header or a blank line
     */
    private record Piece(String text, Optional<RawRow> row) {}

    private TableEdit(RawTable table, List<Piece> pieces) {
        this.table = table;
        this.pieces = pieces;
    }

    /** A table that is to be edited, or empty when its text cannot be split into the rows that were read. */
    static Optional<TableEdit> of(RawTable table, String text) {
        List<Piece> pieces = new ArrayList<>();
        boolean headerSeen = false;
        int next = 0;
        for (String line : lines(text)) {
            boolean blank = line.isBlank() || line.equals("\uFEFF");
            boolean row = !blank && headerSeen;
            if (row && next == table.rows().size()) {
                return Optional.empty();
            }
            pieces.add(new Piece(line, row ? Optional.of(table.rows().get(next++)) : Optional.empty()));
            headerSeen |= !blank;
        }
        return next == table.rows().size() ? Optional.of(new TableEdit(table, pieces)) : Optional.empty();
    }

    /** A table that does not exist yet, with all its columns. */
    static TableEdit fresh(Table table) {
        List<String> header = table.fields().stream().map(Field::name).toList();
        return new TableEdit(
                new RawTable(table.file(), 1, header, List.of(), true),
                List.of(new Piece(String.join(",", header) + "\n", Optional.empty())));
    }

    /** Whether a row has this value in a column. */
    boolean has(Field<String> column, String value) {
        return pieces.stream().anyMatch(piece -> matches(piece, column, value));
    }

    /** Columns of these rows that the file has no place for. */
    List<String> missing(List<Map<String, String>> rows) {
        return rows.stream()
                .flatMap(row -> row.keySet().stream())
                .filter(column -> !table.header().contains(column))
                .distinct()
                .toList();
    }

    /**
     * The text with new rows: in the place of the rows that have this value in a column, or else at the end.
     *
     * @param rows cells that are not blank, by column; none of the columns is missing in the file
     */
    String with(List<Map<String, String>> rows, Field<String> column, String value) {
        String lineEnd = lineEnd();
        StringBuilder added = new StringBuilder();
        rows.forEach(row -> added.append(line(row)).append(lineEnd));
        StringBuilder text = new StringBuilder();
        boolean open = true;
        for (Piece piece : pieces) {
            boolean old = matches(piece, column, value);
            if (old && open) {
                text.append(added);
                open = false;
            }
            if (!old) {
                text.append(piece.text());
            }
        }
        if (open && !rows.isEmpty()) {
            boolean ended = text.length() > 0 && text.charAt(text.length() - 1) == '\n';
            text.append(ended ? "" : lineEnd).append(added);
        }
        return text.toString();
    }

    private boolean matches(Piece piece, Field<String> column, String value) {
        int index = table.header().indexOf(column.name());
        return index >= 0
                && piece.row().isPresent()
                && piece.row().get().cells().get(index).equals(value);
    }

    private String line(Map<String, String> cells) {
        return String.join(
                ",",
                table.header().stream()
                        .map(column -> quoted(cells.getOrDefault(column, "")))
                        .toList());
    }

    private static String quoted(String cell) {
        boolean plain = cell.chars().noneMatch(letter -> ",\"\r\n".indexOf(letter) >= 0);
        return plain ? cell : '"' + cell.replace("\"", "\"\"") + '"';
    }

    private String lineEnd() {
        return pieces.get(0).text().endsWith("\r\n") ? "\r\n" : "\n";
    }

    /** Splits at line ends outside quotes; each part keeps its own. */
    private static List<String> lines(String text) {
        List<String> lines = new ArrayList<>();
        boolean quoted = false;
        int start = 0;
        for (int index = 0; index < text.length(); index++) {
            char letter = text.charAt(index);
            if (letter == '"') {
                quoted = !quoted;
            }
            boolean returned = letter == '\r' && (index + 1 == text.length() || text.charAt(index + 1) != '\n');
            if (!quoted && (letter == '\n' || returned)) {
                lines.add(text.substring(start, index + 1));
                start = index + 1;
            }
        }
        if (start < text.length()) {
            lines.add(text.substring(start));
        }
        return lines;
    }
}
