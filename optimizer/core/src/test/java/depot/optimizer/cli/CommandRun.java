package depot.optimizer.cli;

import depot.optimizer.cli.Terminal.ProgressStyle;
import java.io.PrintWriter;
import java.io.StringWriter;

/** One run of the command line within the test's own process. */
record CommandRun(int status, String out, String err) {

    /** Runs with the real stages. */
    static CommandRun of(String... arguments) {
        return with(Stages.standard(), arguments);
    }

    /** Runs with other stages in place of those that solve. */
    static CommandRun with(Stages stages, String... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        Terminal terminal = new Terminal(new PrintWriter(out), new PrintWriter(err), ProgressStyle.LINES);
        int status = Optimizer.run(terminal, stages, arguments);
        return new CommandRun(status, out.toString(), err.toString());
    }

    /** Stages of which none may be called. */
    static Stages none() {
        return new Stages(
                (scenario, hashes, method, progress, control) -> {
                    throw new AssertionError("the planner was called");
                },
                (scenario, file, format) -> {
                    throw new AssertionError("the export was called");
                });
    }
}
