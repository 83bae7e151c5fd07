package depot.optimizer.report.compare;

import depot.optimizer.report.RunFolder;
import depot.optimizer.report.UnwritableRunException;
import depot.optimizer.report.page.ComparisonPage;
import depot.optimizer.report.page.Pages;
import depot.optimizer.report.workbook.SideBySide;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Runs that are to be compared, read from their folders. */
public final class RunSet {

    /** The table of a comparison, by which its folder is known. */
    public static final String TABLE = "compare.csv";

    private static final String PAGE = "compare.html";
    private static final String WORKBOOK = "compare.xlsx";

    private final List<ComparedRun> runs;

    private RunSet(List<ComparedRun> runs) {
        this.runs = runs;
    }

    /**
     * Reads runs.
     *
     * @param folders of the runs, or their plan.json
     * @throws UnreadableRunException if any of them cannot be used; the message has a line for each of these
     */
    public static RunSet read(List<Path> folders) throws UnreadableRunException {
        List<ComparedRun> runs = new ArrayList<>();
        List<String> problems = new ArrayList<>();
        for (Path folder : folders) {
            try {
                runs.add(ComparedRun.read(folder));
            } catch (IOException e) {
                problems.add(e.getMessage());
            }
        }
        if (!problems.isEmpty()) {
            throw new UnreadableRunException(String.join(System.lineSeparator(), problems));
        }
        return new RunSet(List.copyOf(runs));
    }

    /** Currencies or horizons that differ: sums of such runs must not be set side by side unawares. */
    public List<String> conflicts() {
        List<String> conflicts = new ArrayList<>();
        differing("currencies", run -> run.plan().currency()).ifPresent(conflicts::add);
        differing("horizons", run -> run.figure("horizon").plain(0) + " years").ifPresent(conflicts::add);
        return conflicts;
    }

    /** What else makes present costs hard to compare. */
    public List<String> remarks() {
        return differing("discount rates", run -> run.figure("discount_rate").plain(6)).stream()
                .toList();
    }

    private Optional<String> differing(String what, Function<ComparedRun, String> value) {
        Map<String, List<String>> byValue = new TreeMap<>();
        runs.forEach(run -> byValue.computeIfAbsent(value.apply(run), none -> new ArrayList<>())
                .add(run.name()));
        if (byValue.size() < 2) {
            return Optional.empty();
        }
        return Optional.of("The runs have different " + what + ": "
                + byValue.entrySet().stream()
                        .map(entry -> entry.getKey() + " in " + String.join(", ", entry.getValue()))
                        .collect(Collectors.joining("; "))
                + ".");
    }

    /** The runs side by side. */
    public Comparison compare() {
        List<String> warnings = new ArrayList<>(conflicts());
        warnings.addAll(remarks());
        return new Comparison(runs.stream().map(ComparedRun::name).toList(), warnings, ComparisonParts.of(runs));
    }

    /**
     * Writes a comparison, whole or not at all; one of the same name is replaced.
     *
     * @throws UnwritableRunException if it cannot be written; what was there is then as it was
     */
    public void write(Path folder) throws UnwritableRunException {
        Comparison comparison = compare();
        byte[] table = ComparisonTable.of(comparison).content().getBytes(StandardCharsets.UTF_8);
        ComparisonPage page = ComparisonPages.of(comparison, runs);
        byte[] html = Pages.comparison(page).getBytes(StandardCharsets.UTF_8);
        byte[] workbook = SideBySide.of(ComparisonSheets.of(comparison));
        new RunFolder(folder, TABLE).replace(draft -> {
            Files.write(draft.resolve(TABLE), table);
            Files.write(draft.resolve(PAGE), html);
            Files.write(draft.resolve(WORKBOOK), workbook);
        });
    }
}
