package depot.optimizer.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Where the results of a command go, and whether they can go there: asked before the work, not after it. */
final class OutputPlace {

    private static final Pattern NAME = Pattern.compile("[\\p{L}\\p{N}_][\\p{L}\\p{N}_. -]*");

    private OutputPlace() {}

    /**
     * The folder of a run.
     *
     * @param asked by the user; empty: {@code outputs/<scenario>/<run>} in the project's folder
     * @throws UserError if the run's name is no name of a folder, or the folder cannot be written
     */
    static Path ofRun(Optional<Path> asked, Path scenarioFolder, String run) {
        Path folder = asked.orElseGet(() -> ofScenario(scenarioFolder).resolve(checkedName(run)));
        requireWritable(folder);
        return folder;
    }

    /** {@code outputs/<scenario>}, where {@code <scenario>} is the name of the scenario's folder. */
    static Path ofScenario(Path scenarioFolder) {
        Path name = scenarioFolder.toAbsolutePath().normalize().getFileName();
        Path outputs = Path.of(System.getProperty("optimizer.home", ""), "outputs");
        return outputs.resolve(name == null ? "scenario" : name.toString());
    }

    private static String checkedName(String run) {
        if (!NAME.matcher(run).matches()) {
            throw new UserError(
                    ExitStatus.BAD_INPUT,
                    "\"%s\" cannot be the name of a run".formatted(run),
                    "Use letters, digits, spaces, dots, dashes and underscores; --out takes a whole path.");
        }
        return run;
    }

    /**
     * Makes sure that a file can be made or replaced.
     *
     * @throws UserError if not
     */
    static void requireWritableFile(Path file) {
        if (Files.isDirectory(file)) {
            throw unwritable(file, "it is a folder", file);
        }
        requireWritable(file.toAbsolutePath().getParent());
    }

    /**
     * Makes sure that a folder can be made, or filled where it is there already.
     *
     * @throws UserError if not
     */
    static void requireWritable(Path folder) {
        Path existing = folder.toAbsolutePath().normalize();
        while (!Files.exists(existing)) {
            existing = existing.getParent();
        }
        if (!Files.isDirectory(existing)) {
            throw unwritable(folder, "this is a file, not a folder", existing);
        }
        if (!Files.isWritable(existing)) {
            throw unwritable(folder, "there is no permission to write here", existing);
        }
    }

    /**
     * Makes sure that a folder is not there yet, or is empty, and can be made.
     *
     * @throws UserError if not
     */
    static void requireNewFolder(Path folder) {
        requireWritable(folder);
        try (Stream<Path> content = Files.exists(folder) ? Files.list(folder) : Stream.empty()) {
            if (content.findAny().isPresent()) {
                throw unwritable(folder, "it holds other files, which are left alone", folder);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static UserError unwritable(Path wanted, String reason, Path culprit) {
        return new UserError(
                ExitStatus.OTHER,
                "cannot write %s; %s: %s".formatted(wanted, reason, culprit),
                "Choose another place with --out.");
    }
}
