package depot.optimizer.report.workbook;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** A workbook opened by an engine that shares nothing with the one that wrote it, changed and recalculated. */
final class Recalculated {

    private final XSSFWorkbook workbook;
    private final FormulaEvaluator evaluator;

    private Recalculated(XSSFWorkbook workbook) {
        this.workbook = workbook;
        evaluator = workbook.getCreationHelper().createFormulaEvaluator();
    }

    static Recalculated of(byte[] bytes) {
        try {
            return new Recalculated(new XSSFWorkbook(new ByteArrayInputStream(bytes)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    XSSFWorkbook workbook() {
        return workbook;
    }

    /** Sets the cell of a column in the first row of the inputs whose first cells are these labels. */
    Recalculated set(int column, double value, String... labels) {
        Row row = row("Inputs", labels);
        Cell cell = row.getCell(column) == null ? row.createCell(column) : row.getCell(column);
        if (cell.getCellType() == CellType.FORMULA) {
            throw new AssertionError(String.join(" ", labels) + " follows from other cells");
        }
        cell.setCellValue(value);
        evaluator.clearAllCachedResultValues();
        return this;
    }

    /** Number in the second column of a row of results; text is a failure. */
    double result(String label) {
        return number(row("Results", label).getCell(1));
    }

    /** The second column of a row of results as text or number. */
    String resultText(String label) {
        CellValue value = evaluator.evaluate(row("Results", label).getCell(1));
        return value.getCellType() == CellType.STRING
                ? value.getStringValue()
                : Double.toString(value.getNumberValue());
    }

    /** Numbers of the years 0 to 40. */
    List<Double> yearly(String label) {
        Row row = row("Yearly", label);
        return IntStream.rangeClosed(0, YearCells.LAST_YEAR)
                .mapToObj(year -> number(row.getCell(YearCells.column(year))))
                .toList();
    }

    /** What a phase spends, by its name in the list of phases. */
    double spent(String phase) {
        return number(phase(phase).getCell(6));
    }

    /** What is left of a phase's budget. */
    double leftOf(String phase) {
        return number(phase(phase).getCell(8));
    }

    private Row phase(String name) {
        boolean below = false;
        for (Row row : workbook.getSheet("Purchases")) {
            below |= isText(row, 0, "By phase");
            if (below && isText(row, 1, name)) {
                return row;
            }
        }
        throw new AssertionError("No phase " + name);
    }

    private static boolean isText(Row row, int column, String text) {
        Cell cell = row.getCell(column);
        return cell != null
                && cell.getCellType() == CellType.STRING
                && cell.getStringCellValue().equals(text);
    }

    private double number(Cell cell) {
        CellValue value = evaluator.evaluate(cell);
        if (value.getCellType() != CellType.NUMERIC) {
            throw new AssertionError(cell.getAddress() + " is " + value.formatAsString());
        }
        return value.getNumberValue();
    }

    /** Every formula of every sheet, with what it comes to; a failed one is a failure. */
    List<String> formulas() {
        evaluator.evaluateAll();
        List<String> formulas = new ArrayList<>();
        for (Sheet sheet : workbook) {
            for (Row row : sheet) {
                for (Cell cell : row) {
                    if (cell.getCellType() == CellType.FORMULA) {
                        if (cell.getCachedFormulaResultType() == CellType.ERROR) {
                            throw new AssertionError(
                                    sheet.getSheetName() + " " + cell.getAddress() + ": " + cell.getCellFormula());
                        }
                        formulas.add(cell.getCellFormula());
                    }
                }
            }
        }
        return formulas;
    }

    private Row row(String sheet, String... labels) {
        for (Row row : workbook.getSheet(sheet)) {
            boolean found = IntStream.range(0, labels.length)
                    .allMatch(i -> row.getCell(i) != null
                            && row.getCell(i).getCellType() == CellType.STRING
                            && row.getCell(i).getStringCellValue().equals(labels[i]));
            if (found) {
                return row;
            }
        }
        throw new AssertionError("No row " + String.join(", ", labels) + " in " + sheet);
    }
}
