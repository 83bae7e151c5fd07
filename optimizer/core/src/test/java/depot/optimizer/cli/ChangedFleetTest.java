package depot.optimizer.cli;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.fixture.FinanceText;
import depot.optimizer.fixture.ScenarioText;
import depot.optimizer.fleet.SmallFleet;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.report.PlanJson;
import depot.optimizer.rerun.RerunText;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Crews, depots, routes and circuits that come, go and change: reruns of two small depots that are alike, north and south. */
class ChangedFleetTest {

    /** North owns a pack; each depot has to build its only circuit. */
    private static final ScenarioText BEFORE = SmallFleet.twice(FinanceText.everything());

    private static final String[] OF_CREWS = {"crews.csv", "stops.csv", "work.csv"};

    @TempDir
    private static Path shared;

    private static Path earlier;

    @TempDir
    private Path folder;

    private RerunFrame rerun;
    private Path run;

    @BeforeAll
    static void planOnce() {
        earlier = RerunFrame.plan(BEFORE, shared);
    }

    @BeforeEach
    void chooseAFolder() {
        rerun = RerunFrame.in(folder);
        run = rerun.run();
    }

    @Test
    void aNewCrewTouchesItsDepotOnly() throws IOException {
        rerun(BEFORE.rows("crews.csv", "squad-2,south,8,60,900")
                .rows(
                        "stops.csv",
                        "summer,Mon-Fri,squad-2,1,south,,07:00",
                        "summer,Mon-Fri,squad-2,2,park,08:00,15:00",
                        "summer,Mon-Fri,squad-2,3,south,16:00,")
                .rows("work.csv", "summer,Mon-Fri,squad-2,2,trimmer,2"));

        assertThat(status("north")).isEqualTo("kept");
        assertThat(depot(run, "north")).isEqualTo(depot(earlier, "north"));
        assertThat(status("south")).isEqualTo("planned again");
        assertThat(row("equipment_changes.csv", "south,new circuit,south-1"))
                .startsWith("south,new circuit,south-1,1,1,1,0,0,");
        assertThat(depot(run, "south").circuitsBuilt()).containsExactly("south-1");
    }

    @Test
    void aDepotWithoutCrewsKeepsItsEquipmentInStore() throws IOException {
        rerun(RerunText.without(BEFORE, "squad-1", OF_CREWS));

        assertThat(status("south")).isEqualTo("planned again");
        assertThat(depot(run, "south").packs()).isEmpty();
        assertThat(rows("store.csv")).anyMatch(row -> row.startsWith("south,,pack-500,"));
        assertThat(row("equipment_changes.csv", "south,charger,duo")).startsWith("south,charger,duo,1,1,0,0,1,");
    }

    @Test
    void moreWorkBuysTheDifference() throws IOException {
        rerun(BEFORE.replace("work.csv", "squad-1,2,trimmer,2", "squad-1,2,trimmer,4"));

        assertThat(status("north")).isEqualTo("kept");
        String[] packs = row("equipment_changes.csv", "south,pack,pack-500").split(",", -1);
        int before = Integer.parseInt(packs[3]);
        int now = Integer.parseInt(packs[5]);
        // 4 h at 400 W twice the energy: twice the packs of 450 Wh, at the same quantile without spread.
        assertThat(now).isGreaterThan(before);
        assertThat(packs[6]).isEqualTo(Integer.toString(now - before));
        assertThat(row("depot_changes.csv", "south")).contains(",routes and work,");
    }

