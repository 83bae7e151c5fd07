package depot.optimizer.browser;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** The parts of a page as the browser tells them to readers who do not see it. */
final class Landmarks {

    /** Of these, each page has one. */
    private static final Set<String> ONCE = Set.of("banner", "main", "contentinfo");

    /** These need a name to be told apart. */
    private static final Set<String> NAMED = Set.of("navigation", "table", "link", "image", "region");

    private Landmarks() {}

    static void check(Tab tab, Findings findings, String page) {
        List<String> roles = new ArrayList<>();
        List<String> navigations = new ArrayList<>();
        for (JsonNode node : tab.accessibilityTree()) {
            String role = node.at("/role/value").asText();
            String name = node.at("/name/value").asText().strip();
            if (node.get("ignored").asBoolean()) {
                continue;
            }
            findings.look(Check.LANDMARKS, 1);
            roles.add(role);
            if (NAMED.contains(role) && name.isEmpty()) {
                findings.fault(Check.LANDMARKS, page, "a part without a name: " + role);
            }
            if (role.equals("navigation")) {
                navigations.add(name);
            }
        }
        for (String role : ONCE) {
            long times = roles.stream().filter(role::equals).count();
            if (times != 1) {
                findings.fault(Check.LANDMARKS, page, times + " parts are its " + role);
            }
        }
        if (navigations.size() != Set.copyOf(navigations).size()) {
            findings.fault(Check.LANDMARKS, page, "navigations with one name: " + navigations);
        }
        head(tab, findings, page);
    }

    private static void head(Tab tab, Findings findings, String page) {
        if (tab.evaluate("document.documentElement.lang").asText().isEmpty()) {
            findings.fault(Check.LANDMARKS, page, "no language");
        }
        if (tab.evaluate("document.title").asText().isBlank()) {
            findings.fault(Check.LANDMARKS, page, "no title");
        }
        if (tab.evaluate("document.compatMode").asText().equals("BackCompat")) {
            findings.fault(Check.LANDMARKS, page, "not in standards mode");
        }
    }
}
