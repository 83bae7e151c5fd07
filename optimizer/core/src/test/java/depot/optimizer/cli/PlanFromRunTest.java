package depot.optimizer.cli;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.fixture.ScenarioText;
import depot.optimizer.rerun.RerunText;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Reruns of the small example, with the real stages. Its page works out by hand what it needs: 8 packs, 2 quicks, 2 rows-of-four, and of these costs
 * only wear (1,600 over five years), energy (1,250) and the standing charge (730.50) go on once they are bought: 3,580.50.
 */
class PlanFromRunTest {

    private static final ScenarioText STARTER = RerunText.starter();

    @TempDir
    private static Path shared;

    private static Path earlier;

    @TempDir
    private Path folder;

    private RerunFrame rerun;

    @BeforeAll
    static void planOnce() {
        earlier = RerunFrame.plan(STARTER, shared);
    }

    @BeforeEach
    void chooseAFolder() {
        rerun = RerunFrame.in(folder);
    }

    @Test
    void nothingChangedGivesTheSamePlanToTheByte() throws IOException {
        CommandRun done = rerun(STARTER);

        assertThat(done.status()).as(done.err()).isZero();
        assertThat(rerun.run().resolve("plan.json")).hasSameBinaryContentAs(earlier.resolve("plan.json"));
        assertThat(done.out()).contains("nothing has changed", "1 depot as planned before", "To buy    nothing");
        assertThat(row("depot_changes.csv", "yard"))
                .startsWith("yard,kept,,3580.5,3580.5,0,0,0,0,")
                .endsWith(",EUR");
    }

    @Test
    void namesAndPlacesOnTheMapChangeNoPlan() throws IOException {
        CommandRun done = rerun(STARTER.replace("depots.csv", "The Yard", "Old Yard"));

        assertThat(done.out()).contains("depots.csv: 1 change", "1 depot as planned before");
        assertThat(row("input_changes.csv", "depots.csv"))
                .isEqualTo("depots.csv,depot yard,cell changed,name,The Yard,Old Yard");
    }

    /**
     * Without west five packs are on the road after lunch and come back to five of the ten bays: wear 5 / 5 a year (1,000), seven loads a day (875)
     * and the standing charge (730.50) are 2,605.50. Nothing is bought, three packs are left.
     */
    @Test
    void aCrewThatIsGoneLeavesPacksInStore() throws IOException {
        CommandRun done = rerun(RerunText.without(STARTER, "west", "crews.csv", "stops.csv", "work.csv"));

        assertThat(done.status()).as(done.err()).isZero();
        assertThat(row("depot_changes.csv", "yard"))
                .startsWith("yard,planned again,crews; routes and work,3580.5,2605.5,-975,0,");
        assertThat(row("equipment_changes.csv", "yard,pack,pack")).startsWith("yard,pack,pack,8,8,5,0,3,200,0,0,");
        assertThat(rows("store.csv")).contains("yard,,pack,3");
        assertThat(rows("input_changes.csv"))
                .contains("crews.csv,crew west,row removed,,\"depot yard, pack_places 6, payload_kg 30\",");
        assertSound();
    }

    /**
     * A crew like east needs three packs more: 11 on the road after lunch with two quicks, or 12 with one. Eleven bays or more beside two quicks do not
     * fit the two circuits, so that it is 12 packs, one quick and three rows: four packs (800) and one row (100) are bought. Wear 12 / 5 a year (2,400),
     * the row (100), thirteen loads a day (1,625) and the standing charge (730.50) are 4,855.50.
     */
    @Test
    void aNewCrewIsPlannedWithWhatIsThere() throws IOException {
        CommandRun done = rerun(withNorth());

        assertThat(done.status()).as(done.err()).isZero();
        assertThat(row("depot_changes.csv", "yard"))
                .startsWith("yard,planned again,crews; routes and work,3580.5,4855.5,1275,900,");
        assertThat(done.out()).contains("4 packs, 1 charger; 900.00 EUR at once", "+1,275.00 EUR over 5 years");
        assertThat(row("equipment_changes.csv", "yard,pack,pack")).startsWith("yard,pack,pack,8,8,12,4,0,200,0,800,");
        assertThat(row("equipment_changes.csv", "yard,charger,row-of-four"))
                .startsWith("yard,charger,row-of-four,2,2,3,1,0,100,0,100,");
        assertThat(row("pack_changes.csv", "yard,yard,north")).isEqualTo("yard,yard,north,pack,0,3");
        assertThat(rows("handover_changes.csv")).contains("yard,year Mon-Fri,crew takes packs,north,07:00,,3 pack");
        assertSound();
    }

