package depot.optimizer.dictionary;

import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.ZoneId;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The type of a column or setting: how its text is read, and what documentation and schemas say about it.
 *
 * @param <T> what a text is read into
 * @param range allowed numbers, empty for other kinds
 * @param choices allowed words, empty: no closed list
 * @param target the key column that a reference points to
 * @param limitMinutes latest time of day, 0 for other kinds
 */
public record ValueType<T>(
        Kind kind,
        Optional<Range> range,
        List<String> choices,
        Optional<Field<String>> target,
        int limitMinutes,
        Parser<T> parser) {

    /** Kinds of values; documentation and schemas switch on them. */
    public enum Kind {
        /** Free text. */
        TEXT,
        /** Name of a row. */
        KEY,
        /** Key of a row of another table. */
        REFERENCE,
        /** Whole number. */
        INTEGER,
        /** Number. */
        DECIMAL,
        /** Exact amount of the scenario's currency. */
        MONEY,
        /** An amount, or one word in its place. */
        MONEY_OR_WORD,
        /** {@code yes} or {@code no}. */
        YES_NO,
        /** One of a few words. */
        CHOICE,
        /** Days of the week. */
        DAYS,
        /** Time of day. */
        TIME,
        /** ISO 4217 code. */
        CURRENCY,
        /** Name in the time zone database. */
        TIME_ZONE
    }

    /** Reads a text that is not blank. */
    @FunctionalInterface
    public interface Parser<T> {
        /** The value, or what is wrong with the text. */
        T parse(String text) throws BadValueException;
    }

    /** The value that a text stands for. */
    public T parse(String text) throws BadValueException {
        return parser.parse(text);
    }

    static ValueType<String> text() {
        return plain(Kind.TEXT, WordSyntax::text);
    }

    static ValueType<String> key() {
        return plain(Kind.KEY, WordSyntax::key);
    }

    static ValueType<String> referenceTo(Field<String> target) {
        return new ValueType<>(Kind.REFERENCE, Optional.empty(), List.of(), Optional.of(target), 0, WordSyntax::key);
    }

    static ValueType<Integer> integer(Range range) {
        return numeric(Kind.INTEGER, range, text -> NumberSyntax.integer(text, range));
    }

    /** One of a few whole numbers. */
    static ValueType<Integer> oneOf(List<Integer> numbers) {
        List<String> words = numbers.stream().map(String::valueOf).toList();
        return worded(Kind.INTEGER, words, text -> Integer.valueOf(WordSyntax.choice(text, words)));
    }

    static ValueType<Long> whole(Range range) {
        return numeric(Kind.INTEGER, range, text -> NumberSyntax.whole(text, range));
    }

    static ValueType<Double> decimal(Range range) {
        return numeric(
                Kind.DECIMAL, range, text -> NumberSyntax.decimal(text, range).doubleValue());
    }

    static ValueType<BigDecimal> money(Range range) {
        return numeric(Kind.MONEY, range, text -> NumberSyntax.decimal(text, range));
    }

    /** An amount; the word stands for none. */
    static ValueType<Optional<BigDecimal>> moneyOr(String word, Range range) {
        return new ValueType<>(
                Kind.MONEY_OR_WORD,
                Optional.of(range),
                List.of(word),
                Optional.empty(),
                0,
                text -> text.equals(word) ? Optional.empty() : Optional.of(NumberSyntax.decimal(text, range)));
    }

    static ValueType<Boolean> yesNo() {
        List<String> words = List.of("yes", "no");
        return worded(Kind.YES_NO, words, text -> WordSyntax.choice(text, words).equals("yes"));
    }

    /** One of a few words, as a text. */
    static ValueType<String> oneOfWords(List<String> words) {
        return worded(Kind.CHOICE, words, text -> WordSyntax.choice(text, words));
    }

    static <E extends Enum<E>> ValueType<E> choice(Class<E> type) {
        List<String> words = Stream.of(type.getEnumConstants())
                .map(constant -> constant.name().toLowerCase(Locale.ROOT))
                .toList();
        return worded(
                Kind.CHOICE,
                words,
                text -> Enum.valueOf(type, WordSyntax.choice(text, words).toUpperCase(Locale.ROOT)));
    }

    static ValueType<Set<DayOfWeek>> days() {
        return plain(Kind.DAYS, DaysSyntax::days);
    }

    /** A time of day up to a limit, in minutes after midnight. */
    static ValueType<Integer> timeUpTo(int limitMinutes) {
        return new ValueType<>(
                Kind.TIME,
                Optional.empty(),
                List.of(),
                Optional.empty(),
                limitMinutes,
                text -> TimeSyntax.minutes(text, limitMinutes));
    }

    static ValueType<Currency> currency() {
        return plain(Kind.CURRENCY, WordSyntax::currency);
    }

    static ValueType<ZoneId> timeZone() {
        return plain(Kind.TIME_ZONE, WordSyntax::timeZone);
    }

    private static <T> ValueType<T> plain(Kind kind, Parser<T> parser) {
        return worded(kind, List.of(), parser);
    }

    private static <T> ValueType<T> worded(Kind kind, List<String> words, Parser<T> parser) {
        return new ValueType<>(kind, Optional.empty(), words, Optional.empty(), 0, parser);
    }

    private static <T> ValueType<T> numeric(Kind kind, Range range, Parser<T> parser) {
        return new ValueType<>(kind, Optional.of(range), List.of(), Optional.empty(), 0, parser);
    }
}
