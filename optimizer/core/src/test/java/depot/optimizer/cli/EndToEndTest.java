package depot.optimizer.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import depot.optimizer.fixture.DescribedTables;
import depot.optimizer.plan.Plan;
import depot.optimizer.report.PlanJson;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From tables to a proven plan and back, with the real stages. */
class EndToEndTest {

    private static final Path STARTER = Path.of("..", "..", "inputs", "starter");

    /** Worked out by hand on the scenario's own page. */
    private static final double STARTER_COST = 4020.50;

    private static final double CENT = 0.005;

    @TempDir
    private Path folder;

    @Test
    void planOfTheStarterCostsWhatTheHandCalculationSaysAndIsProven() throws Exception {
        CommandRun run = plan("first");
        assertThat(run.status()).as(run.err()).isEqualTo(ExitStatus.PROVEN.code());
        Plan plan = PlanJson.read(folder.resolve("first").resolve("plan.json"));
        assertThat(plan.certificate().cost()).isCloseTo(STARTER_COST, within(CENT));
        assertThat(plan.certificate().bound())
                .isLessThanOrEqualTo(plan.certificate().cost());
        assertThat(plan.certificate().proven()).isTrue();
    }

    @Test
    void theCostIsOneFigureEverywhere() throws IOException {
        CommandRun run = plan("first");
        assertThat(run.out()).contains("4,020.50 EUR over 5 years");
        assertThat(folder.resolve("first").resolve("report.html")).content().contains(">EUR 4,020.50<");
        assertThat(folder.resolve("first").resolve("depot-yard.html")).content().contains(">EUR 4,020.50<");
        assertThat(folder.resolve("first").resolve("finance.csv")).content().contains("present_cost,4020.5,");
    }

    @Test
    void daysDrawnAtRandomAreInTheReportAndTheSameEachTime() throws IOException {
        CommandRun first = plan("first", "--trials", "50");
        CommandRun second = plan("second", "--trials", "50", "--quiet");
        assertThat(first.out()).contains("Days drawn at random: 50 for each depot, seed 1", "of 50");
        assertThat(folder.resolve("first").resolve("trials.csv"))
                .content()
                .contains("depot,season,drawn_days,met_days", "yard,,50,")
                .isEqualTo(Files.readString(folder.resolve("second").resolve("trials.csv")));
        assertThat(folder.resolve("first").resolve("report.html")).content().contains("Met of days drawn at random");
        assertThat(second.status()).isZero();
        plan("second");
        assertThat(folder.resolve("second").resolve("trials.csv")).doesNotExist();
    }

    @Test
    void noTrialsAtAllAreRefused() {
        CommandRun run = plan("first", "--trials", "0");
        assertThat(run.status()).isEqualTo(ExitStatus.BAD_INPUT.code());
        assertThat(run.err()).contains("--trials");
        assertThat(folder.resolve("first")).doesNotExist();
    }

    @Test
    void sameInputGivesTheSameBytesInEveryFile() throws IOException {
        plan("first");
        plan("second");
        Path first = folder.resolve("first");
        try (var files = Files.walk(first)) {
            List<Path> names =
                    files.filter(Files::isRegularFile).map(first::relativize).toList();
            assertThat(names).hasSizeGreaterThan(10);
            for (Path name : names) {
                assertThat(folder.resolve("second").resolve(name)).hasSameBinaryContentAs(first.resolve(name));
            }
        }
    }

    @Test
    void aRunKeepsTheTablesThatItWasMadeFrom() throws IOException {
        plan("first");
        Path inputs = folder.resolve("first").resolve("inputs");
        for (String file : PlanJson.read(folder.resolve("first").resolve("plan.json"))
                .inputHashes()
                .keySet()) {
            assertThat(inputs.resolve(file)).hasSameBinaryContentAs(STARTER.resolve(file));
        }
        assertThat(inputs.resolve("stops.csv")).exists();
    }

    @Test
    void everyTableOfARunIsAsTablesJsonDescribesIt() throws IOException {
        plan("first");
        assertThat(DescribedTables.faults(folder.resolve("first"))).isEmpty();
    }

    @Test
    void withoutPetrolNothingIsSaidAgainstIt() {
        plan("first");
        assertThat(folder.resolve("first").resolve("finance.csv"))
                .content()
                .contains("present_cost,4020.5,EUR,", "yearly_cost,804.1,EUR/year,")
                .contains("payback,,years,nothing is known of what petrol would cost")
                .contains("internal_rate_of_return,,per year,nothing is known of what petrol would cost");
    }

    @Test
    void aWrittenPlanIsProvenAgainByReplay() {
        plan("first");
        CommandRun replay = CommandRun.of(
                "replay",
                STARTER.toString(),
                folder.resolve("first").resolve("plan.json").toString());
        assertThat(replay.status()).as(replay.err()).isEqualTo(ExitStatus.PROVEN.code());
    }

    @Test
    void aFleetThatCannotMeetItsDaysEndsWithAShortageThatIsExplained() throws IOException {
        Path scenario = folder.resolve("scenario");
        Files.createDirectories(scenario);
        try (var files = Files.list(STARTER)) {
            for (Path file : files.toList()) {
                Files.copy(file, scenario.resolve(file.getFileName()));
            }
        }
        Path crews = scenario.resolve("crews.csv");
        List<String> lines = Files.readAllLines(crews);
        int places = List.of(lines.get(0).split(",", -1)).indexOf("pack_places");
        String[] first = lines.get(1).split(",", -1);
        first[places] = "1";
        Files.write(crews, List.of(lines.get(0), String.join(",", first), lines.get(2), lines.get(3)));

        CommandRun run = CommandRun.of(
                "plan", scenario.toString(), "--out", folder.resolve("short").toString());

        assertThat(run.status()).as(run.err()).isEqualTo(ExitStatus.SHORTAGES.code());
        assertThat(folder.resolve("short").resolve("shortages.csv"))
                .content()
                .contains("pack places")
                .contains("more");
        assertThat(DescribedTables.faults(folder.resolve("short"))).isEmpty();
    }

    @Test
    void theModelIsWrittenInBothFormats() {
        Path mps = folder.resolve("model.mps");
        Path lp = folder.resolve("model.lp");
        assertThat(CommandRun.of("export", STARTER.toString(), "--out", mps.toString())
                        .status())
                .isZero();
        assertThat(CommandRun.of("export", STARTER.toString(), "--format", "lp", "--out", lp.toString())
                        .status())
                .isZero();
        assertThat(mps).content().contains("ROWS").contains("COLUMNS");
        assertThat(lp).content().contains("Minimize");
    }

    private CommandRun plan(String name, String... more) {
        String[] arguments = {
            "plan", STARTER.toString(), "--out", folder.resolve(name).toString()
        };
        return CommandRun.of(
                Stream.concat(Stream.of(arguments), Stream.of(more)).toArray(String[]::new));
    }
}
