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

    /** Folder within a rerun that holds the tables as they were given, where {@link #INPUTS} lists what is there as well. */
    public static final String ASKED = "asked";

    /** Nothing more. */
    public static final RunExtras NONE = new RunExtras(new TreeMap<>(), List.of());

    /** Copies the collections. */
    public RunExtras {
        files = Collections.unmodifiableSortedMap(new TreeMap<>(files));
        tables = List.copyOf(tables);
    }

    /** The tables that the run was made from, as they are. */
    public static RunExtras inputs(SortedMap<String, byte[]> inputs) {
        return new RunExtras(in(INPUTS, inputs), List.of());
    }

    /**
     * The same for a run in whose tables something is there that those asked for do not list.
     *
     * @param asked the tables as they were given
     */
    public static RunExtras inputs(SortedMap<String, byte[]> inputs, SortedMap<String, byte[]> asked) {
        return inputs(inputs).and(in(ASKED, asked), List.of());
    }

    private static SortedMap<String, byte[]> in(String folder, SortedMap<String, byte[]> files) {
        SortedMap<String, byte[]> placed = new TreeMap<>();
        files.forEach((name, bytes) -> placed.put(folder + "/" + name, bytes));
        return placed;
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
