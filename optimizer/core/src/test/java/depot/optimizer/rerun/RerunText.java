package depot.optimizer.rerun;

import depot.optimizer.fixture.ScenarioText;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Scenarios in text whose crews, depots and circuits change. */
public final class RerunText {

    private static final Path STARTER = Path.of("..", "..", "inputs", "starter");

    private RerunText() {}

    /** The small example, whose best plan is worked out by hand on its page. */
    public static ScenarioText starter() {
        ScenarioText text = ScenarioText.tiny();
        try (Stream<Path> files = Files.list(STARTER)) {
            for (Path file : files.sorted().toList()) {
                String name = file.getFileName().toString();
                if (name.endsWith(".csv") || name.equals("scenario.json")) {
                    text = text.table(name, Files.readString(file));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text;
    }

    /** A scenario without the rows of some tables that have a word among their cells. */
    public static ScenarioText without(ScenarioText text, String word, String... files) {
        ScenarioText edited = text;
        for (String file : files) {
            edited = edited.table(
                    file,
                    text.text(file)
                            .lines()
                            .filter(line -> !Stream.of(line.split(",", -1)).anyMatch(word::equals))
                            .collect(Collectors.joining("\n", "", "\n")));
        }
        return edited;
    }
}
