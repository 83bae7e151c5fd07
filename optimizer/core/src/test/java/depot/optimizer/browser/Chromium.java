package depot.optimizer.browser;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * A Chromium without a window, driven over its own debugging protocol. Names of hosts lead nowhere in it, so that a page that asks for
 * something from elsewhere fails at once.
 */
public final class Chromium implements AutoCloseable {

    private static final String PROGRAM = "chromium";

    /** The browser writes the port and the path of its debugging socket here. */
    private static final String PORT_FILE = "DevToolsActivePort";

    private static final int START_MILLISECONDS = 30_000;
    private static final int WAIT_MILLISECONDS = 20;

    private final Process process;
    private final Path profile;
    private final DevTools tools;

    private Chromium(Process process, Path profile, DevTools tools) {
        this.process = process;
        this.profile = profile;
        this.tools = tools;
    }

    /** Whether there is one. */
    public static boolean installed() {
        return Arrays.stream(System.getenv("PATH").split(File.pathSeparator))
                .anyMatch(folder -> Files.isExecutable(Path.of(folder, PROGRAM)));
    }

    /**
     * Starts one with an empty profile.
     *
     * @throws IllegalStateException if it does not start; the message has what it wrote
     */
    public static Chromium start() {
        try {
            Path profile = Files.createTempDirectory("chromium");
            Path log = profile.resolve("log");
            Process process = new ProcessBuilder(command(profile))
                    .redirectErrorStream(true)
                    .redirectOutput(log.toFile())
                    .start();
            return new Chromium(process, profile, DevTools.connect(socket(process, profile, log)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<String> command(Path profile) {
        List<String> command = new ArrayList<>(List.of(
                PROGRAM,
                "--headless",
                "--remote-debugging-port=0",
                "--user-data-dir=" + profile,
                "--host-resolver-rules=MAP * ~NOTFOUND",
                "--disable-gpu",
                "--disable-dev-shm-usage",
                "--disable-background-networking",
                "--disable-component-update",
                "--no-first-run"));
        if (System.getProperty("user.name").equals("root")) {
            // Chromium's sandbox does not start for root, which builds in containers often are.
            command.add("--no-sandbox");
        }
        command.add("about:blank");
        return command;
    }

    private static URI socket(Process process, Path profile, Path log) throws IOException {
        Path file = profile.resolve(PORT_FILE);
        for (int waited = 0; waited < START_MILLISECONDS && process.isAlive(); waited += WAIT_MILLISECONDS) {
            List<String> lines = Files.exists(file) ? Files.readAllLines(file) : List.of();
            if (lines.size() == 2) {
                return URI.create("ws://127.0.0.1:" + lines.get(0) + lines.get(1));
            }
            pause();
        }
        process.destroyForcibly();
        throw new IllegalStateException("Chromium does not start: " + Files.readString(log, UTF_8));
    }

    private static void pause() {
        try {
            Thread.sleep(WAIT_MILLISECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    /** A new tab, empty. */
    public Tab open() {
        String target = tools.call("", "Target.createTarget", Map.of("url", "about:blank"))
                .get("targetId")
                .asText();
        String session = tools.call("", "Target.attachToTarget", Map.of("targetId", target, "flatten", true))
                .get("sessionId")
                .asText();
        return new Tab(tools, session);
    }

    /** Ends it and removes its profile. */
    @Override
    public void close() {
        tools.call("", "Browser.close", Map.of());
        tools.close();
        process.onExit().join();
        try (Stream<Path> files = Files.walk(profile)) {
            files.sorted(Comparator.reverseOrder()).map(Path::toFile).forEach(File::delete);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
