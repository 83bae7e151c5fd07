package depot.optimizer.cli;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.cli.Terminal.ProgressStyle;
import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

class TerminalTest {

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @Test
    void elsewhereProgressIsALineEachTime() {
        Terminal terminal = terminal(ProgressStyle.LINES);
        terminal.progress("1 of 2");
        terminal.progress("2 of 2");

        assertThat(err).hasToString("1 of 2\n2 of 2\n".replace("\n", System.lineSeparator()));
    }

    @Test
    void onATerminalProgressTakesThePlaceOfTheLastAndGivesWayToResults() {
        Terminal terminal = terminal(ProgressStyle.IN_PLACE);
        terminal.progress("1 of 2");
        terminal.progress("2 of 2");
        terminal.result("done");

        assertThat(err).hasToString("\r\u001b[K1 of 2\r\u001b[K2 of 2\r\u001b[K");
        assertThat(out).hasToString("done" + System.lineSeparator());
    }

    @Test
    void aProgressLineNeverWrapsOntoTheNext() {
        terminal(ProgressStyle.IN_PLACE).progress("x".repeat(500));

        assertThat(err.toString().replaceAll("[^x]", "")).hasSizeLessThan(80);
    }

    @Test
    void quietLeavesResultsAndProblems() {
        Terminal terminal = terminal(ProgressStyle.LINES);
        terminal.beQuiet();
        terminal.progress("1 of 2");
        terminal.note("by the way");
        terminal.problem("trouble");
        terminal.result("done");

        assertThat(err).hasToString("trouble" + System.lineSeparator());
        assertThat(out).hasToString("done" + System.lineSeparator());
    }

    private Terminal terminal(ProgressStyle style) {
        return new Terminal(new PrintWriter(out), new PrintWriter(err), style);
    }
}
