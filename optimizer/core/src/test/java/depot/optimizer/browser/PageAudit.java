package depot.optimizer.browser;

import com.fasterxml.jackson.databind.JsonNode;
import depot.optimizer.browser.DevTools.Event;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Everything that is asked of pages, one after the other. */
public final class PageAudit {

    private static final List<Integer> PHONES = List.of(360, 320);

    /** A4 less two margins of 14 mm, in CSS pixels of 1/96 inch: upright, and on its side. */
    private static final List<Integer> PAPER =
            List.of((int) ((210 - 2 * 14) / 25.4 * 96), (int) ((297 - 2 * 14) / 25.4 * 96));

    /** Tables that ask for paper on its side are left out where it is upright. */
    private static final String LEAVE_OUT =
            "document.querySelectorAll('.scroll').forEach(part => part.hidden = %s && getComputedStyle(part).page !== 'auto'"
                    + " && getComputedStyle(part).page !== getComputedStyle(document.body).page)";

    private static final int DESK = 1280;
    private static final int HEIGHT = 800;
    private static final String OPEN_ALL = "document.querySelectorAll('details').forEach(part => part.open = true)";
    private static final String WORDS = "document.body.innerText";
    private static final Set<String> NOISE = Set.of("error", "warning", "assert");

    private final Tab tab;
    private final Tab withoutScripts;
    private final Findings findings = new Findings();
    private final Set<String> links = new TreeSet<>();

    private PageAudit(Chromium chromium) {
        this.tab = chromium.open();
        this.withoutScripts = chromium.open();
        withoutScripts.forbidScripts();
    }

    /** Looks at pages, and at every place that they lead to. */
    public static Findings of(Chromium chromium, List<Path> pages) {
        PageAudit audit = new PageAudit(chromium);
        pages.forEach(audit::page);
        new LinkWalk(audit.tab, audit.findings).follow(audit.links);
        return audit.findings;
    }

    private void page(Path file) {
        String page = file.getParent().getFileName() + "/" + file.getFileName();
        String address = Tab.address(file);
        tab.resize(DESK, HEIGHT);
        int before = tab.eventsSoFar();
        tab.visit(address);
        scriptsOff(page, address);
        new KeyboardWalk(tab, findings, page).walk();
        Landmarks.check(tab, findings, page);
        tab.evaluate(OPEN_ALL);
        looks(page, tab.run("audit.js"));
        phones(page);
        paper(page);
        events(page, address, tab.eventsSince(before));
    }

    private void scriptsOff(String page, String address) {
        withoutScripts.resize(DESK, HEIGHT);
        withoutScripts.visit(address);
        findings.look(Check.SCRIPTS_OFF, 1);
        if (!withoutScripts.evaluate(WORDS).equals(tab.evaluate(WORDS))) {
            findings.fault(Check.SCRIPTS_OFF, page, "other words without scripts");
        }
    }

    private void looks(String page, JsonNode audit) {
        audit.get("faults").properties().forEach(check -> check.getValue()
                .forEach(words -> findings.fault(Check.valueOf(check.getKey()), page, words.asText())));
        audit.get("counts")
                .properties()
                .forEach(check -> findings.look(
                        Check.valueOf(check.getKey()), check.getValue().asInt()));
        audit.get("links").forEach(link -> links.add(link.asText()));
        new ColourRules(findings, page).check(audit);
    }

    private void phones(String page) {
        for (int width : PHONES) {
            tab.resize(width, HEIGHT);
            findings.look(Check.PHONE_WIDTH, 1);
            tab.run("width.js").forEach(words -> findings.fault(Check.PHONE_WIDTH, page, words.asText()));
        }
    }

    private void paper(String page) {
        tab.show(Tab.Medium.PRINT);
        for (int width : PAPER) {
            tab.resize(width, HEIGHT);
            tab.evaluate(LEAVE_OUT.formatted(width == PAPER.get(0)));
            findings.look(Check.PAPER_WIDTH, 1);
            tab.run("width.js").forEach(words -> findings.fault(Check.PAPER_WIDTH, page, words.asText()));
        }
        tab.show(Tab.Medium.SCREEN);
    }

    private void events(String page, String address, List<Event> events) {
        findings.look(Check.CONSOLE, 1);
        for (Event event : events) {
            JsonNode about = event.parameters();
            switch (event.method()) {
                case "Network.requestWillBeSent" -> request(page, address, about);
                case "Runtime.exceptionThrown" -> findings.fault(Check.CONSOLE, page, about.toString());
                case "Runtime.consoleAPICalled" -> noise(page, about.get("type"), about);
                case "Log.entryAdded" -> noise(page, about.at("/entry/level"), about);
                default -> {
                    // Says nothing about the page.
                }
            }
        }
    }

    private void request(String page, String address, JsonNode about) {
        findings.look(Check.REQUESTS, 1);
        String asked = about.at("/request/url").asText();
        if (!asked.equals(address)) {
            findings.fault(Check.REQUESTS, page, "asks for " + asked);
        }
    }

    private void noise(String page, JsonNode level, JsonNode about) {
        if (NOISE.contains(level.asText())) {
            findings.fault(Check.CONSOLE, page, about.toString());
        }
    }
}
