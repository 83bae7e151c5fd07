package depot.optimizer.report.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Names of chargers in few words, such as "wall-01 to 03, 05" and "shed-02". */
final class ChargerNames {

    private static final Pattern NUMBERED = Pattern.compile("(\\S*-)(\\d{1,6})");

    private ChargerNames() {}

    /** One text for each circuit. Numbers that follow each other become a range from the third on. Names without a number stay as they are. */
    static List<String> of(List<String> names) {
        Map<String, TreeMap<Integer, String>> numbers = new LinkedHashMap<>();
        List<String> others = new ArrayList<>();
        for (String name : names) {
            Matcher parts = NUMBERED.matcher(name);
            if (parts.matches()) {
                numbers.computeIfAbsent(parts.group(1), stem -> new TreeMap<>())
                        .put(Integer.parseInt(parts.group(2)), parts.group(2));
            } else {
                others.add(name);
            }
        }
        List<String> words = new ArrayList<>();
        numbers.forEach((stem, found) -> words.add(ranges(stem, List.copyOf(found.entrySet()))));
        words.addAll(others);
        return words;
    }

    private static String ranges(String stem, List<Map.Entry<Integer, String>> numbers) {
        List<String> parts = new ArrayList<>();
        int from = 0;
        while (from < numbers.size()) {
            int to = from;
            while (to + 1 < numbers.size()
                    && numbers.get(to + 1).getKey() == numbers.get(to).getKey() + 1) {
                to++;
            }
            if (to - from >= 2) {
                parts.add(
                        numbers.get(from).getValue() + " to " + numbers.get(to).getValue());
            } else {
                numbers.subList(from, to + 1).forEach(number -> parts.add(number.getValue()));
            }
            from = to + 1;
        }
        return stem + String.join(", ", parts);
    }
}
