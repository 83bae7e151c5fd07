package depot.optimizer.cli;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.fixture.ScenarioText;
import depot.optimizer.fixture.TwoDepots;
import depot.optimizer.report.PlanJson;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Reruns of two depots in two phases. By hand: north's crew needs two packs and a charger (800), south's three packs and two chargers (1,300). Of a
 * first budget of 1,000 only north can be paid for; south follows in the second phase.
 */
class SharedRerunTest {

    private static final ScenarioText PHASES = TwoDepots.inPhases("first,0,1000", "second,2,");
    private static final ScenarioText MORE = moreWork(PHASES);

    @TempDir
    private static Path shared;

    private static Path earlier;

    @TempDir
    private Path folder;

    private RerunFrame rerun;

    @BeforeAll
    static void planOnce() {
        earlier = RerunFrame.plan(PHASES, shared);
    }

    @BeforeEach
    void chooseAFolder() {
        rerun = RerunFrame.in(folder);
    }

    /** South's crew works four hours in place of three: 1,600 Wh are four packs of 450 Wh. */
    private static ScenarioText moreWork(ScenarioText text) {
        return text.replace("work.csv", "crew-2,2,trimmer,3", "crew-2,2,trimmer,4");
    }

    @Test
    void nothingChangedGivesTheSamePlanToTheByte() throws IOException {
        CommandRun done = rerun.from(earlier, PHASES.replace("depots.csv", "North yard", "Old yard"));

        assertThat(done.status()).as(done.err()).isZero();
        assertThat(done.out())
                .contains("depots.csv: 1 change", "the earlier plan stays as it is", "2 depots as planned before")
                .contains("To buy    nothing", "as they were planned");
        String then = Files.readString(earlier.resolve("plan.json"));
        String now = Files.readString(rerun.run().resolve("plan.json"));
        assertThat(withoutHashes(now)).isEqualTo(withoutHashes(then));
        rerun.again("same").from(earlier, PHASES);
        assertThat(folder.resolve("same/plan.json")).hasSameBinaryContentAs(earlier.resolve("plan.json"));
        rerun.assertSoundOn(rerun.tables());
    }

    private static String withoutHashes(String json) {
        return json.replaceAll("\"[a-z_]+\\.(csv|json)\": \"[0-9a-f]{64}\"", "");
    }

    /** What north has is owned, what is left of the first budget is 200, and only what the second phase buys changes. */
    @Test
    void aChangeInALaterPhaseBuysNothingNow() throws IOException {
        CommandRun done = rerun.from(earlier, MORE);

        assertThat(done.status()).as(done.err()).isZero();
        assertThat(done.out()).contains("what the run bought up to first is owned", "To buy    nothing");
        assertThat(rerun.row("depot_changes.csv", "north"))
                .startsWith("north,kept,,")
                .contains(",0,0,0,0,");
        assertThat(rerun.row("depot_changes.csv", "south")).startsWith("south,planned again,routes and work,");
        assertThat(rerun.rows("fleet_changes.csv"))
                .containsExactly(
                        "phase,what,depot,subject,before,after", "second,bought in the phase,south,pack-500,3,4");
        assertThat(rerun.rows("there.csv"))
                .contains("north,pieces,,pack-500,2", "north,pieces,,duo,1")
                .hasSize(3);
        assertThat(rerun.rows("begun.csv")).contains("budget first,800");
        assertThat(rerun.row("rollout.csv", "first")).contains(",0,0,200,");
        assertThat(rerun.run().resolve("asked/phases.csv")).hasContent(PHASES.text("phases.csv"));
        assertThat(Files.readString(rerun.run().resolve("inputs/owned.csv"))).contains("north,,,pack-500,2");
        rerun.assertSound();
    }

    @Test
    void whereNothingIsSharedOnlyWhatIsTouchedIsPlanned() throws IOException {
        ScenarioText free = TwoDepots.inPhases("first,0,", "second,3,");
        Path run = RerunFrame.plan(free, folder);
        CommandRun done = rerun.from(run, moreWork(free));

        assertThat(done.status()).as(done.err()).isZero();
        assertThat(done.err()).contains("Planned 1 of 1 depots: south");
        assertThat(done.out()).contains("1 pack; 300.00 EUR at once");
        assertThat(rerun.row("depot_changes.csv", "north")).startsWith("north,kept,");
        assertThat(rerun.row("purchases.csv", "first,south,pack,pack-500")).contains(",4,3,1,300,");
        rerun.assertSound();
    }

