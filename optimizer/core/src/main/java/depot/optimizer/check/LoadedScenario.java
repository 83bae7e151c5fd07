package depot.optimizer.check;

import depot.optimizer.scenario.Scenario;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What came of loading a folder.
 *
 * @param scenario present if and only if no finding is an error
 * @param findings sorted by file, line and column
 * @param inputHashes SHA-256 of each file read, by name
 */
public record LoadedScenario(
        Optional<Scenario> scenario, List<Finding> findings, SortedMap<String, String> inputHashes) {
    /** Copies the collections. */
    public LoadedScenario {
        findings = List.copyOf(findings);
        inputHashes = Collections.unmodifiableSortedMap(new TreeMap<>(inputHashes));
    }
}
