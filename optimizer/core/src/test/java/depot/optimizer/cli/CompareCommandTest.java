package depot.optimizer.cli;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.fixture.FinanceText;
import depot.optimizer.fixture.ScenarioText;
import depot.optimizer.fixture.TwoDepots;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From planned runs to a comparison, with the real stages. */
class CompareCommandTest {

    private static final ScenarioText TEXT = FinanceText.everything();

    @TempDir
    private static Path runs;

    private static Path base;
    private static Path dear;

    @TempDir
    private Path folder;

    @BeforeAll
    static void planTwice() {
        base = planned("base", TEXT);
        // A pack that costs twice as much: the same purchases, other costs.
        dear = planned("dear", TEXT.replace("pack_types.csv", "2.5,300,", "2.5,600,"));
    }

    private static Path planned(String name, ScenarioText text) {
        Path run = runs.resolve(name);
        CommandRun done =
                CommandRun.of("plan", text.write(runs.resolve(name + "-tables")).toString(), "--out", run.toString());
        assertThat(done.status()).as(done.err()).isZero();
        return run;
    }

    @Test
    void writesTheSameRunsSideBySideInThreeForms() throws IOException {
        CommandRun done = compare(base, dear);

        assertThat(done.status()).as(done.err()).isZero();
        assertThat(done.out()).contains(base.toString(), dear.toString(), "Present cost", out().toString());
        try (var files = Files.list(out())) {
            assertThat(files.map(file -> file.getFileName().toString()))
                    .containsExactlyInAnyOrder("compare.csv", "compare.html", "compare.xlsx");
        }
        List<String> table = Files.readAllLines(out().resolve("compare.csv"));
        assertThat(table.get(0)).isEqualTo("part,what,unit,differs," + base + "," + dear);
        assertThat(table)
                .contains("results,Horizon,years,no,10,10", "risk,Depot days,a year,no,150,150")
                .contains("risk,Of these met,a year,no,150,150", "costs,Chargers,EUR,no," + twice(table, "Chargers"))
                .anyMatch(line -> line.startsWith("years,Year 0 (now),EUR,yes,"))
                .anyMatch(line -> line.startsWith("purchases,pack pack-500,pieces to buy,no,"));
    }

    /** The amount of a line twice, as it stands in both runs. */
    private static String twice(List<String> table, String what) {
        String line = table.stream()
                .filter(row -> row.startsWith("costs," + what + ","))
                .findFirst()
                .orElseThrow();
        String amount = line.substring(line.lastIndexOf(',') + 1);
        assertThat(Double.parseDouble(amount)).isPositive();
        return amount + "," + amount;
    }

    @Test
    void costsAreThoseOfTheRuns() throws IOException {
        compare(base, dear);
        List<String> table = Files.readAllLines(out().resolve("compare.csv"));

        // Packs are priced in proportion: in stock and in wear twice the cost.
        for (String kind : List.of("Packs bought", "Packs replaced as they wear")) {
            String[] cells = table.stream()
                    .filter(row -> row.startsWith("costs," + kind + ","))
                    .findFirst()
                    .orElseThrow()
                    .split(",", -1);
            assertThat(Double.parseDouble(cells[5]) - 2 * Double.parseDouble(cells[4]))
                    .as(kind)
                    .isBetween(-0.02, 0.02);
        }
    }

    @Test
    void thePageNeedsNothingFromElsewhereAndEscapesNames() throws IOException {
        Path odd = Files.createDirectory(folder.resolve("a<b>&'c"));
        try (var files = Files.list(dear)) {
            for (Path file : files.toList()) {
                Files.copy(file, odd.resolve(file.getFileName()));
            }
        }
        assertThat(compare(base, odd).status()).isZero();

        assertThat(Files.readString(out().resolve("compare.html")))
                .contains("Plans side by side", "a&lt;b&gt;&amp;", "Costs added up over the years")
                .doesNotContain("a<b>")
                .doesNotContain("http:")
                .doesNotContain("https:")
                .doesNotContain("<script");
    }

