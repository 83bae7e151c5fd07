package depot.optimizer.sweep.spec;

import depot.optimizer.check.Finding;
import depot.optimizer.check.Finding.Severity;
import depot.optimizer.check.LoadedScenario;
import depot.optimizer.check.ScenarioLoader;
import depot.optimizer.generate.ScenarioWriter;
import depot.optimizer.read.JsonTree;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.sweep.change.Change;
import depot.optimizer.sweep.change.ChangeWords;
import depot.optimizer.sweep.change.Changes;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Sends changed scenarios through the checks that tables go through: each is written as tables and loaded again. */
final class VariationCheck {

    private record Variation(JsonTree at, String path, List<Change> changes) {}

    private final Scenario scenario;
    private final SweepFindings findings;
    private final List<Variation> variations = new ArrayList<>();

    VariationCheck(Scenario scenario, SweepFindings findings) {
        this.scenario = scenario;
        this.findings = findings;
    }

    /** Remembers changes that will be applied together, and where the file asks for them. */
    void add(JsonTree at, String path, List<Change> changes) {
        variations.add(new Variation(at, path, List.copyOf(changes)));
    }

    /** Tells the first error of every changed scenario that is not sound. */
    void check() {
        List<Optional<Finding>> errors = variations.parallelStream()
                .map(variation -> error(Changes.apply(scenario, variation.changes())))
                .toList();
        for (int i = 0; i < errors.size(); i++) {
            Variation variation = variations.get(i);
            errors.get(i)
                    .ifPresent(error -> findings.error(
                            variation.at(),
                            variation.path(),
                            "the scenario is not sound with this change (" + ChangeWords.of(variation.changes()) + "): "
                                    + error.file() + ", " + error.column() + " = " + error.value() + ": "
                                    + error.message(),
                            "choose a value that the tables could hold"));
        }
    }

    private static Optional<Finding> error(Scenario changed) {
        try {
            Path folder = Files.createTempDirectory("variation");
            try {
                ScenarioWriter.write(changed, folder.resolve("scenario"));
                LoadedScenario loaded = ScenarioLoader.load(folder.resolve("scenario"));
                return loaded.findings().stream()
                        .filter(finding -> finding.severity() == Severity.ERROR)
                        .findFirst();
            } finally {
                remove(folder);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void remove(Path folder) throws IOException {
        try (Stream<Path> paths = Files.walk(folder)) {
            for (Path path : paths.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }
}
