package depot.optimizer.report.workbook;

import depot.optimizer.report.text.SafeText;
import java.math.BigDecimal;
import java.util.OptionalDouble;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;

/** Writes the cells of one sheet. Rows and columns count from 0. */
final class SheetPen {

    /** Number formats. */
    enum Look {
        /** Amounts of money. */
        MONEY("#,##0.00"),
        /** Numbers with as many digits as they have. */
        PLAIN("General"),
        /** Shares of 1. */
        PERCENT("0.00%"),
        /** Factors. */
        FACTOR("0.0000");

        private final String format;

        Look(String format) {
            this.format = format;
        }
    }

    private static final String INPUT_FILL = "FFF2CC";
    private static final String HEAD_FILL = "DCE6F1";

    private final Worksheet sheet;
    private final String name;

    SheetPen(Workbook workbook, String name) {
        this.sheet = workbook.newWorksheet(name);
        this.name = name;
    }

    void width(int column, double characters) {
        sheet.width(column, characters);
    }

    /** Keeps the first rows and columns in sight. */
    void freeze(int columns, int rows) {
        sheet.freezePane(columns, rows);
    }

    void title(String text) {
        sheet.value(0, 0, SafeText.neutral(text));
        sheet.style(0, 0).bold().fontSize(14).set();
    }

    void text(int row, int column, String text) {
        sheet.value(row, column, SafeText.neutral(text));
    }

    /**
     * Begins a section with a title and headings, a row apart from what stands above.
     *
     * @return the row below its headings
     */
    int section(int row, String title, String... headings) {
        bold(row + 1, 0, title);
        headings(row + 2, headings);
        return row + 3;
    }

    /** A cell that may be changed, blank where there is no value yet. */
    String inputOrBlank(int row, int column, Number value, Look look) {
        if (value == null) {
            return blankInput(row, column, look);
        }
        return input(row, column, value instanceof BigDecimal exact ? exact.doubleValue() : value, look);
    }

    /** The value, null: there is none. */
    static Double boxed(OptionalDouble value) {
        return value.isPresent() ? value.getAsDouble() : null;
    }

    void bold(int row, int column, String text) {
        text(row, column, text);
        sheet.style(row, column).bold().set();
    }

    /** A row of column headings. */
    void headings(int row, String... texts) {
        for (int column = 0; column < texts.length; column++) {
            text(row, column, texts[column]);
            sheet.style(row, column).bold().wrapText(true).fillColor(HEAD_FILL).set();
        }
    }

    /** A number that a reader may change. */
    String input(int row, int column, Number value, Look look) {
        sheet.value(row, column, value);
        sheet.style(row, column).fillColor(INPUT_FILL).format(look.format).set();
        return ref(row, column);
    }

    /** A number that a reader may fill in. */
    String blankInput(int row, int column, Look look) {
        sheet.style(row, column).fillColor(INPUT_FILL).format(look.format).set();
        return ref(row, column);
    }

    /** A number that nothing follows from. */
    String fixed(int row, int column, Number value, Look look) {
        sheet.value(row, column, value);
        sheet.style(row, column).format(look.format).set();
        return ref(row, column);
    }

    /** A number that follows from others. */
    String formula(int row, int column, Look look, String formula) {
        sheet.formula(row, column, escaped(formula));
        sheet.style(row, column).format(look.format).set();
        return ref(row, column);
    }

    String boldFormula(int row, int column, Look look, String formula) {
        sheet.formula(row, column, escaped(formula));
        sheet.style(row, column).bold().format(look.format).set();
        return ref(row, column);
    }

    /** The library writes formulas into the file as they are. */
    private static String escaped(String formula) {
        return formula.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }

    /** Name of a cell from any sheet, such as Inputs!$B$4. */
    String ref(int row, int column) {
        return name + "!" + absolute(row, column);
    }

    /** Name of a block of cells from any sheet. */
    String range(int fromRow, int fromColumn, int toRow, int toColumn) {
        return ref(fromRow, fromColumn) + ":" + absolute(toRow, toColumn);
    }

    private static String absolute(int row, int column) {
        return "$" + letters(column) + "$" + (row + 1);
    }

    private static String letters(int column) {
        String last = String.valueOf((char) ('A' + column % 26));
        return column < 26 ? last : letters(column / 26 - 1) + last;
    }
}
