package depot.optimizer.report;

import depot.optimizer.report.table.CsvTable;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What a run's folder holds beside the plan and what follows from it.
 *
 * @param files by their path in the folder, with slashes
 * @param tables that tables.json describes as well
 */
public record RunExtras(SortedMap<String, byte[]> files, List<CsvTable> tables) {

    /** Folder within the run that holds the tables that it was made from. */
    public static final String INPUTS = "inputs";

    /** Nothing more. */
    public static final RunExtras NONE = new RunExtras(new TreeMap<>(), List.of());

    /** Copies the collections. */
    public RunExtras {
        files = Collections.unmodifiableSortedMap(new TreeMap<>(files));
        tables = List.copyOf(tables);
    }

    /** The tables that the run was made from, as they are. */
    public static RunExtras inputs(SortedMap<String, byte[]> inputs) {
        SortedMap<String, byte[]> files = new TreeMap<>();
        inputs.forEach((name, bytes) -> files.put(INPUTS + "/" + name, bytes));
        return new RunExtras(files, List.of());
    }

    /** These and more. */
    public RunExtras and(SortedMap<String, byte[]> moreFiles, List<CsvTable> moreTables) {
        SortedMap<String, byte[]> all = new TreeMap<>(files);
        all.putAll(moreFiles);
        List<CsvTable> both = new ArrayList<>(tables);
        both.addAll(moreTables);
        return new RunExtras(all, both);
    }
}
