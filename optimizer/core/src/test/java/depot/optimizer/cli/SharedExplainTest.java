package depot.optimizer.cli;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.fixture.DescribedTables;
import depot.optimizer.fixture.ScenarioText;
import depot.optimizer.fixture.TwoDepots;
import depot.optimizer.plan.Plan;
import depot.optimizer.report.PlanJson;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Questions about plans of two depots in phases, or that share something. By hand: a crew that stays on petrol for ten years at five per cent pays 7.7217
 * times its yearly cost (from an interest table), 900 in north and 700 in south: 6,949.56 and 5,405.21.
 */
class SharedExplainTest {

    @TempDir
    private Path folder;

    /** With a charger of one bay, so that there are other ways to charge. */
    private static ScenarioText withSolo(ScenarioText text) {
        return text.rows("charger_types.csv", "solo,1,1,500,0.9,1,no,130,10")
                .rows("charge_times.csv", "solo,pack-500,48,70");
    }

    /** Nothing is shared, so that both gaps are 0 and differences are exact; without packs, or without a charger, the crew stays on petrol. */
    @Test
    void eachPhaseIsAskedWhatItBuysAndWhetherLaterWouldDo() throws IOException {
        explain(TwoDepots.inPhases("first,0,", "second,3,"));

        List<String> why = rows("why.csv");
        assertThat(why).hasSize(5);
        assertThat(why)
                .anyMatch(row -> row.startsWith("first,north,pack,pack-500,,2,2,packs on the road at once,2,2,"));
        assertThat(why).allMatch(row -> row.startsWith("phase,") || row.startsWith("first,"));
        assertThat(rows("next_best.csv"))
                .anyMatch(row -> row.startsWith("north,fewer packs,met,1474.09,6949.56,5475.48,"))
                .anyMatch(row -> row.startsWith("south,fewer packs,met,2311.13,5405.21,3094.09,"));
        // Three years of petrol come before what is bought then: more than now, and less than petrol for good.
        assertThat(why)
                .anyMatch(row -> row.contains(",met,5475.48,5475.48,5475.48,costs")
                        || row.contains("\"costs 5,475.48 more\",met,1937.52,1937.52,1937.52,"));
        assertThat(rows("shared_limits.csv")).hasSize(1);
        assertThat(DescribedTables.faults(answers())).isEmpty();
    }

    /** 800 of 1,000 are spent. The answers are spans, and the plan behind each is one of the whole fleet. */
    @Test
    void budgetsHaveAPriceAndDifferencesASpan() throws IOException {
        CommandRun done = explain(withSolo(TwoDepots.inPhases("first,0,1000", "second,2,")), "--within", "99%");

        assertThat(done.out())
                .contains("answers hold the other depots as they are", "budget first: 800 of 1,000 used")
                .contains("without 3 packs pack-500 in second:");
        String[] budget = rows("shared_limits.csv").get(1).split(",", -1);
        assertThat(budget).startsWith("budget first", "1000", "800", "200");
        assertThat(Double.parseDouble(budget[4])).isPositive();
        for (String row : rows("next_best.csv").subList(1, rows("next_best.csv").size())) {
            String[] cells = row.split(",", -1);
            assertThat(Double.parseDouble(cells[5]))
                    .as(row)
                    .isBetween(Double.parseDouble(cells[7]), Double.parseDouble(cells[8]));
        }
        assertThat(answers().resolve("explain.html"))
                .content()
                .contains("What the depots share", "Bought in a later phase", "a frontier of budgets")
                .doesNotContain("http://", "https://");
        assertEveryPlanIsProven();
    }

    /**
     * By hand: 2 h x 400 W are two packs and one spare, 3 h are three and one spare; a bay for each is two chargers in both depots: 1,300 and 1,600,
     * both in the first phase, against a budget of 1,000.
     */
    @Test
    void rulesOfThumbConvertCrewsAtOnceAndBreakTheBudget() throws IOException {
        CommandRun done = explain(TwoDepots.inPhases("first,0,1000", "second,2,"), "--ask", "thumb");

        assertThat(done.status()).isZero();
        assertThat(rows("rules_of_thumb.csv"))
                .anyMatch(row -> row.startsWith("north,") && row.contains(",800,1300,300,300,yes,"))
                .anyMatch(row -> row.startsWith("south,") && row.contains(",0,1600,300,300,yes,"));
        assertThat(rows("rules_of_thumb_broken.csv"))
                .contains("fleet,shared limit,0,\"the budget of first is 1000, the plan spends 2900\"");
        CommandRun replay = CommandRun.of(
                "replay", tables(), answers().resolve("rules-of-thumb.json").toString());
        assertThat(replay.status()).isEqualTo(ExitStatus.REPLAY_FAILED.code());
        assertThat(replay.out()).contains("the budget of first is 1000, the plan spends 2900");
    }

    /** The crew may change in the second phase only: until then it is on petrol by rules of thumb as well. */
    @Test
    void rulesOfThumbWaitForCrewsThatMayNotChangeYet() throws IOException {
        explain(
                TwoDepots.inPhases("first,0,", "second,3,").replace("crew_phases.csv", "crew-2,first", "crew-2,second"),
                "--ask",
                "thumb");

        assertThat(rows("rules_of_thumb.csv"))
                .anyMatch(row -> row.startsWith("south,") && row.contains(",0,0,150,150,yes,"));
        assertThat(CommandRun.of(
                                "replay",
                                tables(),
                                answers().resolve("rules-of-thumb.json").toString())
                        .status())
                .isZero();
    }