    @Test
    void aRerunOfARerunCountsNothingTwice() throws IOException {
        assertThat(rerun.from(earlier, MORE).status()).isZero();
        RerunFrame same = rerun.again("same");
        RerunFrame back = rerun.again("back");
        RerunFrame own = rerun.again("own");

        assertThat(same.from(rerun.run(), MORE).status()).isZero();
        assertThat(same.run().resolve("plan.json"))
                .hasSameBinaryContentAs(rerun.run().resolve("plan.json"));
        CommandRun done = back.from(rerun.run(), PHASES);
        assertThat(done.status()).as(done.err()).isZero();
        assertThat(done.out()).contains("work.csv: 1 change");
        assertThat(back.rows("there.csv")).isEqualTo(rerun.rows("there.csv"));
        assertThat(back.rows("begun.csv")).isEqualTo(rerun.rows("begun.csv"));
        assertThat(back.rows("fleet_changes.csv")).contains("second,bought in the phase,south,pack-500,4,3");
        back.assertSound();
        // The run's own tables list what is there: nothing is added to them.
        assertThat(own.from(rerun.run(), rerun.run().resolve("inputs")).status())
                .isZero();
        assertThat(own.run().resolve("plan.json"))
                .hasSameBinaryContentAs(rerun.run().resolve("plan.json"));
    }

    /** A third pack and a second charger for north would be 500, and 200 are left: the crew waits for the second phase. */
    @Test
    void whatIsLeftOfABudgetIsAllThatCanBeSpent() throws IOException {
        CommandRun done = rerun.from(earlier, PHASES.replace("work.csv", "crew-1,2,trimmer,2", "crew-1,2,trimmer,3"));

        assertThat(done.status()).as(done.err()).isZero();
        assertThat(rerun.rows("fleet_changes.csv"))
                .contains("first,crew works,north,crew-1,\"from north, with packs\",on petrol")
                .anyMatch(row -> row.startsWith("second,bought in the phase,north,pack-500,,1"));
        assertThat(rerun.rows("store.csv")).hasSize(1);
        rerun.assertSound();
    }

    @Test
    void afterTheSecondPhaseAllIsThere() throws IOException {
        ScenarioText later = PHASES.table("phases.csv", "phase,year,budget\nthird,0,\n")
                .table("crew_phases.csv", "crew,earliest_phase,latest_phase\ncrew-1,third,\ncrew-2,third,\n");
        CommandRun done = rerun.from(earlier, later, "--carried-out", "second");

        assertThat(done.status()).as(done.err()).isZero();
        assertThat(done.out()).contains("what the run bought up to second is owned", "To buy    nothing");
        assertThat(rerun.rows("there.csv"))
                .contains("south,pieces,,pack-500,3", "south,pieces,,duo,2")
                .hasSize(5);
        assertThat(rerun.rows("begun.csv")).hasSize(1);
        assertThat(rerun.row("depot_changes.csv", "south")).startsWith("south,kept,");
        rerun.assertSound();
    }

    @Test
    void phasesThatArePastAreRefusedInTheTables() {
        CommandRun done = rerun.from(earlier, MORE, "--carried-out", "second");

        assertThat(done.status()).isEqualTo(2);
        assertThat(done.err())
                .contains("phases.csv: first, second of", "have been carried out, and planning begins with first");
        assertThat(rerun.run()).doesNotExist();
    }

    @Test
    void aPhaseThatTheRunDoesNotHaveIsRefused() {
        CommandRun done = rerun.from(earlier, MORE, "--carried-out", "third");

        assertThat(done.status()).isEqualTo(2);
        assertThat(done.err()).contains("has no phase \"third\"", "first, second");
    }

    @Test
    void aPhaseWithoutARunIsRefused() {
        CommandRun done = CommandRun.of(
                "plan", MORE.write(rerun.tables()).toString(), "--carried-out", "first", "--out", folder.toString());

        assertThat(done.status()).isEqualTo(2);
        assertThat(done.err()).contains("--carried-out names a phase of an earlier run, and none is given");
    }

    /** Budgets, a quantity price, deliveries, moves and another base: south's crew may work from north. */
    @Test
    void everythingSharedAtOnce() throws IOException {
        ScenarioText everything = TwoDepots.everything();
        Path run = RerunFrame.plan(everything, folder);
        CommandRun done = rerun.from(run, moreWork(everything));

        assertThat(done.status()).as(done.err()).isZero();
        assertThat(rerun.rows("begun.csv")).anyMatch(row -> row.startsWith("delivery first pack-500,"));
        rerun.assertSound();
        RerunFrame same = rerun.again("same");
        assertThat(same.from(run, everything).status()).isZero();
        assertThat(same.run().resolve("plan.json")).hasSameBinaryContentAs(run.resolve("plan.json"));
    }

    @Test
    void aRoutineIsKeptInTheFirstPhase() throws IOException {
        CommandRun done = rerun.from(
                earlier,
                PHASES.replace("work.csv", "crew-1,2,trimmer,2", "crew-1,2,trimmer,1.9"),
                "--keep-routine",
                "5");

        assertThat(done.status()).as(done.err()).isZero();
        assertThat(done.out()).contains("Weighed");
        rerun.assertSound();
    }

