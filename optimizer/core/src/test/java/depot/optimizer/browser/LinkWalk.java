package depot.optimizer.browser;

import java.util.Set;

/** Follows every link: the page has to be there, and the place on it. */
final class LinkWalk {

    private final Tab tab;
    private final Findings findings;

    LinkWalk(Tab tab, Findings findings) {
        this.tab = tab;
        this.findings = findings;
    }

    void follow(Set<String> links) {
        for (String link : links) {
            findings.look(Check.LINKS, 1);
            String trouble = tab.visit(link);
            if (!trouble.isEmpty()) {
                findings.fault(Check.LINKS, link, trouble);
            } else if (link.contains("#")
                    && !tab.evaluate("document.querySelector(':target') !== null")
                            .asBoolean()) {
                findings.fault(Check.LINKS, link, "no such place on the page");
            }
        }
    }
}
