package depot.optimizer.report.text;

import java.util.Locale;

/** Minutes after midnight as a time of day. */
public final class Clock {

    private static final int DAY = 1440;

    private Clock() {}

    /** Such as "06:45"; "01:00 +1" is one o'clock in the night after, "23:00 -1" eleven in the evening before. */
    public static String time(int minute) {
        int day = Math.floorDiv(minute, DAY);
        int inDay = Math.floorMod(minute, DAY);
        String time = String.format(Locale.ROOT, "%02d:%02d", inDay / 60, inDay % 60);
        return day == 0 ? time : String.format(Locale.ROOT, "%s %+d", time, day);
    }

    /** A length of time, such as "45 min" or "7 h 05 min". */
    public static String length(int minutes) {
        return minutes < 60
                ? minutes + " min"
                : String.format(Locale.ROOT, "%d h %02d min", minutes / 60, minutes % 60);
    }
}