    @Test
    void aNewDepotIsPlannedFromNothing() throws IOException {
        ScenarioText more = BEFORE;
        for (String file : List.of("depots.csv", "circuits.csv", "crews.csv", "stops.csv", "work.csv")) {
            more = more.rows(
                    file,
                    BEFORE.text(file)
                            .lines()
                            .filter(line -> line.contains("south") || line.contains("squad"))
                            .map(line -> line.replace("south", "east").replace("squad", "team"))
                            .toArray(String[]::new));
        }
        rerun(more);

        assertThat(status("north")).isEqualTo("kept");
        assertThat(status("south")).isEqualTo("kept");
        assertThat(row("depot_changes.csv", "east")).startsWith("east,new,depot,0,");
        assertThat(depot(run, "east").packs())
                .extracting(stock -> stock.count() - stock.owned())
                .isEqualTo(depot(earlier, "south").packs().stream()
                        .map(stock -> stock.count() - stock.owned())
                        .toList());
        CommandRun old = CommandRun.of("replay", folder.resolve("tables").toString(), earlier.toString());
        assertThat(old.status()).isEqualTo(5);
        assertThat(old.out())
                .contains("no: on these tables 1 of 3 depots", "east: has work, and the plan does not know it");
    }

    @Test
    void aDepotThatIsGoneLeavesAllItHad() throws IOException {
        ScenarioText fewer = RerunText.without(BEFORE, "squad-1", OF_CREWS);
        rerun(RerunText.without(fewer, "south", "depots.csv", "circuits.csv"));

        assertThat(status("north")).isEqualTo("kept");
        assertThat(status("south")).isEqualTo("gone");
        assertThat(PlanJson.read(run.resolve("plan.json")).depots())
                .extracting(DepotPlan::depot)
                .containsExactly("north");
        assertThat(rows("store.csv")).anyMatch(row -> row.startsWith("south,,duo,"));
        CommandRun old = CommandRun.of("replay", folder.resolve("tables").toString(), earlier.toString());
        assertThat(old.out()).contains("south: is no longer in the tables");
    }

    @Test
    void aCircuitThatIsEnteredAsBuiltIsNotBuiltAgain() throws IOException {
        rerun(BEFORE.replace("circuits.csv", "south-1,south,230,1,16,4,150", "south-1,south,230,1,16,4,0"));

        assertThat(status("north")).isEqualTo("kept");
        assertThat(row("depot_changes.csv", "south"))
                .startsWith("south,planned again,circuits and site,")
                .contains(",0,0,");
        assertThat(depot(run, "south").circuitsBuilt()).isEmpty();
        assertThat(rows("equipment_changes.csv")).noneMatch(row -> row.startsWith("south,new circuit"));
    }

    @Test
    void aCircuitThatIsReplacedMovesItsChargers() throws IOException {
        rerun(BEFORE.replace("circuits.csv", "south-1,south,230,1,16,4,150", "south-9,south,230,1,16,4,80"));

        assertThat(rows("place_changes.csv")).contains("south,duo,1,south-1,south-9");
        assertThat(row("equipment_changes.csv", "south,new circuit"))
                .startsWith("south,new circuit,south-9,0,0,1,1,0,80,0,80,");
        assertThat(row("equipment_changes.csv", "south,charger,duo")).startsWith("south,charger,duo,1,1,1,0,");
    }

    @Test
    void aNewPriceTouchesEveryDepot() throws IOException {
        rerun(BEFORE.replace("tariffs.csv", "0.30", "0.40"));

        assertThat(status("north")).isEqualTo("planned again");
        assertThat(status("south")).isEqualTo("planned again");
        assertThat(row("depot_changes.csv", "south")).contains("prices, base loads and seasons");
        assertThat(depot(run, "south").chargers())
                .isEqualTo(depot(earlier, "south").chargers());
    }

    private void rerun(ScenarioText tables) throws IOException {
        CommandRun done = rerun.from(earlier, tables);
        assertThat(done.status()).as(done.err()).isZero();
        rerun.assertSoundOn(rerun.tables());
    }

    private static DepotPlan depot(Path run, String id) throws IOException {
        return PlanJson.read(run.resolve("plan.json")).depots().stream()
                .filter(plan -> plan.depot().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private String status(String depot) throws IOException {
        return row("depot_changes.csv", depot + ",").split(",", -1)[1];
    }

    private List<String> rows(String table) throws IOException {
        return rerun.rows(table);
    }

    private String row(String table, String start) throws IOException {
        return rerun.row(table, start);
    }
}
