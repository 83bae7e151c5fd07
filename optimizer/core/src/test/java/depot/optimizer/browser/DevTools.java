package depot.optimizer.browser;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.WebSocket;
import java.util.List;
import java.util.Map;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;

/** The debugging protocol of Chromium (chromedevtools.github.io/devtools-protocol): JSON over a socket, calls with numbers, and events. */
final class DevTools implements AutoCloseable {

    private static final JsonMapper MAPPER = new JsonMapper();

    /** A backstop: answers come within milliseconds, or never. */
    private static final int PATIENCE_SECONDS = 60;

    private final Map<Integer, CompletableFuture<JsonNode>> waiting = new ConcurrentHashMap<>();
    private final List<Event> events = new CopyOnWriteArrayList<>();
    private final BlockingQueue<Integer> arrivals = new LinkedBlockingQueue<>();
    private final AtomicInteger number = new AtomicInteger();
    private WebSocket socket;

    /** Something that happened in a tab. */
    record Event(String session, String method, JsonNode parameters) {}

    private DevTools() {}

    static DevTools connect(URI address) {
        DevTools tools = new DevTools();
        tools.socket = HttpClient.newHttpClient()
                .newWebSocketBuilder()
                .buildAsync(address, tools.new Ear())
                .join();
        return tools;
    }

    /**
     * Calls a method and waits for its answer.
     *
     * @param session of the tab, empty: the browser's own
     * @throws IllegalStateException if the browser refuses the call or does not answer
     */
    JsonNode call(String session, String method, Map<String, ?> parameters) {
        int id = number.incrementAndGet();
        CompletableFuture<JsonNode> answer = new CompletableFuture<>();
        waiting.put(id, answer);
        try {
            Map<String, Object> message = session.isEmpty()
                    ? Map.of("id", id, "method", method, "params", parameters)
                    : Map.of("id", id, "method", method, "params", parameters, "sessionId", session);
            socket.sendText(MAPPER.writeValueAsString(message), true).join();
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
        JsonNode message = answer.orTimeout(PATIENCE_SECONDS, TimeUnit.SECONDS).join();
        if (message.has("error")) {
            throw new IllegalStateException(method + ": " + message.get("error"));
        }
        return message.get("result");
    }

    /** What has happened in a tab so far. */
    List<Event> events(String session) {
        return events.stream().filter(event -> event.session().equals(session)).toList();
    }

    /** Waits until an event of that name has come so many times in all. */
    void await(String session, String method, long times) {
        while (events(session).stream()
                        .filter(event -> event.method().equals(method))
                        .count()
                < times) {
            try {
                if (arrivals.poll(PATIENCE_SECONDS, TimeUnit.SECONDS) == null) {
                    throw new IllegalStateException("No " + method + " from the browser.");
                }
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                throw new IllegalStateException(e);
            }
        }
    }

    @Override
    public void close() {
        socket.abort();
    }

    /** Puts the parts of messages together and hands them on. */
    private final class Ear implements WebSocket.Listener {

        private final StringBuilder parts = new StringBuilder();

        @Override
        public CompletionStage<?> onText(WebSocket from, CharSequence data, boolean last) {
            parts.append(data);
            if (last) {
                heard(parts.toString());
                parts.setLength(0);
            }
            from.request(1);
            return null;
        }

        private void heard(String text) {
            try {
                JsonNode message = MAPPER.readTree(text);
                if (message.has("id")) {
                    waiting.remove(message.get("id").asInt()).complete(message);
                } else {
                    events.add(new Event(
                            message.path("sessionId").asText(),
                            message.get("method").asText(),
                            message.get("params")));
                    arrivals.add(events.size());
                }
            } catch (JsonProcessingException e) {
                waiting.values().forEach(answer -> answer.completeExceptionally(e));
            }
        }
    }
}
