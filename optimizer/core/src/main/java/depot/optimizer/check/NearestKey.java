package depot.optimizer.check;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Finds the key that was probably meant. */
public final class NearestKey {
    private static final int MOST_SLIPS = 2;
    private static final int MOST_KEYS = 2000;

    private NearestKey() {}

    /** A hint for a key that is not there. */
    public static String hint(String wrong, Collection<?> keys) {
        return nearest(wrong, keys).map(key -> "maybe " + key).orElse("add it there, or correct the name here");
    }

    /** The key that differs least, empty: none is near. */
    public static Optional<String> nearest(String wrong, Collection<?> keys) {
        if (keys.size() > MOST_KEYS) {
            return Optional.empty();
        }
        return keys.stream()
                .map(String::valueOf)
                .filter(key -> slips(wrong, key) <= MOST_SLIPS)
                .min(Comparator.comparing((String key) -> slips(wrong, key)).thenComparing(key -> key));
    }

    /** Letters to change, add or drop (Levenshtein's distance), upper and lower case being the same. */
    private static int slips(String left, String right) {
        if (Math.abs(left.length() - right.length()) > MOST_SLIPS) {
            return MOST_SLIPS + 1;
        }
        String first = left.toLowerCase(Locale.ROOT);
        String second = right.toLowerCase(Locale.ROOT);
        int[] above = new int[second.length() + 1];
        for (int column = 0; column < above.length; column++) {
            above[column] = column;
        }
        for (int row = 1; row <= first.length(); row++) {
            int[] current = new int[above.length];
            current[0] = row;
            for (int column = 1; column < above.length; column++) {
                int change = first.charAt(row - 1) == second.charAt(column - 1) ? 0 : 1;
                current[column] =
                        Math.min(above[column - 1] + change, 1 + Math.min(above[column], current[column - 1]));
            }
            above = current;
        }
        return above[second.length()];
    }
}
