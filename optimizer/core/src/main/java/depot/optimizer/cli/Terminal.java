package depot.optimizer.cli;

import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;

/**
 * The two streams of a command. Results go to standard output; findings, notes and progress go to standard error. Progress is one
 * line that is written over on a terminal, and a line each elsewhere. Safe to use from several threads.
 */
final class Terminal {

    /** How progress is shown. */
    enum ProgressStyle {
        /** One line that is written over. */
        IN_PLACE,
        /** A line each time. */
        LINES
    }

    private static final String CLEAR_LINE = "\r\u001b[K";
    private static final int WIDTH = 79;

    private final PrintWriter out;
    private final PrintWriter err;
    private final ProgressStyle style;
    private boolean quiet;
    private boolean lineOpen;

    Terminal(PrintWriter out, PrintWriter err, ProgressStyle style) {
        this.out = out;
        this.err = err;
        this.style = style;
    }

    /** The streams of this process. The launcher says whether standard error is a terminal: Java 17 cannot tell. */
    static Terminal ofProcess() {
        ProgressStyle style = Boolean.getBoolean("optimizer.tty") ? ProgressStyle.IN_PLACE : ProgressStyle.LINES;
        return new Terminal(utf8(System.out), utf8(System.err), style);
    }

    private static PrintWriter utf8(PrintStream stream) {
        return new PrintWriter(stream, true, StandardCharsets.UTF_8);
    }

    /** From now on only results and problems are printed. */
    synchronized void beQuiet() {
        quiet = true;
    }

    PrintWriter out() {
        return out;
    }

    PrintWriter err() {
        return err;
    }

    /** A line of what the command was asked for. */
    synchronized void result(String line) {
        closeLine();
        out.println(line);
        out.flush();
    }

    /** A line that is good to know; left out when quiet. */
    synchronized void note(String line) {
        if (!quiet) {
            problem(line);
        }
    }

    /** A line that must be seen. */
    synchronized void problem(String line) {
        closeLine();
        err.println(line);
        err.flush();
    }

    /** How far the command has come; the next such line takes its place on a terminal. Left out when quiet. */
    synchronized void progress(String line) {
        if (quiet) {
            return;
        }
        if (style == ProgressStyle.LINES) {
            problem(line);
            return;
        }
        err.print(CLEAR_LINE + (line.length() <= WIDTH ? line : line.substring(0, WIDTH)));
        err.flush();
        lineOpen = true;
    }

    /** Takes a progress line away before anything else is printed. */
    private void closeLine() {
        if (lineOpen) {
            err.print(CLEAR_LINE);
            err.flush();
            lineOpen = false;
        }
    }
}
