package depot.optimizer.report.workbook;

import depot.optimizer.report.workbook.SheetPen.Look;
import java.util.List;
import java.util.OptionalDouble;
import org.dhatim.fastexcel.Workbook;

/** compare.xlsx: runs side by side, and formulas for how far each is from the first. */
public final class SideBySide {

    private static final int FIRST_VALUE = 2;

    private SideBySide() {}

    /**
     * A sheet.
     *
     * @param name of the sheet, a word
     * @param notes shown under the title
     * @param runs headings of the columns of values
     */
    public record Sheet(String name, String title, List<String> notes, List<String> runs, List<Row> rows) {}

    /**
     * One thing in every run.
     *
     * @param values in the order of the runs, empty: there is none
     * @param remarks in place of values that are not there
     */
    public record Row(String what, String unit, List<OptionalDouble> values, List<String> remarks) {}

    /** The workbook; the same sheets always give the same bytes. */
    public static byte[] of(List<Sheet> sheets) {
        return WorkbookBytes.of(workbook -> sheets.forEach(sheet -> write(workbook, sheet)));
    }

    private static void write(Workbook workbook, Sheet sheet) {
        SheetPen pen = new SheetPen(workbook, sheet.name());
        pen.title(sheet.title());
        pen.width(0, 48);
        pen.width(1, 16);
        int at = 1;
        for (String note : sheet.notes()) {
            pen.text(at++, 0, note);
        }
        headings(pen, at + 1, sheet.runs());
        for (int i = 0; i < sheet.rows().size(); i++) {
            row(pen, at + 2 + i, sheet.rows().get(i));
        }
    }

    private static void headings(SheetPen pen, int at, List<String> runs) {
        int width = runs.size();
        String[] texts = new String[FIRST_VALUE + 2 * width - 1];
        texts[0] = "What";
        texts[1] = "Unit";
        for (int run = 0; run < width; run++) {
            pen.width(FIRST_VALUE + run, 22);
            texts[FIRST_VALUE + run] = runs.get(run);
            if (run > 0) {
                pen.width(FIRST_VALUE + width + run - 1, 22);
                texts[FIRST_VALUE + width + run - 1] = runs.get(run) + ": more than the first";
            }
        }
        pen.headings(at, texts);
    }

    private static void row(SheetPen pen, int at, Row row) {
        pen.text(at, 0, row.what());
        pen.text(at, 1, row.unit());
        int width = row.values().size();
        for (int run = 0; run < width; run++) {
            OptionalDouble value = row.values().get(run);
            if (value.isEmpty()) {
                pen.text(at, FIRST_VALUE + run, row.remarks().get(run));
                continue;
            }
            String cell = pen.fixed(at, FIRST_VALUE + run, value.getAsDouble(), Look.PLAIN);
            if (run > 0 && row.values().get(0).isPresent()) {
                String first = pen.ref(at, FIRST_VALUE);
                pen.formula(at, FIRST_VALUE + width + run - 1, Look.PLAIN, cell + "-" + first);
            }
        }
    }
}