    @Test
    void aRerunOfARerunCountsNothingTwiceAndTakesFromTheStore() throws IOException {
        CommandRun first = rerun(RerunText.without(STARTER, "west", "crews.csv", "stops.csv", "work.csv"));
        assertThat(first.status()).as(first.err()).isZero();
        Path before = rerun.run().resolve("plan.json");
        rerun = rerun.again("again");

        CommandRun done = rerun.from(before, STARTER);

        assertThat(done.status()).as(done.err()).isZero();
        assertThat(done.out()).contains("To buy    nothing");
        assertThat(row("depot_changes.csv", "yard"))
                .startsWith("yard,planned again,crews; routes and work,2605.5,3580.5,975,0,");
        assertThat(rows("store.csv")).hasSize(1);
        assertSound();
    }

    @Test
    void whatOwnedListsAlreadyIsNotCountedTwice() throws IOException {
        ScenarioText owning = STARTER.table("owned.csv", "depot,circuit,crew,item,count\nyard,,,pack,3\n");
        Path base = folder.resolve("owning");
        CommandRun first = CommandRun.of(
                "plan", owning.write(folder.resolve("owning-tables")).toString(), "--out", base.toString());
        assertThat(first.status()).as(first.err()).isZero();

        CommandRun done = rerun.from(base, owning.replace("work.csv", "east,2,trimmer,3", "east,2,trimmer,2.9"));

        assertThat(done.status()).as(done.err()).isZero();
        assertThat(row("equipment_changes.csv", "yard,pack,pack")).startsWith("yard,pack,pack,8,8,8,0,0,");
        assertThat(rows("purchases.csv")).contains("now,yard,pack,pack,8,3,5,200,0,1000,EUR");
        assertThat(done.err()).doesNotContain("owned.csv lists");
        assertSound();
    }

    @Test
    void piecesThatMayBeListedTwiceAreRemarkedOn() throws IOException {
        CommandRun done = rerun(STARTER.table("owned.csv", "depot,circuit,crew,item,count\nyard,,,pack,8\n"));

        assertThat(done.status()).as(done.err()).isZero();
        assertThat(done.err())
                .contains(
                        "owned.csv lists 8 more pack at yard than when the run was made, and the 8 pieces that runs bought");
        assertThat(row("equipment_changes.csv", "yard,pack,pack")).startsWith("yard,pack,pack,8,16,");
    }

    @Test
    void aWeightKeepsTheRoutineWhereItIsWorthIt() throws IOException {
        CommandRun done = rerun(withNorth(), "--keep-routine", "1000000");

        assertThat(done.status()).as(done.err()).isZero();
        String[] yard = row("depot_changes.csv", "yard").split(",", -1);
        int changed = Integer.parseInt(yard[7]) + Integer.parseInt(yard[8]);
        assertThat(changed).isLessThanOrEqualTo(Integer.parseInt(yard[9]));
        assertThat(done.out()).contains("%d instead of %s line".formatted(changed, yard[9]));
        assertSound();
    }

    @Test
    void replaySaysFirstWhereAnOldPlanNoLongerHolds() {
        CommandRun done = replay(withNorth());

        assertThat(done.status()).isEqualTo(5);
        assertThat(done.out().lines().toList())
                .element(1)
                .asString()
                .contains("Holds", "no: on these tables 1 of 1 depot cannot run as planned");
        assertThat(done.out()).contains("yard: 250 of 250 days a year fail", "trip (");
    }

    @Test
    void replaySaysThatAnOldPlanStillHolds() {
        CommandRun done = replay(STARTER.replace("work.csv", "east,2,trimmer,3", "east,2,trimmer,2.9"));

        assertThat(done.out()).contains("yes: on these tables every day still runs as planned");
        assertThat(replay(STARTER).out()).doesNotContain("Holds");
    }

    @Test
    void replaySaysWhereOnlyTheCostIsAnother() {
        CommandRun done = replay(STARTER.replace("pack_types.csv", ",200,", ",250,"));

        assertThat(done.out())
                .contains("yes: on these tables every day still runs as planned")
                .contains("in 1 depot the days run as planned at another cost: 4,420.50 EUR, planned 4,020.50");
    }

    private static ScenarioText withNorth() {
        return STARTER.rows("crews.csv", "north,yard,6,30,,")
                .rows(
                        "stops.csv",
                        "year,Mon-Fri,north,1,yard,,07:00,",
                        "year,Mon-Fri,north,2,North Lane,07:30,15:30,",
                        "year,Mon-Fri,north,3,yard,16:00,,")
                .rows("work.csv", "year,Mon-Fri,north,2,trimmer,3,");
    }

    private CommandRun rerun(ScenarioText tables, String... more) {
        return rerun.from(earlier, tables, more);
    }

    private CommandRun replay(ScenarioText tables) {
        return CommandRun.of("replay", tables.write(folder.resolve("tables")).toString(), earlier.toString());
    }

    private void assertSound() throws IOException {
        rerun.assertSoundOn(rerun.tables());
    }

    private List<String> rows(String table) throws IOException {
        return rerun.rows(table);
    }

    private String row(String table, String start) throws IOException {
        return rerun.row(table, start);
    }
}
