package depot.optimizer.report.compare;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** A table of a run, read back: rows of texts under their headings. */
public final class RunTable {

    private static final ObjectReader READER =
            new CsvMapper().readerFor(String[].class).with(CsvParser.Feature.WRAP_AS_ARRAY);

    private final Path file;
    private final List<String> columns;
    private final List<String[]> rows;

    private RunTable(Path file, List<String> columns, List<String[]> rows) {
        this.file = file;
        this.columns = columns;
        this.rows = rows;
    }

    /**
     * Reads a table.
     *
     * @throws UnreadableRunException if it is missing, no table, or a row has more or fewer cells than the heading
     */
    public static RunTable read(Path folder, String name) throws UnreadableRunException {
        Path file = folder.resolve(name);
        try (MappingIterator<String[]> lines = READER.readValues(Files.readString(file))) {
            List<String[]> rows = new ArrayList<>(lines.readAll());
            if (rows.isEmpty()) {
                throw new UnreadableRunException(file + " is empty. Maybe the run was edited; plan it again.");
            }
            List<String> columns = List.of(rows.remove(0));
            for (int i = 0; i < rows.size(); i++) {
                if (rows.get(i).length != columns.size()) {
                    throw new UnreadableRunException("%s, line %d: the row has %d cells, the heading has %d."
                            .formatted(file, i + 2, rows.get(i).length, columns.size()));
                }
            }
            return new RunTable(file, columns, rows);
        } catch (NoSuchFileException e) {
            throw new UnreadableRunException(
                    "There is no " + name + " in " + folder
                            + ". Maybe the run is older than this program; plan it again.",
                    e);
        } catch (JsonProcessingException e) {
            throw new UnreadableRunException(
                    "%s, line %d: %s."
                            .formatted(
                                    file,
                                    e.getLocation() == null
                                            ? 1
                                            : e.getLocation().getLineNr(),
                                    e.getOriginalMessage().lines().findFirst().orElse("no table")),
                    e);
        } catch (UnreadableRunException e) {
            throw e;
        } catch (IOException e) {
            throw new UnreadableRunException("Cannot read " + file + ": " + e.getMessage(), e);
        }
    }

    /** How many rows it has. */
    public int size() {
        return rows.size();
    }

    /**
     * A cell as text.
     *
     * @throws UnreadableRunException if the table has no such column
     */
    public String text(int row, String column) throws UnreadableRunException {
        int index = columns.indexOf(column);
        if (index < 0) {
            throw new UnreadableRunException(
                    "%s, line 1: there is no column %s. Maybe the run is older than this program; plan it again."
                            .formatted(file, column));
        }
        return rows.get(row)[index];
    }

    /**
     * A cell as a number.
     *
     * @throws UnreadableRunException if it is none
     */
    public double number(int row, String column) throws UnreadableRunException {
        return find(row, column)
                .orElseThrow(() -> new UnreadableRunException(
                        "%s, line %d, column %s: the value is missing.".formatted(file, row + 2, column)));
    }

    /** A cell as a number, empty when it is blank. */
    OptionalDouble find(int row, String column) throws UnreadableRunException {
        String text = text(row, column);
        if (text.isEmpty()) {
            return OptionalDouble.empty();
        }
        try {
            return OptionalDouble.of(Double.parseDouble(text));
        } catch (NumberFormatException e) {
            throw new UnreadableRunException(
                    "%s, line %d, column %s: \"%s\" is not a number.".formatted(file, row + 2, column, text), e);
        }
    }

    /** Number of the row with a text in a column. */
    int rowOf(String column, String wanted) throws UnreadableRunException {
        for (int row = 0; row < rows.size(); row++) {
            if (text(row, column).equals(wanted)) {
                return row;
            }
        }
        throw new UnreadableRunException("%s has no row %s.".formatted(file, wanted));
    }
}
