package depot.optimizer.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What all commands share: help, version, usage errors and the way failures are told. */
class OptimizerTest {

    private static final String[] COMMANDS = {
        "check", "plan", "replay", "compare", "explain", "export", "generate", "completion"
    };

    @Test
    void helpNamesEveryCommandAndEveryExitStatus() {
        CommandRun run = CommandRun.of("--help");

        assertThat(run.status()).isZero();
        assertThat(run.out()).contains(COMMANDS).contains("Examples:");
        for (ExitStatus status : ExitStatus.values()) {
            assertThat(run.out()).containsPattern("(?m)^ *" + status.code() + " +\\w");
        }
        assertThat(run.err()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"check", "plan", "replay", "compare", "explain", "export", "generate", "completion"})
    void everyCommandExplainsItself(String command) {
        CommandRun run = CommandRun.of(command, "--help");

        assertThat(run.status()).isZero();
        assertThat(run.out()).contains("Usage: optimizer " + command, "--quiet", "--trace", "Exit status:");
    }

    @Test
    void theVersionIsOneLine() {
        assertThat(CommandRun.of("--version").out()).startsWith("optimizer ").hasLineCount(1);
    }

    @ParameterizedTest
    @CsvSource({
        "'', Missing required subcommand",
        "plann, Did you mean: optimizer plan",
        "plan, Missing required parameter: 'SCENARIO'",
        "check somewhere --fast, Unknown option: '--fast'",
        "plan x --gap much, 'much' is not a number",
        "plan x --gap 100%, is not a share",
        "plan x --gap -0.1, is not a share",
        "plan x --threads 0, is not a whole number from 1",
        "plan x --threads 1.5, is not a whole number from 1",
        "plan x --nodes 1e30, is not a whole number from 1",
        "plan x --time-limit 0, is not a number of seconds above 0",
        "plan x --run ../other, cannot be the name of a run",
        "replay x y --trials none, is not a number",
        "compare, Missing required parameter: 'RUN'",
        "compare outputs/one, takes two runs or more",
        "compare one two --name ../other, cannot be the name of a run",
        "explain x, Missing required parameter: 'PLAN'",
        "explain x y --spare 2, is not a share",
        "explain x y --breaker half, half",
        "export x --format xml, xml",
        "generate, --out",
        "generate --out new --days 9, days is 9"
    })
    void aWrongCommandLineIsExplainedWithStatusTwo(String line, String words) {
        CommandRun run = CommandRun.with(CommandRun.none(), line.isEmpty() ? new String[0] : line.split(" "));

        assertThat(run.err()).contains(words).contains("optimizer: ", "Hint: ").doesNotContain("\tat ");
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
    }

    @Test
    void theCompletionScriptKnowsCommandsAndOptions() {
        CommandRun run = CommandRun.of("completion");

        assertThat(run.status()).isZero();
        assertThat(run.out()).contains(COMMANDS).contains("--trials", "--gap", "complete -F");
        assertThat(run.err()).isEmpty();
    }
}
