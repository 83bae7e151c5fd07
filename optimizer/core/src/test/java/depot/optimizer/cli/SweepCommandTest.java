package depot.optimizer.cli;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.fixture.ScenarioText;
import depot.optimizer.fixture.TwoDepots;
import depot.optimizer.fleet.SmallFleet;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The sweep command with the real stages. */
class SweepCommandTest {

    private static final Path STARTER = Path.of("..", "..", "inputs", "starter");

    private static final String SWEEP = """
            {
              "name": "small",
              "tornado": {"ranges": [{"change": "item_price", "of": "pack-500", "low": 0.5, "high": 1.5}]},
              "lines": [{"name": "=health", "change": "pack_health", "values": [0.8, 1]}],
              "cases": [{"name": "kept", "purchases": "kept", "changes": [{"change": "work_hours", "value": 1.3}]}],
              "losses": {"late_minutes": 30}
            }
            """;

    @TempDir
    private Path folder;

    private Path scenario;
    private Path sweep;
    private Path run;

    @BeforeEach
    void write() {
        scenario = SmallFleet.lunch().write(folder.resolve("lunch"));
        sweep = scenario.resolve("sweep.json");
        run = folder.resolve("outputs/small");
        write(SWEEP.replace("=health", "health"));
    }

    private void write(String text) {
        try {
            Files.writeString(sweep, text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private CommandRun sweep(Path out, String... more) {
        String[] arguments = {"sweep", scenario.toString(), sweep.toString(), "--out", out.toString()};
        return CommandRun.with(
                CommandRun.none(),
                Stream.concat(List.of(arguments).stream(), List.of(more).stream())
                        .toArray(String[]::new));
    }

    private static List<String> names(Path folder) throws IOException {
        try (var files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    private static void assertSameFiles(Path one, Path other) throws IOException {
        assertThat(names(one)).isEqualTo(names(other));
        for (String name : names(one)) {
            assertThat(one.resolve(name)).as(name).hasSameBinaryContentAs(other.resolve(name));
        }
    }

    @Test
    void tablesAndPageAreWrittenAndNoDraftIsLeft() throws IOException {
        CommandRun done = sweep(run);

        assertThat(done.status()).as(done.err()).isZero();
        assertThat(names(run))
                .containsExactly("line-health.csv", "losses.csv", "sweep.csv", "sweep.html", "tornado.csv");
        assertThat(names(run.getParent())).containsExactly("small");
        assertThat(Files.readAllLines(run.resolve("sweep.csv"))).hasSizeGreaterThanOrEqualTo(7);
        assertThat(run.resolve("sweep.html")).content().contains("<svg", "Price of pack-500: × 0.5 to × 1.5");
        assertThat(done.err()).contains("Planned 1 of 1", "left: base plan, north");
        assertThat(done.out()).contains("small: 6 variations", "Price of pack-500 × 1.5", "sweep.html");
    }

    @Test
    void theSameSweepGivesTheSameBytesWhateverTheThreads() throws IOException {
        sweep(run, "--threads", "1");
        sweep(folder.resolve("outputs/again"), "--threads", "3");

        assertSameFiles(run, folder.resolve("outputs/again"));
    }

    @Test
    void anInterruptedSweepGoesOnAndEndsWithTheSameBytes() throws IOException {
        sweep(run);
        Path again = folder.resolve("outputs/again");
        // What a killed sweep leaves behind: some plans, one of them cut short, and half a file.
        Path draft = Files.createDirectories(folder.resolve("outputs/.again.cases"));
        write(
                "{\"name\": \"small\", \"lines\": [{\"name\": \"health\", \"change\": \"pack_health\", \"values\": [0.8, 1]}]}");
        keepDraftOf(again, draft);
        write(SWEEP.replace("=health", "health"));
        Files.writeString(draft.resolve(".half"), "{");
        long kept = names(draft).stream().filter(name -> name.endsWith(".json")).count();

        CommandRun done = sweep(again);

        assertThat(kept).isPositive();
        assertThat(done.err()).contains("Going on from an interrupted sweep: " + kept + " plan");
        assertSameFiles(run, again);
        assertThat(draft).doesNotExist();
    }

    /** Runs a part of the sweep and saves its draft before it is removed, by making the folder of the sweep unwritable. */
    private void keepDraftOf(Path target, Path draft) throws IOException {
        Files.createDirectories(target.getParent());
        Path blocked = Files.createDirectories(target.resolveSibling(".again.lock"));
        CommandRun failed = sweep(target);
        assertThat(failed.status()).isEqualTo(ExitStatus.OTHER.code());
        assertThat(target).doesNotExist();
        Files.delete(blocked);
        List<String> plans =
                names(draft).stream().filter(name -> name.endsWith(".json")).toList();
        assertThat(plans).hasSizeGreaterThan(1);
        Files.writeString(draft.resolve(plans.get(0)), "{\"formatVersion\": 1");
    }

    @Test
    void aSweepReplacesASweepAndNothingElse() throws IOException {
        sweep(run);
        write("{\"name\": \"small\", \"losses\": {\"late_minutes\": 30}}");

        assertThat(sweep(run).status()).isZero();
        assertThat(names(run)).containsExactly("losses.csv", "sweep.csv", "sweep.html");

        Path other = Files.createDirectories(folder.resolve("outputs/other"));
        Files.writeString(other.resolve("letter.txt"), "dear");
        CommandRun refused = sweep(other);
        assertThat(refused.status()).isEqualTo(ExitStatus.OTHER.code());
        assertThat(refused.err()).contains("is left alone");
        assertThat(names(other)).containsExactly("letter.txt");
    }

    @Test
    void badSweepsAreToldWithTheirPlaceAndNothingIsWritten() {
        write(SWEEP);
        CommandRun done = sweep(run);

        assertThat(done.status()).isEqualTo(ExitStatus.BAD_INPUT.code());
        assertThat(done.err())
                .contains(sweep + ":4:lines[0].name: error: not a key [=health]; hint: ", "1 error in " + sweep);
        assertThat(done.out()).isEmpty();
        assertThat(folder.resolve("outputs")).doesNotExist();
    }

    @Test
    void aBasePlanWithShortagesIsNoProvenOne() {
        scenario = ScenarioText.tiny()
                .replace("crews.csv", "crew-1,north,8,60", "crew-1,north,1,60")
                .setting("shortage_cost_per_kwh", "10")
                .write(folder.resolve("short"));
        write(
                "{\"name\": \"small\", \"cases\": [{\"name\": \"c\", \"changes\": [{\"change\": \"horizon\", \"value\": 12}]}]}");

        assertThat(sweep(run).status()).isEqualTo(ExitStatus.SHORTAGES.code());
    }

    @Test
    void aFrontierOfDepotsThatShareABudgetIsWrittenAlikeWhateverTheThreads() throws IOException {
        scenario = TwoDepots.inPhases("first,0,1000", "second,2,").write(folder.resolve("shared"));
        write("""
                {"name": "money",
                 "frontiers": [{"name": "first year", "change": "budget", "of": "first", "values": [0, 1000, 1500]}],
                 "cases": [{"name": "kept", "purchases": "kept", "changes": [{"change": "item_price", "value": 0.9}]}]}
                """);

        CommandRun done = sweep(run, "--threads", "1");
        sweep(folder.resolve("outputs/again"), "--threads", "3");

        assertThat(done.status()).as(done.err()).isZero();
        assertThat(names(run)).containsExactly("frontier-first_year.csv", "sweep.csv", "sweep.html");
        assertThat(Files.readAllLines(run.resolve("frontier-first_year.csv")))
                .hasSize(4)
                .first()
                .asString()
                .contains("spent in first,spent in second,least_value,plan_of,bound_of");
        assertThat(run.resolve("sweep.html")).content().contains("first year: least cost along a budget");
        assertThat(done.out()).contains("money: 4 variations", "first year 1500");
        assertSameFiles(run, folder.resolve("outputs/again"));
    }

    @Test
    void aBudgetThatIsTooSmallIsAnAnswerOnAFrontierAndNoPlanElsewhere() {
        scenario = TwoDepots.free().write(folder.resolve("shared"));
        write("""
                {"name": "money", "frontiers": [{"name": "cash", "change": "budget", "values": [1500, 3000]}]}
                """);
        CommandRun frontier = sweep(run);

        assertThat(frontier.status()).as(frontier.err()).isZero();
        assertThat(frontier.out()).contains("cash 1500: no plan; no plan does with less than 2,100.00");
        assertThat(run.resolve("frontier-cash.csv"))
                .content()
                .contains(
                        "1500,EUR,,,,,,2100,,,\"no plan: budget now is 1500 EUR, and no plan does with less than 2100\"");

        write("""
                {"name": "money", "cases": [{"name": "c", "changes": [{"change": "budget", "value": 1500}]}]}
                """);
        assertThat(sweep(run).status()).isEqualTo(ExitStatus.NO_PLAN.code());
    }

    @Test
    void theSweepOfTheStarterRuns() {
        CommandRun done = CommandRun.with(
                CommandRun.none(),
                "sweep",
                STARTER.toString(),
                STARTER.resolve("sweep.json").toString(),
                "--out",
                run.toString(),
                "--quiet");

        assertThat(done.status()).as(done.err()).isZero();
        assertThat(done.out()).contains("Base      4,020.50 EUR; gap 0 %", "the base plan bears 1 of 6");
        assertThat(run.resolve("grid-packs_and_chargers.csv")).exists();
    }
}
