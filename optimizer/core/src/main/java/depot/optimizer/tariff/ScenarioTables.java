package depot.optimizer.tariff;

import depot.optimizer.dictionary.RouteTables.Seasons;
import depot.optimizer.dictionary.Settings;
import depot.optimizer.dictionary.Table;
import depot.optimizer.dictionary.TariffTables.Tariffs;
import depot.optimizer.dictionary.TariffTables.Terms;
import depot.optimizer.read.RawSettings;
import depot.optimizer.read.RawTable;
import depot.optimizer.read.ReadProblem;
import depot.optimizer.read.ScenarioFolder;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What a scenario says that a tariff has to fit: currency and seasons, and the two tables of tariffs. The scenario as a whole may be
 * unfinished, such as one whose depots have the tariff that is about to come.
 */
final class ScenarioTables {
    private static final Set<String> LOOKED_AT =
            Set.of(Settings.TABLE.file(), Seasons.TABLE.file(), Tariffs.TABLE.file(), Terms.TABLE.file());

    private final Path folder;
    private final ScenarioFolder.Content content;
    private final Remarks remarks;

    private ScenarioTables(Path folder, ScenarioFolder.Content content, Remarks remarks) {
        this.folder = folder;
        this.content = content;
        this.remarks = remarks;
    }

    /** Reads them, or tells all that is wrong with them. */
    static Optional<ScenarioTables> read(Path folder, Remarks remarks) {
        long before = remarks.errors();
        List<ReadProblem> problems = new ArrayList<>();
        ScenarioFolder.Content content = ScenarioFolder.read(folder, problems::add);
        for (ReadProblem problem : problems) {
            boolean ofFolder = problem.file().equals(folder.toString());
            boolean newTable =
                    problem.file().equals(Tariffs.TABLE.file()) && Files.notExists(folder.resolve(problem.file()));
            if (ofFolder || (LOOKED_AT.contains(problem.file()) && !newTable)) {
                remarks.error(
                        ofFolder
                                ? problem.file()
                                : folder.resolve(problem.file()).toString(),
                        problem);
            }
        }
        if (remarks.errors() > before) {
            return Optional.empty();
        }
        ScenarioTables tables = new ScenarioTables(folder, content, remarks);
        tables.requireSeasons();
        return remarks.errors() > before ? Optional.empty() : Optional.of(tables);
    }

    /** Code of the currency as the scenario has it, empty: it has none. */
    String currency() {
        return content.settings()
                .map(settings -> settings.members().get(Settings.CURRENCY.name()))
                .map(RawSettings.Member::text)
                .orElse("");
    }

    /** Keys of the seasons, in their order. */
    List<String> seasons() {
        RawTable table = content.tables().get(Seasons.TABLE.file());
        int column = table.header().indexOf(Seasons.SEASON.name());
        return table.rows().stream()
                .map(row -> row.cells().get(column))
                .distinct()
                .toList();
    }

    /** Path of a file of the scenario, for findings. */
    String path(String file) {
        return folder.resolve(file).toString();
    }

    /** Whether the scenario has the table's file. */
    boolean has(Table table) {
        return content.tables().containsKey(table.file());
    }

    /** A table to edit; a fresh one when there is no such file. Empty after telling why it cannot be edited. */
    Optional<TableEdit> edit(Table table) {
        RawTable raw = content.tables().get(table.file());
        if (raw == null) {
            return Optional.of(TableEdit.fresh(table));
        }
        Optional<TableEdit> edit = text(table).flatMap(text -> TableEdit.of(raw, text));
        if (edit.isEmpty()) {
            String hint = "--out writes the tariff into a folder of its own, to be copied by hand";
            remarks.errorOfFile(path(table.file()), 0, "", "", "the rows of the file cannot be told apart", hint);
        }
        return edit;
    }

    private Optional<String> text(Table table) {
        try {
            return Optional.of(Files.readString(folder.resolve(table.file()), StandardCharsets.UTF_8));
        } catch (IOException unreadable) {
            return Optional.empty();
        }
    }

    private void requireSeasons() {
        RawTable table = content.tables().get(Seasons.TABLE.file());
        boolean listed = table != null
                && table.header().contains(Seasons.SEASON.name())
                && !table.rows().isEmpty();
        if (!listed) {
            String hint = "list the seasons of the scenario first";
            remarks.errorOfFile(path(Seasons.TABLE.file()), 0, Seasons.SEASON.name(), "", "there is no season", hint);
        }
    }
}
