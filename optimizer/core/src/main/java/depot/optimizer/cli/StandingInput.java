package depot.optimizer.cli;

import depot.optimizer.check.Finding;
import depot.optimizer.check.LoadedScenario;
import depot.optimizer.check.ScenarioLoader;
import depot.optimizer.dictionary.DepotTables.Circuits;
import depot.optimizer.dictionary.DepotTables.Depots;
import depot.optimizer.dictionary.OrderTables.DeliveryLimits;
import depot.optimizer.dictionary.RolloutTables.Phases;
import depot.optimizer.dictionary.RolloutTables.RegionBudgets;
import depot.optimizer.dictionary.StoreTables.OwnedItems;
import depot.optimizer.generate.ScenarioWriter;
import depot.optimizer.scenario.Scenario;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Tables in which what earlier runs left is there, as files: those given, and the few of them written anew in which something is there or used up.
 *
 * @param files by name
 * @param hashes of the files
 */
record StandingInput(Scenario scenario, SortedMap<String, byte[]> files, SortedMap<String, String> hashes) {

    private static final Set<String> TABLES = Set.of(
            OwnedItems.TABLE.file(),
            Circuits.TABLE.file(),
            Depots.TABLE.file(),
            Phases.TABLE.file(),
            RegionBudgets.TABLE.file(),
            DeliveryLimits.TABLE.file());

    /**
     * Writes what differs and reads everything again, so that the run's tables say what it is planned for.
     *
     * @param given files of the scenario
     * @param asked the scenario that they say
     * @param there the same with what is there
     * @throws UserError if the tables do not go together
     */
    static StandingInput of(SortedMap<String, byte[]> given, Scenario asked, Scenario there) throws IOException {
        SortedMap<String, byte[]> files = new TreeMap<>(given);
        Map<String, String> before = ScenarioWriter.texts(asked, TABLES);
        Map<String, String> after = ScenarioWriter.texts(there, TABLES);
        for (String file : TABLES) {
            if (!after.containsKey(file) && before.containsKey(file)) {
                files.remove(file);
            } else if (!Objects.equals(after.get(file), before.get(file))) {
                files.put(file, after.get(file).getBytes(StandardCharsets.UTF_8));
            }
        }
        Path folder = Files.createTempDirectory("there");
        try {
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                Files.write(folder.resolve(file.getKey()), file.getValue());
            }
            LoadedScenario loaded = ScenarioLoader.load(folder);
            Scenario scenario = loaded.scenario().orElseThrow(() -> refused(loaded));
            return new StandingInput(scenario, files, loaded.inputHashes());
        } finally {
            for (String file : files.keySet()) {
                Files.deleteIfExists(folder.resolve(file));
            }
            Files.deleteIfExists(folder);
        }
    }

    private static UserError refused(LoadedScenario loaded) {
        String first = loaded.findings().stream()
                .filter(finding -> finding.severity() == Finding.Severity.ERROR)
                .findFirst()
                .map(finding -> "%s: %s [%s]".formatted(finding.file(), finding.message(), finding.value()))
                .orElse("");
        return new UserError(
                ExitStatus.BAD_INPUT,
                "what the run has bought does not go with these tables: %s; nothing was written".formatted(first),
                "Write what is there into owned.csv, circuits.csv and depots.csv, and plan without --from.");
    }
}