    @Test
    void everythingSharedAtOnce() throws IOException {
        CommandRun done = explain(withSolo(TwoDepots.everything()), "--within", "99%");

        assertThat(done.status()).as(done.err()).isZero();
        assertThat(rows("shared_limits.csv"))
                .anyMatch(row -> row.startsWith("delivery first pack-500,5,"))
                .anyMatch(row -> row.startsWith("budget second,2000,"));
        assertThat(rows("why.csv")).noneMatch(row -> row.contains("replay failed"));
        assertThat(DescribedTables.faults(answers())).isEmpty();
        assertEveryPlanIsProven();
    }

    /** Packs of a visiting crew are settled between two depots: each is solved again with what the other gives or counts on. */
    @Test
    void visitsAreHeldAsTheyAre() throws IOException {
        ScenarioText visits = TwoDepots.free()
                .replace("stops.csv", "summer,Mon-Fri,crew-1,2,park,08:00,15:00", """
                        summer,Mon-Fri,crew-1,2,park,08:00,11:00
                        summer,Mon-Fri,crew-1,3,south,11:30,13:00
                        summer,Mon-Fri,crew-1,4,lane,13:15,15:30""")
                .replace("stops.csv", "crew-1,3,north,16:00,", "crew-1,5,north,16:00,")
                .rows("work.csv", "summer,Mon-Fri,crew-1,4,trimmer,2");
        CommandRun done =
                explain(withSolo(visits), "--within", "99%", "--ask", "why", "--ask", "next", "--ask", "thumb");

        assertThat(done.status()).as(done.err()).isZero();
        assertThat(rows("why.csv")).hasSizeGreaterThan(2).noneMatch(row -> row.contains("replay failed"));
        assertEveryPlanIsProven();
    }

    /** 2,100 is what both depots would spend; a hundredth of 2,090 pays for what is missing. The same whatever the threads. */
    @Test
    void aPlanMadeAsOneModelIsPlannedAnewForWhatRoomIsWorth() throws IOException {
        ScenarioText text = TwoDepots.inPhases("first,0,2090");
        String scenario = text.write(folder.resolve("planned")).toString();
        Path plan = folder.resolve("plan");
        assertThat(CommandRun.of("plan", scenario, "--method", "whole", "--out", plan.toString())
                        .status())
                .isZero();

        CommandRun asked = ask(plan, "--ask", "worth");

        assertThat(asked.status()).as(asked.err()).isZero();
        assertThat(asked.out())
                .contains("what room is worth is that of the fleet planned anew")
                .contains("budget first: 800 of 2,090 used; 21 EUR more: saves 3,094.09");
        assertThat(rows("shared_limits.csv").get(1)).startsWith("budget first,2090,800,1290,,21,3094.09,");
        assertThat(rows("worth.csv")).hasSizeGreaterThan(8).noneMatch(row -> row.contains("no plan"));
        assertThat(answers().resolve("explain.html")).content().contains("planned anew as one model");
        assertThat(DescribedTables.faults(answers())).isEmpty();
        List<String> worth = rows("worth.csv");
        assertThat(ask(plan, "--ask", "worth", "--threads", "2").status()).isZero();
        assertThat(rows("worth.csv")).isEqualTo(worth);

        CommandRun why = ask(plan, "--ask", "why");
        assertThat(why.status()).as(why.err()).isZero();
        assertThat(rows("shared_limits.csv").get(1)).startsWith("budget first,2090,800,1290,,,,,,not asked");
    }

    /** Such as one that another question led to: nobody knows whether the fleet is small enough for one model. */
    @Test
    void aPlanPutTogetherOfOthersIsNotAskedWhatRoomIsWorth() throws IOException {
        Path run = RerunFrame.plan(TwoDepots.inPhases("first,0,2090"), folder);
        Plan plan = PlanJson.read(run.resolve(PlanJson.FILE_NAME));
        Path assembled = folder.resolve("assembled.json");
        Files.writeString(assembled, PlanJson.write(plan.with(plan.certificate(), plan.fleetCosts(), plan.depots())));

        CommandRun refused = ask(assembled);
        CommandRun taken = ask(assembled, "--ask", "why");

        assertThat(refused.status()).isEqualTo(ExitStatus.BAD_INPUT.code());
        assertThat(refused.err()).contains("has no prices of what the depots share", "--ask next", "plan again");
        assertThat(taken.status()).as(taken.err()).isZero();
    }

    private void assertEveryPlanIsProven() throws IOException {
        try (Stream<Path> files = Files.list(answers())) {
            List<Path> plans = files.filter(
                            file -> file.getFileName().toString().startsWith("next-best-"))
                    .toList();
            assertThat(plans).isNotEmpty();
            for (Path plan : plans) {
                CommandRun replay = CommandRun.of("replay", tables(), plan.toString());
                assertThat(replay.status()).as(plan + "\n" + replay.out()).isZero();
            }
        }
    }

    private CommandRun explain(ScenarioText text, String... more) {
        CommandRun done = ask(RerunFrame.plan(text, folder), more);
        assertThat(done.status()).as(done.err()).isZero();
        return done;
    }

    private CommandRun ask(Path plan, String... more) {
        return CommandRun.with(
                CommandRun.none(),
                Stream.concat(
                                Stream.of(
                                        "explain",
                                        tables(),
                                        plan.toString(),
                                        "--out",
                                        answers().toString()),
                                Stream.of(more))
                        .toArray(String[]::new));
    }

    private String tables() {
        return folder.resolve("planned").toString();
    }

    private Path answers() {
        return folder.resolve("answers");
    }

    private List<String> rows(String table) throws IOException {
        return Files.readAllLines(answers().resolve(table));
    }
}
