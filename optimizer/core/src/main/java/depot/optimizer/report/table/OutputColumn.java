package depot.optimizer.report.table;

import java.util.List;

/**
 * A column of a table of a run, declared once: its heading, and what {@code tables.json} says about it.
 *
 * @param name heading in the file, its unit included
 * @param unit of the value, empty: it has none; an amount's is the currency that stands in the row
 * @param words all that a column of words may hold, empty: any words; what may stand in the place of a time
 * @param meaning what the value means, and what a blank does where there may be one
 * @param blanks whether a cell may be blank
 */
public record OutputColumn(
        String name, Content content, String unit, List<String> words, String meaning, Blanks blanks) {

    /** Copies the words. */
    public OutputColumn {
        words = List.copyOf(words);
    }

    /** What the cells of a column hold. */
    public enum Content {
        /** Words. */
        WORDS,
        /** A whole number. */
        COUNT,
        /** A number. */
        NUMBER,
        /** A time such as 06:45; "01:00 +1" is in the night after. */
        TIME,
        /** yes or no. */
        YES_NO
    }

    /** Whether a cell may be blank. */
    public enum Blanks {
        /** Every row has a value. */
        NEVER,
        /** Some rows have none. */
        ALLOWED
    }

    /** Any words. */
    public static OutputColumn words(String name, String meaning) {
        return of(name, Content.WORDS, "", meaning);
    }

    static OutputColumn oneOf(String name, List<String> words, String meaning) {
        return new OutputColumn(name, Content.WORDS, "", words, meaning, Blanks.NEVER);
    }

    static OutputColumn count(String name, String unit, String meaning) {
        return of(name, Content.COUNT, unit, meaning);
    }

    static OutputColumn number(String name, String unit, String meaning) {
        return of(name, Content.NUMBER, unit, meaning);
    }

    /** An amount of the currency that the row names. */
    static OutputColumn amount(String name, String meaning) {
        return of(name, Content.NUMBER, "currency", meaning);
    }

    static OutputColumn time(String name, String meaning) {
        return of(name, Content.TIME, "HH:MM", meaning);
    }

    /** A time, or one word in its place. */
    static OutputColumn timeOr(String word, String name, String meaning) {
        return new OutputColumn(name, Content.TIME, "HH:MM", List.of(word), meaning, Blanks.NEVER);
    }

    /** yes or no. */
    public static OutputColumn yesNo(String name, String meaning) {
        return of(name, Content.YES_NO, "", meaning);
    }

    /** The same column, and some of its cells are blank. */
    public OutputColumn orBlank() {
        return new OutputColumn(name, content, unit, words, meaning, Blanks.ALLOWED);
    }

    private static OutputColumn of(String name, Content content, String unit, String meaning) {
        return new OutputColumn(name, content, unit, List.of(), meaning, Blanks.NEVER);
    }
}
