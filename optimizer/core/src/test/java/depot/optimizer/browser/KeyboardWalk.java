package depot.optimizer.browser;

import com.fasterxml.jackson.databind.JsonNode;

/** Goes through a page with the Tab key. */
final class KeyboardWalk {

    /** WCAG 2.2, 1.4.11 (seen): a ring around the focus stands out by 3 to 1 from what is around it. */
    private static final double RING = 3;

    private final Tab tab;
    private final Findings findings;
    private final String page;

    KeyboardWalk(Tab tab, Findings findings, String page) {
        this.tab = tab;
        this.findings = findings;
        this.page = page;
    }

    void walk() {
        tab.press(Tab.Key.TAB);
        JsonNode focus = tab.run("focus.js");
        int count = focus.get("count").asInt();
        findings.look(Check.KEYBOARD, count);
        for (int expected = 0; expected < count; expected++) {
            if (focus.get("at").asInt() != expected) {
                findings.fault(
                        Check.KEYBOARD,
                        page,
                        "Tab leads to number %d of %d, not to number %d: %s"
                                .formatted(focus.get("at").asInt(), count, expected, focus.path("words")));
                return;
            }
            shows(focus);
            tab.press(Tab.Key.TAB);
            focus = tab.run("focus.js");
        }
        skips();
    }

    private void shows(JsonNode focus) {
        String words = focus.get("words").asText();
        if (!focus.get("inView").asBoolean()) {
            findings.fault(Check.KEYBOARD, page, "the focus is out of view: " + words);
        }
        double contrast = Rgb.of(focus.get("outline")).contrast(Rgb.of(focus.get("behind")));
        if (!focus.get("outlined").asBoolean() || contrast < RING) {
            findings.fault(Check.KEYBOARD, page, "nothing shows where the focus is: " + words);
        }
    }

    /** The first link leads past the navigation: the main part itself takes the focus, so that this holds where nothing in it does. */
    private void skips() {
        tab.evaluate("document.activeElement.blur(), scrollTo(0, 0), getSelection().collapse(document.body, 0)");
        tab.press(Tab.Key.TAB);
        tab.press(Tab.Key.ENTER);
        String where = tab.evaluate("document.activeElement.localName").asText();
        if (!where.equals("main")) {
            findings.fault(Check.KEYBOARD, page, "the first link does not lead past the navigation");
        }
    }
}
