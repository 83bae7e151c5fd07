package depot.optimizer.fleet;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.fixture.Planned;
import depot.optimizer.fixture.ScenarioText;
import depot.optimizer.fleet.FleetPlanner.Method;
import depot.optimizer.report.PlanJson;
import depot.optimizer.report.RunWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a run says of crews that use other depots' bays. */
class VisitReportTest {

    @TempDir
    private Path folder;

    @Test
    void bothDepotsAreTold() throws Exception {
        FleetResult result = VisitsTest.plan(VisitsTest.pair(), Method.WHOLE);
        write(VisitsTest.pair(), result);

        assertThat(Files.readAllLines(folder.resolve("visits.csv")))
                .containsExactly(
                        "phase,depot,kind_of_day,season_days,crew,home_depot,load_time,collect_time,charger,circuit,"
                                + "pack_type,charge_to_percent,packs",
                        "now,north,1,summer Mon-Fri,crew-2,south,12:00,13:00,north-1-01,north-1,pack-500,100,1");
        assertThat(Files.readAllLines(folder.resolve("road_charges.csv")))
                .contains("now,south,1,summer Mon-Fri,crew-2,1,bay of another depot,3,4,12:00,13:00,,pack-500,1");
        assertThat(page("wall"))
                .anySatisfy(text -> assertThat(text).contains("1 x pack-500").contains("of the visiting crew-2"));
        assertThat(page("crew")).anySatisfy(text -> assertThat(text)
                .contains("plug 1 empty pack-500 in at 12:00 at another depot (north), collect them at 13:00, "
                        + "for use from stop 4"));
        assertThat(PlanJson.read(folder.resolve(PlanJson.FILE_NAME))).isEqualTo(result.plan());
    }

    @Test
    void whereNobodyVisitsThereIsNoTable() throws Exception {
        ScenarioText text = VisitsTest.withoutVisit(VisitsTest.pair());
        write(text, VisitsTest.plan(text, Method.WHOLE));

        assertThat(folder.resolve("visits.csv")).doesNotExist();
    }

    private void write(ScenarioText text, FleetResult result) throws Exception {
        RunWriter.write(folder, Planned.load(text), result.plan(), result.replay(), result.shortages());
    }

    /** The pages whose names hold a word. */
    private List<String> page(String word) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(file -> file.getFileName().toString().contains(word))
                    .map(VisitReportTest::text)
                    .toList();
        }
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException failure) {
            throw new java.io.UncheckedIOException(failure);
        }
    }
}
