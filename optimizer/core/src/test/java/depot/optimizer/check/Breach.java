package depot.optimizer.check;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.check.Finding.Severity;
import depot.optimizer.fixture.ScenarioText;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Loads edited scenarios and says what has to be found; a place is written {@code file:line:column}. */
final class Breach {
    private final List<Finding> findings;

    private Breach(List<Finding> findings) {
        this.findings = findings;
    }

    /** Loads a scenario from a new folder of its own. */
    static Breach in(ScenarioText text) {
        try {
            Path folder = Files.createTempDirectory("scenario");
            try {
                LoadedScenario loaded = ScenarioLoader.load(text.write(folder));
                boolean error = loaded.findings().stream().anyMatch(finding -> finding.severity() == Severity.ERROR);
                assertThat(loaded.scenario().isPresent()).isNotEqualTo(error);
                return new Breach(loaded.findings());
            } finally {
                for (String file : text.files()) {
                    Files.deleteIfExists(folder.resolve(file));
                }
                Files.deleteIfExists(folder);
            }
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    /** One error and nothing else. */
    void isOnlyError(String place, String value, String message) {
        assertThat(findings).as("findings").hasSize(1);
        has(Severity.ERROR, place, value, message);
    }

    /** One notice and nothing else. */
    void isOnlyNotice(String place, String value, String message) {
        assertThat(findings).as("findings").hasSize(1);
        has(Severity.NOTICE, place, value, message);
    }

    /** An error among others. */
    Breach hasError(String place, String value, String message) {
        return has(Severity.ERROR, place, value, message);
    }

    /** Nothing at all. */
    void isNone() {
        assertThat(findings).isEmpty();
    }

    /** So many findings. */
    Breach count(int count) {
        assertThat(findings).hasSize(count);
        return this;
    }

    private Breach has(Severity severity, String place, String value, String message) {
        assertThat(findings).anySatisfy(finding -> {
            assertThat(finding.file() + ":" + finding.line() + ":" + finding.column())
                    .isEqualTo(place);
            assertThat(finding.value()).isEqualTo(value);
            assertThat(finding.message()).contains(message);
            assertThat(finding.hint()).isNotBlank();
            assertThat(finding.severity()).isEqualTo(severity);
        });
        return this;
    }
}
