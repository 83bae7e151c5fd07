package depot.optimizer.cli;

import java.util.concurrent.Callable;
import picocli.AutoComplete;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** {@code optimizer completion}: prints what makes a shell complete commands and options. */
@Command(
        name = "completion",
        header = "Prints a script that lets bash or zsh complete commands and options.",
        description = "For the shell you are in:%n%n  source <(bin/optimizer completion)%n%n"
                + "To keep it, add that line to ~/.bashrc or ~/.zshrc, with the full path of bin/optimizer.")
final class CompletionCommand implements Callable<Integer> {

    private final Terminal terminal;

    @Spec
    private CommandSpec spec;

    CompletionCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        terminal.result(
                AutoComplete.bash("optimizer", spec.root().commandLine()).stripTrailing());
        return ExitStatus.PROVEN.code();
    }
}
