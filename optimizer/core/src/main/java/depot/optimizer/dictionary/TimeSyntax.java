package depot.optimizer.dictionary;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Times of day written HH:MM; hours go past 24 where the column allows it. */
public final class TimeSyntax {
    private static final Pattern TIME = Pattern.compile("(\\d{1,2}):([0-5]\\d)(:00)?");

    private TimeSyntax() {}

    /** Minutes after midnight as HH:MM. */
    public static String text(int minutes) {
        return String.format(Locale.ROOT, "%02d:%02d", minutes / 60, minutes % 60);
    }

    static int minutes(String text, int limit) throws BadValueException {
        Matcher matcher = TIME.matcher(text);
        if (!matcher.matches()) {
            throw new BadValueException("not a time", "write HH:MM, like 06:30");
        }
        int minutes = Integer.parseInt(matcher.group(1)) * 60 + Integer.parseInt(matcher.group(2));
        if (minutes > limit) {
            throw new BadValueException("time too late", "allowed: 00:00 to " + text(limit));
        }
        return minutes;
    }
}
