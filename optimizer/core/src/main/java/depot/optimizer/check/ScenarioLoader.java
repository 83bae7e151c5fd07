package depot.optimizer.check;

import depot.optimizer.dictionary.Dictionary;
import depot.optimizer.dictionary.Presence;
import depot.optimizer.dictionary.Table;
import depot.optimizer.read.RawTable;
import depot.optimizer.read.ScenarioFolder;
import depot.optimizer.scenario.Scenario;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads, checks and makes a scenario. */
public final class ScenarioLoader {
    private ScenarioLoader() {}

    /**
     * Loads a folder of tables.
     *
     * @return the scenario when nothing is wrong, and everything found; bad input never raises an exception
     */
    public static LoadedScenario load(Path folder) {
        Findings findings = new Findings();
        ScenarioFolder.Content content = ScenarioFolder.read(folder, findings::error);
        if (content.hashes().isEmpty()) {
            return new LoadedScenario(Optional.empty(), findings.sorted(), content.hashes());
        }
        content.unknown()
                .forEach(file -> findings.noticeOfFile(
                        file, "no table of a scenario has this name; the file is not used", tableNames(file)));
        Drafts drafts = drafts(content, findings);
        Rules.ALL.forEach(rule -> rule.check(drafts, findings));
        Optional<Scenario> scenario =
                findings.anyError() ? Optional.empty() : Optional.of(ScenarioAssembly.scenario(drafts));
        return new LoadedScenario(scenario, findings.sorted(), content.hashes());
    }

    private static String tableNames(String file) {
        List<String> names = Dictionary.TABLES.stream().map(Table::file).toList();
        return NearestKey.nearest(file, names)
                .map(name -> "maybe " + name)
                .orElseGet(() -> "tables: " + String.join(", ", names));
    }

    private static Drafts drafts(ScenarioFolder.Content content, Findings findings) {
        Optional<TypedRow> settings = content.settings().map(raw -> SettingsTyping.read(raw, findings));
        Map<String, TypedTable> tables = new HashMap<>();
        for (Table table : Dictionary.TABLES) {
            RawTable raw = content.tables().get(table.file());
            // An optional table that is not there says as much as an empty one; a broken one says nothing.
            boolean absent =
                    table.presence() == Presence.OPTIONAL && !content.hashes().containsKey(table.file());
            tables.put(
                    table.file(),
                    raw == null ? new TypedTable(table, List.of(), absent) : TableTyping.read(table, raw, findings));
        }
        return new Drafts(settings, tables);
    }
}