    @Test
    void theWorkbookReckonsTheDifferences() throws IOException {
        compare(base, dear);
        byte[] bytes = Files.readAllBytes(out().resolve("compare.xlsx"));
        try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(bytes))) {
            workbook.getCreationHelper().createFormulaEvaluator().evaluateAll();
            for (Row row : workbook.getSheet("costs")) {
                if (row.getCell(4) != null && row.getRowNum() > 2) {
                    assertThat(row.getCell(4).getNumericCellValue())
                            .isEqualTo(row.getCell(3).getNumericCellValue()
                                    - row.getCell(2).getNumericCellValue());
                }
            }
            assertThat(workbook.getNumberOfSheets()).isEqualTo(5);
            assertThat(workbook.getSheet("costs").getLastRowNum()).isGreaterThan(5);
        }
    }

    /** By hand: a pack costs 300 and a duo 200, or 250 a pack when three or more are bought in one phase. */
    @Test
    void phasesStandSideBySideWithWhatEachSpendsAndBuys() throws IOException {
        String tiers = "item,from_count,price\npack-500,3,250\n";
        Path small =
                planned("small", TwoDepots.inPhases("first,0,1000", "second,2,").table("price_tiers.csv", tiers));
        Path large =
                planned("large", TwoDepots.inPhases("first,0,4000", "second,2,").table("price_tiers.csv", tiers));

        CommandRun done = compare(small, large);

        assertThat(done.status()).as(done.err()).isZero();
        assertThat(done.out()).contains("To pay when the first phase begins", "Present cost  ");
        List<String> table = Files.readAllLines(out().resolve("compare.csv"));
        assertThat(table)
                .contains(
                        "phases,first: begins after,years,no,0,0",
                        "phases,first: budget,EUR,yes,1000,4000",
                        "phases,second: begins after,years,no,2,2",
                        "phases,second: budget,EUR,no,no limit,no limit",
                        "phases,second: crews on petrol,crews,no,0,0")
                .anyMatch(line -> line.startsWith("purchases_by_phase,first: pack pack-500,pieces to buy,yes,"))
                .anyMatch(line -> line.startsWith("costs,Spare pieces less quantity reductions,EUR,"));
        for (int run = 0; run < 2; run++) {
            double first = cell(table, "phases,first: spent,EUR", run);
            double second = cell(table, "phases,second: spent,EUR", run);
            assertThat(cell(table, "results,To pay when the first phase begins,EUR", run))
                    .isEqualTo(first);
            assertThat(first).isLessThanOrEqualTo(run == 0 ? 1000 : 4000);
            double packs = cell(table, "purchases_by_phase,first: pack pack-500,pieces to buy", run);
            double duos = cell(table, "purchases_by_phase,first: charger duo,pieces to buy", run);
            assertThat(first).isEqualTo(packs * (packs >= 3 ? 250 : 300) + duos * 200);
            assertThat(second).isNotNegative();
            assertThat(cell(table, "costs,All,EUR", run)).isEqualTo(cell(table, "results,Present cost,EUR", run));
        }
        byte[] bytes = Files.readAllBytes(out().resolve("compare.xlsx"));
        try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(bytes))) {
            workbook.getCreationHelper().createFormulaEvaluator().evaluateAll();
            assertThat(workbook.getSheet("phases").getLastRowNum()).isGreaterThan(10);
            assertThat(workbook.getSheet("purchases_by_phase")).isNotNull();
        }
        assertThat(out().resolve("compare.html")).content().contains("Phase by phase", "What is bought when");
    }

    private static double cell(List<String> table, String beginning, int run) {
        String line = table.stream()
                .filter(row -> row.startsWith(beginning + ","))
                .findFirst()
                .orElseThrow();
        String[] cells = line.split(",", -1);
        return Double.parseDouble(cells[cells.length - 2 + run]);
    }

    @Test
    void theSameRunsGiveTheSameBytes() throws IOException {
        compare(base, dear);
        List<byte[]> first = contents();
        // The folder is there already, and is replaced.
        assertThat(compare(base, dear).status()).isZero();
        List<byte[]> second = contents();

        for (int file = 0; file < first.size(); file++) {
            assertThat(second.get(file)).isEqualTo(first.get(file));
        }
    }

    private List<byte[]> contents() throws IOException {
        return List.of(
                Files.readAllBytes(out().resolve("compare.csv")),
                Files.readAllBytes(out().resolve("compare.html")),
                Files.readAllBytes(out().resolve("compare.xlsx")));
    }

    @Test
    void otherCurrenciesAreRefusedAndNothingIsWritten() {
        Path foreign = planned("foreign", TEXT.replace("scenario.json", "EUR", "GBP"));
        CommandRun refused = compare(base, foreign);

        assertThat(refused.status()).isEqualTo(2);
        assertThat(refused.err()).contains("different currencies", "EUR in " + base, "GBP in " + foreign, "--mixed");
        assertThat(out()).doesNotExist();

        CommandRun mixed = compare(base, foreign, "--mixed", "--quiet");
        assertThat(mixed.status()).isZero();
        assertThat(mixed.err()).contains("Warning: The runs have different currencies");
        assertThat(out().resolve("compare.html")).content().contains("Compare with care", "different currencies");
    }

    @Test
    void otherHorizonsAreRefused() {
        Path longer = planned("longer", TEXT.replace("scenario.json", "years\": 10", "years\": 12"));
        CommandRun refused = compare(base, longer);

        assertThat(refused.status()).isEqualTo(2);
        assertThat(refused.err()).contains("different horizons", "10 years in " + base, "12 years in " + longer);
        assertThat(out()).doesNotExist();
        assertThat(compare(base, longer, "--mixed").status()).isZero();
        assertThat(out().resolve("compare.csv")).content().contains("beyond the horizon");
    }

    @Test
    void otherDiscountRatesAreOnlyWarnedOf() {
        Path cheaper = planned("cheaper", TEXT.replace("scenario.json", "rate\": 0.06", "rate\": 0.03"));
        CommandRun done = compare(base, cheaper);

        assertThat(done.status()).isZero();
        assertThat(done.err()).contains("Warning: The runs have different discount rates: 0.03 in " + cheaper);
    }

    @Test
    void whatIsWrongWithAnyRunIsToldAtOnce() throws IOException {
        Path broken = copied("broken");
        Files.writeString(
                broken.resolve("replay.csv"),
                Files.readString(broken.resolve("replay.csv")).replaceFirst(",150,", ",many,"));
        Path older = copied("older");
        Files.delete(older.resolve("finance.csv"));
        CommandRun done = compareAll(base, broken, older, folder.resolve("nowhere"));

        assertThat(done.status()).isEqualTo(2);
        assertThat(done.err())
                .contains("replay.csv, line 2, column days_per_year: \"many\" is not a number")
                .contains("There is no finance.csv in " + older, "plan it again")
                .contains("There is no file " + folder.resolve("nowhere").resolve("plan.json"))
                .contains("Hint: ")
                .doesNotContain("\tat ");
        assertThat(out()).doesNotExist();
    }

    @Test
    void aFolderWithOtherWorkIsLeftAlone() throws IOException {
        Files.createDirectories(out());
        Files.writeString(out().resolve("notes.txt"), "kept");
        CommandRun done = compare(base, dear);

        assertThat(done.status()).isEqualTo(1);
        assertThat(done.err()).contains("holds no run", "compare.csv");
        assertThat(out().resolve("notes.txt")).hasContent("kept");
        assertThat(Arrays.asList(out().toFile().list())).containsExactly("notes.txt");
    }

    private Path copied(String name) throws IOException {
        Path copy = Files.createDirectory(folder.resolve(name));
        try (var files = Files.list(dear)) {
            for (Path file : files.toList()) {
                Files.copy(file, copy.resolve(file.getFileName()));
            }
        }
        return copy;
    }

    private Path out() {
        return folder.resolve("comparison");
    }

    private CommandRun compare(Path first, Path second, String... options) {
        List<String> line = new ArrayList<>(List.of("compare", first.toString(), second.toString()));
        line.addAll(List.of("--out", out().toString()));
        line.addAll(List.of(options));
        return CommandRun.with(CommandRun.none(), line.toArray(new String[0]));
    }

    private CommandRun compareAll(Path... all) {
        List<String> line = new ArrayList<>(List.of("compare"));
        for (Path run : all) {
            line.add(run.toString());
        }
        line.addAll(List.of("--out", out().toString()));
        return CommandRun.with(CommandRun.none(), line.toArray(new String[0]));
    }
}
