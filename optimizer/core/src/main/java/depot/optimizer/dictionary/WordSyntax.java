package depot.optimizer.dictionary;

import java.time.ZoneId;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** How texts, keys, closed lists, currencies and time zones are written. */
final class WordSyntax {
    /** Keys also become parts of file names and of names in the model. */
    static final String KEY_PATTERN = "[\\p{L}\\p{N}][\\p{L}\\p{N}\\p{M} ._-]*";

    static final int KEY_LENGTH = 64;
    static final int TEXT_LENGTH = 200;

    private static final Pattern KEY = Pattern.compile(KEY_PATTERN);

    private WordSyntax() {}

    static String text(String text) throws BadValueException {
        if (text.codePoints().anyMatch(Character::isISOControl)) {
            throw new BadValueException("line break or control character in a text", "write it on one line");
        }
        return within(text, TEXT_LENGTH);
    }

    static String key(String text) throws BadValueException {
        within(text, KEY_LENGTH);
        if (!KEY.matcher(text).matches()) {
            throw new BadValueException(
                    "not a key", "begin with a letter or digit; then letters, digits, spaces, '.', '_' and '-'");
        }
        return text;
    }

    static String choice(String text, List<String> words) throws BadValueException {
        String word = text.toLowerCase(Locale.ROOT);
        if (!words.contains(word)) {
            throw new BadValueException("not one of the allowed words", "write " + String.join(" or ", words));
        }
        return word;
    }

    static Currency currency(String text) throws BadValueException {
        try {
            return Currency.getInstance(text);
        } catch (IllegalArgumentException unknown) {
            throw new BadValueException("no such currency", "write a code of ISO 4217, like EUR");
        }
    }

    static ZoneId timeZone(String text) throws BadValueException {
        if (!ZoneId.getAvailableZoneIds().contains(text)) {
            throw new BadValueException("no such time zone", "write a name like Europe/Berlin or UTC");
        }
        return ZoneId.of(text);
    }

    private static String within(String text, int length) throws BadValueException {
        if (text.length() > length) {
            throw new BadValueException("too long", "at most " + length + " characters");
        }
        return text;
    }
}
