package depot.optimizer.browser;

import com.fasterxml.jackson.databind.JsonNode;
import depot.optimizer.browser.DevTools.Event;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** A tab of the browser. */
public final class Tab {

    private static final String LOADED = "Page.loadEventFired";

    /** Narrower windows have no bars to scroll with that would take room. */
    private static final int DESK = 1100;

    private final DevTools tools;
    private final String session;

    Tab(DevTools tools, String session) {
        this.tools = tools;
        this.session = session;
        List.of("Page.enable", "Runtime.enable", "Log.enable", "Network.enable")
                .forEach(method -> call(method, Map.of()));
    }

    /** Where a page is read. */
    public enum Medium {
        /** On a screen. */
        SCREEN,
        /** On paper. */
        PRINT
    }

    /** A key that moves the focus or follows a link. */
    public enum Key {
        /** To the next thing that can have the focus. */
        TAB("Tab", 9, ""),
        /** Follows a link. */
        ENTER("Enter", 13, "\r");

        private final String word;
        private final int code;
        private final String text;

        Key(String word, int code, String text) {
            this.word = word;
            this.code = code;
            this.text = text;
        }
    }

    /** A page, or a place on it. */
    public static String address(Path page) {
        return page.toAbsolutePath().normalize().toUri().toString();
    }

    /** Goes to an address and waits until all of it is there; empty, or what is wrong with it. */
    public String visit(String address) {
        long before = count(LOADED);
        JsonNode answer = call("Page.navigate", Map.of("url", address));
        if (answer.has("errorText")) {
            return answer.get("errorText").asText();
        }
        // Another place on the same page is not loaded anew.
        if (answer.has("loaderId")) {
            tools.await(session, LOADED, before + 1);
        }
        return "";
    }

    /** Value of an expression on the page. Works without scripts as well: it is the debugger's, not the page's. */
    public JsonNode evaluate(String expression) {
        JsonNode answer = call("Runtime.evaluate", Map.of("expression", expression, "returnByValue", true));
        if (answer.has("exceptionDetails")) {
            throw new IllegalStateException(answer.get("exceptionDetails").toString());
        }
        return answer.get("result").path("value");
    }

    /** Runs a script that lies beside this class and returns what it comes to. */
    public JsonNode run(String script) {
        try (var in = Tab.class.getResourceAsStream(script)) {
            return evaluate(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Scripts of pages run no more in this tab. */
    public void forbidScripts() {
        call("Emulation.setScriptExecutionDisabled", Map.of("value", true));
    }

    /** Shows pages as wide as that, in CSS pixels. */
    public void resize(int width, int height) {
        call(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", width < DESK));
    }

    /** Shows pages as they are on that medium. */
    public void show(Medium medium) {
        call("Emulation.setEmulatedMedia", Map.of("media", medium.name().toLowerCase(Locale.ROOT)));
    }

    /** Presses and lets go of a key. */
    public void press(Key key) {
        for (String type : List.of("keyDown", "keyUp")) {
            call(
                    "Input.dispatchKeyEvent",
                    Map.of(
                            "type", type,
                            "key", key.word,
                            "code", key.word,
                            "windowsVirtualKeyCode", key.code,
                            "text", type.equals("keyDown") ? key.text : ""));
        }
    }

    /** The page on paper, as its style sheet asks for. */
    public byte[] pdf() {
        JsonNode answer = call("Page.printToPDF", Map.of("preferCSSPageSize", true));
        return Base64.getDecoder().decode(answer.get("data").asText());
    }

    /** What readers with a screen reader are told: every node with its role and name. */
    JsonNode accessibilityTree() {
        return call("Accessibility.getFullAXTree", Map.of()).get("nodes");
    }

    /** What happened since so many events. */
    List<Event> eventsSince(int number) {
        List<Event> all = tools.events(session);
        return all.subList(number, all.size());
    }

    int eventsSoFar() {
        return tools.events(session).size();
    }

    private long count(String method) {
        return tools.events(session).stream()
                .filter(event -> event.method().equals(method))
                .count();
    }

    private JsonNode call(String method, Map<String, ?> parameters) {
        return tools.call(session, method, parameters);
    }
}
