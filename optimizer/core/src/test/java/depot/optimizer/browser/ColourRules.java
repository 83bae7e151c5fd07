package depot.optimizer.browser;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;

/** Whether the colours of a page, as the browser computed them, can be read by all eyes. */
final class ColourRules {

    /** WCAG 2.2, 1.4.3, level AA (seen): text. */
    private static final double TEXT = 4.5;

    /** WCAG 2.2, 1.4.3 and 1.4.11, level AA (seen): large text, and what has to be seen of a drawing. */
    private static final double LARGE = 3;

    /** Distance in CIE L*a*b* that nobody overlooks in thin lines: ten times that of a difference just seen. Common practice, no source. */
    private static final double APART = 23;

    private final Findings findings;
    private final String page;

    ColourRules(Findings findings, String page) {
        this.findings = findings;
        this.page = page;
    }

    void check(JsonNode audit) {
        audit.get("texts").forEach(this::contrast);
        audit.get("marks").forEach(this::contrast);
        audit.get("charts").forEach(this::chart);
    }

    private void contrast(JsonNode text) {
        findings.look(Check.CONTRAST, 1);
        Rgb colour = Rgb.of(text.get("colour"));
        Rgb behind = Rgb.of(text.get("behind"));
        double asked = text.get("large").asBoolean() ? LARGE : TEXT;
        double contrast = colour.contrast(behind);
        if (contrast < asked) {
            findings.fault(
                    Check.CONTRAST,
                    page,
                    "%.2f to 1, asked for %.1f: %s on %s, as in %s"
                            .formatted(contrast, asked, colour, behind, text.get("words")));
        }
    }

    private void chart(JsonNode chart) {
        List<JsonNode> series = new ArrayList<>();
        chart.get("series").forEach(series::add);
        findings.look(Check.COLOURS, series.size());
        for (int i = 0; i < series.size(); i++) {
            for (JsonNode other : series.subList(i + 1, series.size())) {
                if (alikeInShape(series.get(i), other)) {
                    colours(chart, series.get(i), other);
                }
            }
        }
    }

    /** The same shape, dashes and filling: only the colour is left to tell them apart. */
    private static boolean alikeInShape(JsonNode one, JsonNode other) {
        return one.get("look").equals(other.get("look"));
    }

    private void colours(JsonNode chart, JsonNode one, JsonNode other) {
        for (Eyes eyes : Eyes.values()) {
            double distance = eyes.distance(Rgb.of(one.get("colour")), Rgb.of(other.get("colour")));
            if (distance < APART && !one.get("name").equals(other.get("name"))) {
                findings.fault(
                        Check.COLOURS,
                        page,
                        "%s and %s are only %.0f apart for eyes with %s in %s"
                                .formatted(one.get("name"), other.get("name"), distance, eyes, chart.get("title")));
            }
        }
    }
}
