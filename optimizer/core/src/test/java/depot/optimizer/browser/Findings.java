package depot.optimizer.browser;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** What was looked at on pages, and what is wrong with them. */
public final class Findings {

    private final Map<Check, List<String>> faults = new EnumMap<>(Check.class);
    private final Map<Check, Integer> looked = new EnumMap<>(Check.class);

    /** Everything that is wrong, with the name of its page. */
    public List<String> faults(Check check) {
        return List.copyOf(faults.getOrDefault(check, List.of()));
    }

    /** How many things were looked at. */
    public int looked(Check check) {
        return looked.getOrDefault(check, 0);
    }

    void fault(Check check, String page, String words) {
        faults.computeIfAbsent(check, any -> new ArrayList<>()).add(page + ": " + words);
    }

    void look(Check check, int things) {
        looked.merge(check, things, Integer::sum);
    }
}
