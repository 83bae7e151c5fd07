package depot.optimizer.cli;

import depot.optimizer.fleet.NothingFitsException;
import depot.optimizer.report.UnreadablePlanException;
import depot.optimizer.report.UnwritableRunException;
import depot.optimizer.report.compare.UnreadableRunException;
import depot.optimizer.solve.NoPlanException;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;

/**
 * The last stop of everything that goes wrong: one line, a hint and an exit status. A stack trace is printed only when it was asked
 * for.
 */
final class Failures implements IExecutionExceptionHandler, IParameterExceptionHandler {

    private static final String TRACE_HINT = "Add --trace to the command to see where it happened.";

    private final Terminal terminal;
    private boolean traced;

    Failures(Terminal terminal) {
        this.terminal = terminal;
    }

    /** From now on the stack trace of a failure is printed too. */
    void trace() {
        traced = true;
    }

    @Override
    public int handleExecutionException(Exception failure, CommandLine command, ParseResult parsed) {
        return report(failure);
    }

    @Override
    public int handleParseException(ParameterException failure, String[] arguments) {
        CommandLine command = failure.getCommandLine();
        terminal.problem("optimizer: " + failure.getMessage());
        UnmatchedArgumentException.printSuggestions(failure, terminal.err());
        terminal.problem("Hint: " + command.getCommandSpec().qualifiedName() + " --help lists what it takes.");
        printTrace(failure);
        return ExitStatus.BAD_INPUT.code();
    }

    /** Prints what went wrong and returns the exit status for it. */
    int report(Throwable failure) {
        UserError error = explain(failure);
        terminal.problem("optimizer: " + error.getMessage());
        if (!error.hint().isEmpty()) {
            terminal.problem("Hint: " + error.hint());
        }
        printTrace(failure);
        return error.status().code();
    }

    private void printTrace(Throwable failure) {
        if (traced) {
            failure.printStackTrace(new PrintWriter(terminal.err(), true));
        }
    }

    private static UserError explain(Throwable failure) {
        if (failure instanceof UserError error) {
            return error;
        }
        if (failure instanceof NothingFitsException) {
            return new UserError(
                    ExitStatus.SHORTAGES,
                    failure.getMessage(),
                    "Raise it, let crews stay on petrol longer (crew_phases.csv), or plan with less.",
                    failure);
        }
        if (failure instanceof NoPlanException) {
            return new UserError(
                    ExitStatus.NO_PLAN,
                    failure.getMessage(),
                    "Allow more work with --nodes and --time-limit, or a wider --gap.",
                    failure);
        }
        if (failure instanceof UncheckedIOException wrapped) {
            return explainFile(wrapped.getCause());
        }
        if (failure instanceof IOException file) {
            return explainFile(file);
        }
        if (failure instanceof OutOfMemoryError) {
            return other(
                    "not enough memory: it may use %d MB"
                            .formatted(Runtime.getRuntime().maxMemory() >> 20),
                    "Allow more, for example OPTIMIZER_JAVA_OPTS=-Xmx8g, or plan with --threads 1.");
        }
        if (failure instanceof UnsatisfiedLinkError || failure instanceof NoClassDefFoundError) {
            return other(
                    "a part of the program does not load on this machine: " + failure.getMessage(),
                    "The solver runs on 64-bit Linux, macOS and Windows. " + TRACE_HINT);
        }
        return other("unexpected failure: " + describe(failure), TRACE_HINT + " Please report it with that output.");
    }

    private static UserError explainFile(IOException failure) {
        if (failure instanceof UnreadablePlanException plan) {
            return new UserError(ExitStatus.BAD_INPUT, plan.getMessage(), "", plan);
        }
        if (failure instanceof UnreadableRunException run) {
            return new UserError(ExitStatus.BAD_INPUT, run.getMessage(), "Give folders that plan has written.", run);
        }
        if (failure instanceof UnwritableRunException run) {
            return other(run.getMessage(), "Choose another place with --out.");
        }
        if (failure instanceof NoSuchFileException missing) {
            return other("there is no " + missing.getFile(), "Check the path; it starts from the folder you are in.");
        }
        if (failure instanceof AccessDeniedException denied) {
            return other("no permission for " + denied.getFile(), "Choose another folder, or ask for access to it.");
        }
        if (failure instanceof FileSystemException trouble) {
            return other("trouble with " + trouble.getFile() + ": " + describe(trouble), TRACE_HINT);
        }
        return other("cannot read or write a file: " + describe(failure), TRACE_HINT);
    }

    private static UserError other(String message, String hint) {
        return new UserError(ExitStatus.OTHER, message, hint);
    }

    /** The message on one line, or the kind of failure when it has none. */
    private static String describe(Throwable failure) {
        String message = failure instanceof FileSystemException trouble ? trouble.getReason() : failure.getMessage();
        String kind = failure.getClass().getSimpleName();
        return message == null
                ? kind
                : (kind + ": " + message).lines().findFirst().orElse(kind);
    }
}
