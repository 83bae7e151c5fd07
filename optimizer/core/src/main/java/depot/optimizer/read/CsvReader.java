package depot.optimizer.read;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.csv.CsvFactory;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

/** Reads a CSV text of RFC 4180: commas, double quotes, any line ends; the first line is the header. */
final class CsvReader {
    private static final CsvFactory FACTORY =
            CsvFactory.builder().enable(CsvParser.Feature.WRAP_AS_ARRAY).build();

    private final String file;
    private final Consumer<ReadProblem> problems;
    private final List<RawRow> rows = new ArrayList<>();
    private boolean whole = true;

    private CsvReader(String file, Consumer<ReadProblem> problems) {
        this.file = file;
        this.problems = problems;
    }

    /** The table, or empty after telling what is wrong: a file without a usable header is no table. */
    static Optional<RawTable> read(String file, String text, Consumer<ReadProblem> problems) {
        return new CsvReader(file, problems).table(text);
    }

    private Optional<RawTable> table(String text) {
        readRows(text);
        if (rows.isEmpty()) {
            if (whole) {
                problems.accept(ReadProblem.ofFile(
                        file, "the file is empty", "write at least the header, or delete an optional table"));
            }
            return Optional.empty();
        }
        RawRow header = rows.remove(0);
        if (!headerIsSound(header)) {
            return Optional.empty();
        }
        int width = header.cells().size();
        rows.removeIf(row -> ragged(row, width));
        return Optional.of(new RawTable(file, header.line(), header.cells(), rows, whole));
    }

    private void readRows(String text) {
        int rowLine = 1;
        try (CsvParser parser = FACTORY.createParser(text)) {
            parser.nextToken();
            while (parser.nextToken() == JsonToken.START_ARRAY) {
                rowLine = parser.currentLocation().getLineNr();
                List<String> cells = new ArrayList<>();
                while (parser.nextToken() != JsonToken.END_ARRAY) {
                    cells.add(parser.getText().strip());
                }
                // A lone empty cell is a blank line: no table has only one column.
                if (cells.size() > 1 || !cells.get(0).isEmpty()) {
                    rows.add(new RawRow(rowLine, cells));
                }
            }
        } catch (IOException broken) {
            whole = false;
            problems.accept(problem(broken, rowLine));
        }
    }

    /** Jackson names the end of an unclosed cell; what helps is where it begins. */
    private ReadProblem problem(IOException broken, int rowLine) {
        String message =
                broken instanceof JsonProcessingException detail ? detail.getOriginalMessage() : "cannot read it";
        if (message.startsWith("Missing closing quote")) {
            return ReadProblem.ofLine(
                    file,
                    rowLine,
                    "a quote is opened in the row of this line and never closed",
                    "close it, or double it inside");
        }
        JsonLocation place = broken instanceof JsonProcessingException detail ? detail.getLocation() : null;
        int line = place == null ? rowLine : Math.max(rowLine, place.getLineNr());
        return ReadProblem.ofLine(
                file,
                line,
                "the line cannot be split into cells (" + message.replaceAll("\\s+", " ") + ")",
                "put a cell with a comma or a quote in quotes, and double the quotes inside it");
    }

    private boolean headerIsSound(RawRow header) {
        Set<String> seen = new HashSet<>();
        boolean sound = true;
        for (int index = 0; index < header.cells().size(); index++) {
            String name = header.cells().get(index);
            if (name.isEmpty()) {
                problems.accept(headerProblem(header, index, "column " + (index + 1) + " has no name"));
                sound = false;
            } else if (!seen.add(name)) {
                problems.accept(headerProblem(header, index, "the column is there twice"));
                sound = false;
            }
        }
        return sound;
    }

    private ReadProblem headerProblem(RawRow header, int index, String message) {
        String name = header.cells().get(index);
        return new ReadProblem(
                file, header.line(), name, index + 1, name, message, "each column has a name of its own");
    }

    private boolean ragged(RawRow row, int width) {
        int cells = row.cells().size();
        if (cells == width) {
            return false;
        }
        whole = false;
        problems.accept(ReadProblem.ofLine(
                file,
                row.line(),
                "the row has " + cells + " cells, the header has " + width,
                cells > width ? "is there a comma in a cell? Then put the cell in quotes" : "is a comma missing?"));
        return true;
    }
}
