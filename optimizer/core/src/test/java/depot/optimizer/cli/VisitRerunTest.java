package depot.optimizer.cli;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.fixture.ScenarioText;
import depot.optimizer.fixture.VisitingCrew;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Reruns of two depots of which north charges a pack for south's crew at noon, every day. By hand: crews are back at 16:00, when their packs are loaded;
 * where energy is cheaper in the evening they are loaded at 19:00.
 */
class VisitRerunTest {

    private static final ScenarioText STAFFED = VisitingCrew.staffed();

    @TempDir
    private static Path shared;

    private static Path earlier;

    @TempDir
    private Path folder;

    private RerunFrame rerun;

    @BeforeAll
    static void planOnce() {
        earlier = RerunFrame.plan(STAFFED, shared);
    }

    @BeforeEach
    void chooseAFolder() {
        rerun = RerunFrame.in(folder);
    }

    private static ScenarioText prices(String... rows) {
        return STAFFED.table("tariffs.csv", "tariff,days,from,to,price_per_kwh\n")
                .rows("tariffs.csv", rows);
    }

    /** Cheap but for the afternoon: the visit stays, and the depots' own packs wait for the evening. */
    private static ScenarioText dearAfternoon() {
        return prices(
                "flat,Mon-Sun,00:00,15:00,0.10", "flat,Mon-Sun,15:00,18:00,0.30", "flat,Mon-Sun,18:00,24:00,0.10");
    }

    /** Cheap in the evening only, so that a third pack for south costs less than charging at noon. */
    private static ScenarioText cheapEvening() {
        return prices("flat,Mon-Sun,00:00,18:00,0.30", "flat,Mon-Sun,18:00,24:00,0.10");
    }

    private void plan(ScenarioText tables, String weight) {
        CommandRun done = rerun.from(earlier, tables, "--keep-routine", weight);
        assertThat(done.status()).as(done.err()).isZero();
    }

    private List<String> changes(String what) throws IOException {
        return rerun.rows("handover_changes.csv").stream()
                .filter(row -> row.contains(what))
                .toList();
    }

    private void assertVisits() throws IOException {
        assertThat(rerun.rows("visits.csv"))
                .hasSize(2)
                .last()
                .asString()
                .startsWith("now,north,")
                .contains(",crew-2,south,12:00,13:00,", ",pack-500,100,1");
    }

    @Test
    void nothingChangedGivesTheSamePlanToTheByte() throws IOException {
        plan(STAFFED, "5");

        assertThat(rerun.run().resolve("plan.json")).hasSameBinaryContentAs(earlier.resolve("plan.json"));
        assertVisits();
        rerun.assertSoundOn(rerun.tables());
    }

    @Test
    void aNewCrewLeavesBaysAndPacksOfTheOthers() throws IOException {
        ScenarioText more = STAFFED.rows("crews.csv", "crew-3,north,8,60")
                .rows(
                        "stops.csv",
                        "summer,Mon-Fri,crew-3,1,north,,07:00",
                        "summer,Mon-Fri,crew-3,2,wood,08:00,15:00",
                        "summer,Mon-Fri,crew-3,3,north,16:00,")
                .rows("work.csv", "summer,Mon-Fri,crew-3,2,trimmer,2");
        plan(more, "100000");

        assertThat(rerun.row("depot_changes.csv", "south")).startsWith("south,kept,");
        assertThat(changes("crew takes packs")).singleElement().asString().contains(",crew-3,");
        assertThat(changes("crew-2")).isEmpty();
        assertVisits();
        rerun.assertSound();
    }

    @Test
    void aVisitThatStaysIsKeptWhateverTheWeight() throws IOException {
        plan(dearAfternoon(), "0.01");
        assertThat(changes("north-1-01,16:00")).isNotEmpty();
        assertThat(changes("12:00")).isEmpty();
        assertThat(rerun.rows("fleet_changes.csv")).noneMatch(row -> row.contains("packs charged on visits"));
        assertVisits();
        rerun.assertSound();

        RerunFrame heavy = rerun.again("heavy");
        assertThat(heavy.from(earlier, dearAfternoon(), "--keep-routine", "1000")
                        .status())
                .isZero();
        assertThat(heavy.rows("handover_changes.csv")).hasSize(1);
        assertThat(cost(heavy)).isGreaterThan(cost(rerun));
        heavy.assertSound();
    }

    /** What each depot by itself could not do: north charges at noon again, and south counts on it again. */
    @Test
    void aHomeAndItsHostGoBackToTheirVisitTogether() throws IOException {
        plan(cheapEvening(), "0.01");
        assertThat(rerun.rows("fleet_changes.csv"))
                .anyMatch(row -> row.startsWith("now,packs charged on visits,north,") && row.endsWith(",5,"));
        assertThat(rerun.run().resolve("visits.csv")).doesNotExist();
        rerun.assertSound();

        RerunFrame heavy = rerun.again("heavy");
        CommandRun done = heavy.from(earlier, cheapEvening(), "--keep-routine", "1000");
        assertThat(done.out()).contains("Weighed   0 instead of 35 lines of the routine");
        assertThat(heavy.rows("handover_changes.csv")).hasSize(1);
        assertThat(heavy.rows("visits.csv")).hasSize(2);
        assertThat(cost(heavy)).isGreaterThan(cost(rerun));
        heavy.assertSound();
    }

    private static double cost(RerunFrame run) throws IOException {
        return run.rows("depot_changes.csv").stream()
                .skip(1)
                .map(row -> row.replaceAll("\"[^\"]*\"", "").split(",", -1)[4])
                .mapToDouble(Double::parseDouble)
                .sum();
    }
}
