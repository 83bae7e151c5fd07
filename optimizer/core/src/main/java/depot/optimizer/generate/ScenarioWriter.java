package depot.optimizer.generate;

import depot.optimizer.dictionary.Settings;
import depot.optimizer.scenario.Scenario;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Writes a scenario as a folder of tables that reads back as the same scenario. */
public final class ScenarioWriter {
    private ScenarioWriter() {}

    /**
     * Writes the whole folder or nothing of it: files go to a folder beside it, which is then renamed.
     *
     * @param folder must not be there yet; the folder above it is made when it is missing
     * @throws FileAlreadyExistsException the folder is there
     * @throws IOException the disk refuses
     */
    public static void write(Scenario scenario, Path folder) throws IOException {
        Path target = folder.toAbsolutePath().normalize();
        if (Files.exists(target, LinkOption.NOFOLLOW_LINKS)) {
            throw new FileAlreadyExistsException(folder.toString(), null, "choose another folder or remove this one");
        }
        Path parent = Files.createDirectories(target.getParent());
        // Not a temporary directory of the system's: that would belong to its maker alone after the move.
        String name =
                "." + target.getFileName() + ".draft-" + ProcessHandle.current().pid();
        Path draft = Files.createDirectory(parent.resolve(name));
        try {
            writeFiles(scenario, draft);
            Files.move(draft, target);
        } finally {
            remove(draft);
        }
    }

    private static void writeFiles(Scenario scenario, Path folder) throws IOException {
        Files.writeString(folder.resolve(Settings.TABLE.file()), SettingsText.of(scenario));
        for (TableText table : tables(scenario)) {
            Files.writeString(folder.resolve(table.file()), table.text());
        }
    }

    /** Tables with rows; those that a scenario may do without are left out when they have none. */
    private static List<TableText> tables(Scenario scenario) {
        List<TableText> tables = new ArrayList<>();
        tables.addAll(RouteText.tables(scenario));
        tables.addAll(SiteText.tables(scenario));
        tables.addAll(EquipmentText.tables(scenario));
        tables.addAll(RolloutText.tables(scenario.coupling()));
        tables.addAll(FinanceText.tables(scenario.finance()));
        tables.removeIf(table -> table.empty() && table.optional());
        return tables;
    }

    /**
     * Some of a scenario's tables as they would be written, by file name; those without a row are left out.
     *
     * @param files names of the tables
     */
    public static SortedMap<String, String> texts(Scenario scenario, Set<String> files) {
        SortedMap<String, String> texts = new TreeMap<>();
        for (TableText table : tables(scenario)) {
            if (files.contains(table.file()) && !table.empty()) {
                texts.put(table.file(), table.text());
            }
        }
        return texts;
    }

    private static void remove(Path draft) throws IOException {
        if (!Files.exists(draft)) {
            return;
        }
        try (Stream<Path> paths = Files.walk(draft)) {
            for (Path path : paths.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }
}