    /** South has no room for chargers, so that its crew works from north; its packs are its own and stay where it uses them. */
    @Test
    void whatAGuestHasStaysWhereItWorks() throws IOException {
        ScenarioText guest = TwoDepots.inPhases("first,0,", "second,2,")
                .replace("scenario.json", "\"pack_sharing\": \"depot\"", "\"pack_sharing\": \"crew\"")
                .replace("depots.csv", "south,South yard,flat,400,3,63,10", "south,South yard,flat,400,3,63,0")
                .replace("crew_phases.csv", "crew-2,first,", "crew-2,first,first")
                .table("crew_bases.csv", "crew,depot,cost_per_year\ncrew-2,north,40\n");
        Path run = RerunFrame.plan(guest, folder);
        CommandRun done = rerun.from(run, moreWork(guest));

        assertThat(done.status()).as(done.err()).isZero();
        assertThat(rerun.rows("there.csv")).contains("north,pieces,crew-2,pack-500,3");
        assertThat(done.out()).contains("1 pack; 300.00 EUR at once");
        assertThat(Files.readString(rerun.run().resolve("inputs/owned.csv"))).contains("north,,crew-2,pack-500,3");
        rerun.assertSound();
        RerunFrame same = rerun.again("same");
        assertThat(same.from(rerun.run(), moreWork(guest)).status()).isZero();
        assertThat(same.run().resolve("plan.json"))
                .hasSameBinaryContentAs(rerun.run().resolve("plan.json"));
    }

    /** North's circuit (150) and bigger supply (100) are built with its packs and charger (800). */
    @Test
    void whatWasBuiltIsThere() throws IOException {
        ScenarioText built = TwoDepots.inPhases("first,0,1200", "second,2,")
                .column("circuits.csv", "install_cost", "150")
                .replace(
                        "depots.csv",
                        "supply_amps,places",
                        "supply_amps,places,supply_upgrade_amps,supply_upgrade_cost")
                .replace("depots.csv", "400,3,63,10", "400,3,0.5,10,63,100");
        Path run = RerunFrame.plan(built, folder);
        CommandRun done = rerun.from(run, moreWork(built));

        assertThat(done.status()).as(done.err()).isZero();
        assertThat(rerun.rows("there.csv")).contains(",circuit,,north-1,1", "north,supply,,,1");
        assertThat(rerun.rows("begun.csv")).contains("budget first,1050");
        assertThat(rerun.row("equipment_changes.csv", "north,new circuit,north-1"))
                .startsWith("north,new circuit,north-1,1,1,1,0,0,0,0,0,");
        assertThat(rerun.row("depot_changes.csv", "north")).startsWith("north,kept,");
        rerun.assertSound();
        RerunFrame same = rerun.again("same");
        assertThat(same.from(rerun.run(), moreWork(built)).status()).isZero();
        assertThat(same.run().resolve("plan.json"))
                .hasSameBinaryContentAs(rerun.run().resolve("plan.json"));
    }

    @Test
    void aDepotMayCome() throws IOException {
        ScenarioText more = PHASES.rows("depots.csv", "west,West yard,flat,400,3,63,10")
                .rows("circuits.csv", "west-1,west,230,1,16,4")
                .rows("crews.csv", "crew-3,west,8,60,700")
                .rows("crew_phases.csv", "crew-3,second,")
                .rows(
                        "stops.csv",
                        "summer,Mon-Fri,crew-3,1,west,,07:00",
                        "summer,Mon-Fri,crew-3,2,park,08:00,15:00",
                        "summer,Mon-Fri,crew-3,3,west,16:00,")
                .rows("work.csv", "summer,Mon-Fri,crew-3,2,trimmer,2");
        CommandRun done = rerun.from(earlier, more);

        assertThat(done.status()).as(done.err()).isZero();
        assertThat(rerun.row("depot_changes.csv", "west")).startsWith("west,new,depot,0,");
        assertThat(rerun.row("depot_changes.csv", "north")).startsWith("north,kept,");
        assertThat(PlanJson.read(rerun.run().resolve("plan.json")).depots()).hasSize(6);
        rerun.assertSound();
    }

    @Test
    void replaySaysWhereAnOldPlanNoLongerHolds() {
        CommandRun work = replay(MORE);
        CommandRun budget = replay(PHASES.replace("phases.csv", "first,0,1000", "first,0,700"));
        CommandRun price = replay(PHASES.replace("pack_types.csv", ",300,", ",310,"));

        assertThat(work.status()).isEqualTo(5);
        assertThat(work.out()).contains("no: on these tables 1 of 2 depots cannot run as planned", "south in second:");
        assertThat(budget.status()).isEqualTo(5);
        assertThat(budget.out())
                .contains("every day still runs as planned, but together the depots break what they share")
                .contains("all depots together: the budget of first is 700, the plan spends 800");
        assertThat(price.out()).contains("yes: on these tables every day still runs as planned", "at another cost");
    }

    private CommandRun replay(ScenarioText tables) {
        return CommandRun.of("replay", tables.write(rerun.tables()).toString(), earlier.toString());
    }
}
