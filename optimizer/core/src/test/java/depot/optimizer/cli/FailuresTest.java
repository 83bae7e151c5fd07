package depot.optimizer.cli;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.cli.Terminal.ProgressStyle;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.NoSuchFileException;
import org.junit.jupiter.api.Test;

/** Every failure becomes one line and a hint. */
class FailuresTest {

    private final StringWriter err = new StringWriter();
    private final Failures failures =
            new Failures(new Terminal(new PrintWriter(new StringWriter()), new PrintWriter(err), ProgressStyle.LINES));

    @Test
    void aUserErrorKeepsItsWordsAndItsStatus() {
        assertThat(failures.report(new UserError(ExitStatus.NO_PLAN, "no plan yet", "Raise --nodes.")))
                .isEqualTo(4);
        assertThat(err.toString()).isEqualToIgnoringNewLines("optimizer: no plan yet" + "Hint: Raise --nodes.");
    }

    @Test
    void aFullMemoryNamesTheOptionThatHelps() {
        assertThat(failures.report(new OutOfMemoryError())).isEqualTo(1);
        assertThat(err.toString()).contains("not enough memory", "OPTIMIZER_JAVA_OPTS=-Xmx");
    }

    @Test
    void troubleWithFilesNamesTheFile() {
        failures.report(new NoSuchFileException("no/such"));
        failures.report(new UncheckedIOException(new AccessDeniedException("locked/file")));
        failures.report(new IOException("No space left on device"));

        assertThat(err.toString())
                .contains("there is no no/such", "no permission for locked/file", "No space left on device");
    }

    @Test
    void theUnexpectedIsOneLineWithoutATrace() {
        assertThat(failures.report(new IllegalStateException("first\nsecond"))).isEqualTo(1);
        assertThat(err.toString())
                .contains("unexpected failure: IllegalStateException: first", "--trace")
                .doesNotContain("second", "\tat ");
    }

    @Test
    void theTraceIsPrintedWhenAskedFor() {
        failures.trace();
        failures.report(new IllegalStateException("odd"));

        assertThat(err.toString()).contains("\tat " + FailuresTest.class.getName());
    }
}
