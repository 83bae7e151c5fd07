package depot.optimizer.rerun.input;

import depot.optimizer.dictionary.Dictionary;
import depot.optimizer.dictionary.Settings;
import depot.optimizer.dictionary.Table;
import depot.optimizer.read.RawSettings;
import depot.optimizer.read.RawTable;
import depot.optimizer.read.ScenarioFolder;
import depot.optimizer.rerun.input.InputChange.Kind;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/** Compares the tables of two scenarios by their keys. The order of rows and columns, and how a value is written, do not count. */
public final class InputChanges {
    private InputChanges() {}

    /**
     * Everything that differs, table by table; folders that the checker has found right.
     *
     * @param before folder of the scenario as it was
     * @param after folder of the scenario as it is
     */
    public static List<InputChange> between(Path before, Path after) {
        ScenarioFolder.Content old = ScenarioFolder.read(before, problem -> {});
        ScenarioFolder.Content now = ScenarioFolder.read(after, problem -> {});
        List<InputChange> changes = new ArrayList<>(settings(old.settings(), now.settings()));
        for (Table table : Dictionary.TABLES) {
            changes.addAll(TableChanges.between(table, raw(old, table), raw(now, table)));
        }
        return List.copyOf(changes);
    }

    private static Optional<RawTable> raw(ScenarioFolder.Content content, Table table) {
        return Optional.ofNullable(content.tables().get(table.file()));
    }

    private static List<InputChange> settings(Optional<RawSettings> before, Optional<RawSettings> after) {
        TreeSet<String> names = new TreeSet<>();
        before.ifPresent(settings -> names.addAll(settings.members().keySet()));
        after.ifPresent(settings -> names.addAll(settings.members().keySet()));
        List<InputChange> changes = new ArrayList<>();
        for (String name : names) {
            String old = text(before, name);
            String now = text(after, name);
            if (!alike(old, now)) {
                changes.add(new InputChange(Settings.TABLE.file(), "", Kind.CELL_CHANGED, name, old, now));
            }
        }
        return changes;
    }

    private static String text(Optional<RawSettings> settings, String name) {
        return settings.map(all -> all.members().get(name))
                .map(RawSettings.Member::text)
                .orElse("");
    }

    private static boolean alike(String one, String other) {
        try {
            return one.equals(other) || new BigDecimal(one).compareTo(new BigDecimal(other)) == 0;
        } catch (NumberFormatException words) {
            return false;
        }
    }
}
