package depot.optimizer.report.workbook;

import depot.optimizer.finance.FlowKind;
import java.util.List;

/** Names of the cells of the sheet of years: a row for each kind of flow, a column for each year. */
final class YearCells {

    /** The longest horizon of a scenario; years beyond a shorter one are 0. */
    static final int LAST_YEAR = 40;

    /** Rows that are not those of a kind. */
    enum Row {
        /** Number of the year. */
        YEAR(2),
        /** 1 within the horizon, 0 beyond. */
        WITHIN(3),
        /** Discount factor, 0 beyond the horizon. */
        FACTOR(4),
        /** The plan's own costs. */
        PLAN(AFTER_KINDS + 1),
        /** All flows. */
        NET(AFTER_KINDS + 2),
        /** All flows from now on. */
        SO_FAR(AFTER_KINDS + 3),
        /** Their present values. */
        PRESENT_SO_FAR(AFTER_KINDS + 4),
        /** Years to payback in the year in which it happens. */
        PAYBACK(AFTER_KINDS + 5),
        /** The same for present values. */
        PRESENT_PAYBACK(AFTER_KINDS + 6),
        /** What is to be written off. */
        BOOKS(AFTER_KINDS + 8),
        /** Shares written off, of the last year first. */
        BACKWARDS(AFTER_KINDS + 9),
        /** What is written off. */
        WRITTEN_OFF(AFTER_KINDS + 10);

        private final int number;

        Row(int number) {
            this.number = number;
        }

        int number() {
            return number;
        }
    }

    private static final List<FlowKind> KINDS = List.of(FlowKind.values());
    private static final int FIRST_KIND = 6;
    private static final int AFTER_KINDS = FIRST_KIND + KINDS.size();
    private static final int PRESENT_VALUE_COLUMN = 1;
    private static final int FIRST_COLUMN = 2;

    private final SheetPen pen;

    YearCells(SheetPen pen) {
        this.pen = pen;
    }

    static int row(FlowKind kind) {
        return FIRST_KIND + KINDS.indexOf(kind);
    }

    static int column(int year) {
        return FIRST_COLUMN + year;
    }

    /** Row of whether a year belongs to a phase, by its number from 1. */
    static int ofPhase(int phase) {
        return Row.WRITTEN_OFF.number() + 1 + phase;
    }

    /** 1 in the years of a phase within the horizon, 0 in others. */
    String inPhase(int phase, int year) {
        return pen.ref(ofPhase(phase), column(year));
    }

    String at(FlowKind kind, int year) {
        return pen.ref(row(kind), column(year));
    }

    String at(Row row, int year) {
        return pen.ref(row.number(), column(year));
    }

    String presentValue(FlowKind kind) {
        return pen.ref(row(kind), PRESENT_VALUE_COLUMN);
    }

    String presentValue(Row row) {
        return pen.ref(row.number(), PRESENT_VALUE_COLUMN);
    }

    /** All years of a row. */
    String all(Row row) {
        return years(row, 0, LAST_YEAR);
    }

    /** All years of a kind. */
    String all(FlowKind kind) {
        return pen.range(row(kind), column(0), row(kind), column(LAST_YEAR));
    }

    String years(Row row, int from, int to) {
        return pen.range(row.number(), column(from), row.number(), column(to));
    }
}
