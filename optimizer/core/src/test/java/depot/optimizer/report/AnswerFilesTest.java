package depot.optimizer.report;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.fixture.Planned;
import depot.optimizer.fixture.ScenarioText;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.report.AnswerFiles.Kept;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a run leaves when it is broken off. */
class AnswerFilesTest {

    private static final DepotPlan PLAN = Planned.of(ScenarioText.tiny()).plan();

    @TempDir
    private Path folder;

    private AnswerFiles open(String inputs) {
        return AnswerFiles.open(folder.resolve("plan"), inputs, Duration.ZERO);
    }

    @Test
    void anAnswerComesBackToTheLastDigit() {
        Kept kept = new Kept("north at 0x1.8p1", 1.0 / 3, List.of(PLAN));
        open("a").keep(kept);

        AnswerFiles later = open("a");
        assertThat(later.count()).isEqualTo(1);
        assertThat(later.find("north at 0x1.8p1")).contains(kept);
        assertThat(later.find("north at 0x1.8p2")).isEmpty();
    }

    @Test
    void otherInputsBeginAfresh() {
        open("a").keep(new Kept("north", 1, List.of(PLAN)));

        assertThat(open("b").find("north")).isEmpty();
        assertThat(open("a").count()).isZero();
    }

    @Test
    void aFileThatSomebodyCutShortIsDoneWithout() throws IOException {
        open("a").keep(new Kept("north", 1, List.of(PLAN)));
        try (Stream<Path> files = Files.list(folder.resolve(".plan.answers"))) {
            Path file =
                    files.filter(f -> f.toString().endsWith(".gz")).findAny().orElseThrow();
            byte[] bytes = Files.readAllBytes(file);
            Files.write(file, java.util.Arrays.copyOf(bytes, bytes.length / 2));
        }

        assertThat(open("a").find("north")).isEmpty();
    }

    @Test
    void aShortRunKeepsNothingAndAFinishedOneRemovesAll() {
        AnswerFiles shortRun = AnswerFiles.open(folder.resolve("plan"), "a");
        shortRun.keep(new Kept("north", 1, List.of(PLAN)));
        assertThat(folder).isEmptyDirectory();

        AnswerFiles longRun = open("a");
        longRun.keep(new Kept("north", 1, List.of(PLAN)));
        longRun.remove();
        assertThat(folder).isEmptyDirectory();
    }
}
