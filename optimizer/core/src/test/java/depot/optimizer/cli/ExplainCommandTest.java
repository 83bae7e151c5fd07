package depot.optimizer.cli;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.fixture.DescribedTables;
import depot.optimizer.fixture.ScenarioText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The explain command with the real stages, asked about the plan that inputs/starter/README.md works out by hand. */
class ExplainCommandTest {

    private static final Path STARTER = Path.of("..", "..", "inputs", "starter");

    @TempDir
    private static Path shared;

    @TempDir
    private Path folder;

    @BeforeAll
    static void plan() {
        CommandRun planned = CommandRun.of(
                "plan", STARTER.toString(), "--out", shared.resolve("plan").toString());
        assertThat(planned.status()).as(planned.err()).isZero();
    }

    private static CommandRun explain(Path scenario, Path plan, Path out, String... more) {
        return CommandRun.with(
                CommandRun.none(),
                Stream.concat(
                                Stream.of("explain", scenario.toString(), plan.toString(), "--out", out.toString()),
                                Stream.of(more))
                        .toArray(String[]::new));
    }

    private CommandRun explain(String... more) {
        return explain(STARTER, shared.resolve("plan"), folder.resolve("answers"), more);
    }

    private static List<String> names(Path folder) throws IOException {
        try (var files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void answersAreTablesAPageAndPlansAndTheSameWhateverTheThreads() throws IOException {
        CommandRun done = explain("--threads", "1");
        CommandRun again =
                explain(STARTER, shared.resolve("plan/plan.json"), folder.resolve("again"), "--threads", "3");

        assertThat(done.status()).as(done.err()).isZero();
        assertThat(again.status()).as(again.err()).isZero();
        Path answers = folder.resolve("answers");
        assertThat(names(answers))
                .containsExactly(
                        "explain.html",
                        "next-best-01.json",
                        "next-best-02.json",
                        "next_best.csv",
                        "other_purchases.csv",
                        "rules-of-thumb.json",
                        "rules_of_thumb.csv",
                        "rules_of_thumb_broken.csv",
                        "tables.json",
                        "why.csv",
                        "worth.csv");
        assertThat(DescribedTables.faults(answers)).isEmpty();
        for (String name : names(answers)) {
            assertThat(answers.resolve(name))
                    .hasSameBinaryContentAs(folder.resolve("again").resolve(name));
        }
        assertThat(answers.resolve("rules_of_thumb.csv"))
                .content()
                .contains("yard,4020.50,5640.50,1620.00,2040,3660,250,0,no,EUR");
        assertThat(answers.resolve("why.csv"))
                .content()
                .contains("yard,charger,quick,bench,1,1,bays in use at once,1,1,");
        assertThat(answers.resolve("worth.csv"))
                .content()
                .contains(
                        "yard,bays of each charger of the type,quick,1,bay,met,100.00,100.00,100.00,20.00,yes,saves 100.00,EUR");
        assertThat(answers.resolve("explain.html"))
                .content()
                .contains("no plan meets every day", "Against rules of thumb", "costs 80.00 more")
                .doesNotContain("http://", "https://");
        assertThat(done.out()).contains("5,640.50 by rules of thumb, +1,620.00; 0 of 250 days break no rule");
        assertThat(done.err()).contains("Answered 1 of ");
    }

    @Test
    void plansAmongTheAnswersAreReplayedLikeAny() {
        explain("--ask", "thumb", "--ask", "next");
        Path answers = folder.resolve("answers");

        assertThat(CommandRun.of(
                                "replay",
                                STARTER.toString(),
                                answers.resolve("next-best-01.json").toString())
                        .status())
                .isZero();
        CommandRun thumb = CommandRun.of(
                "replay",
                STARTER.toString(),
                answers.resolve("rules-of-thumb.json").toString());
        assertThat(thumb.status()).isEqualTo(ExitStatus.REPLAY_FAILED.code());
        assertThat(thumb.out()).contains("CIRCUIT_CURRENT bench").doesNotContain("LATE", "ENERGY");
    }

    @Test
    void onlyTheQuestionAskedIsAnswered() throws IOException {
        CommandRun done = explain("--ask", "thumb", "--breaker", "usable", "--spare", "0", "--depot", "yard");

        assertThat(done.status()).as(done.err()).isZero();
        Path answers = folder.resolve("answers");
        assertThat(answers.resolve("rules_of_thumb_broken.csv")).content().hasLineCount(1);
        assertThat(answers.resolve("why.csv")).content().hasLineCount(1);
        // Eight packs, two quicks and two rows-of-four: without spares, and with an eye on the breaker, the starter is
        // an easy case.
        assertThat(answers.resolve("rules_of_thumb.csv")).content().contains("yard,4020.50,4020.50,0.00,");
    }

    @Test
    void whatIsWrongIsToldAndNothingIsWritten() throws IOException {
        assertRefused(explain("--depot", "yard", "--depot", "moon"), "has no depot moon", "Its depots are yard");
        assertRefused(explain("--ask", "whence"), "whence");
        assertRefused(explain("--within", "much"), "'much' is not a number");
        Path gone = shared.resolve("gone");
        assertRefused(explain(STARTER, gone, folder.resolve("answers")), "There is no file " + gone);
        Path other = ScenarioText.tiny().write(folder.resolve("other"));
        assertRefused(
                explain(other, shared.resolve("plan"), folder.resolve("answers")),
                "is not the plan of these tables",
                "crews.csv");
    }

    private void assertRefused(CommandRun run, String... words) {
        assertThat(run.err()).contains(words).contains("optimizer: ").doesNotContain("\tat ");
        assertThat(run.status()).isEqualTo(ExitStatus.BAD_INPUT.code());
        assertThat(run.out()).isEmpty();
        assertThat(folder.resolve("answers")).doesNotExist();
    }

    @Test
    void aPlanThatFallsShortIsNotExplained() {
        Path scenario = ScenarioText.tiny()
                .replace("crews.csv", "crew-1,north,8,60", "crew-1,north,1,60")
                .write(folder.resolve("short"));
        Path plan = folder.resolve("plan");
        assertThat(CommandRun.of("plan", scenario.toString(), "--out", plan.toString())
                        .status())
                .isEqualTo(ExitStatus.SHORTAGES.code());

        CommandRun refused = explain(scenario, plan, folder.resolve("answers"));

        assertThat(refused.status()).isEqualTo(ExitStatus.SHORTAGES.code());
        assertThat(refused.err()).contains("falls short on", "nothing was written");
        assertThat(folder.resolve("answers")).doesNotExist();
    }

    @Test
    void anotherFolderIsLeftAlone() throws IOException {
        Path letters = Files.createDirectories(folder.resolve("letters"));
        Files.writeString(letters.resolve("letter.txt"), "dear");

        CommandRun refused = explain(STARTER, shared.resolve("plan"), letters);

        assertThat(refused.status()).isEqualTo(ExitStatus.OTHER.code());
        assertThat(refused.err()).contains("is left alone");
        assertThat(names(letters)).containsExactly("letter.txt");
    }
}
