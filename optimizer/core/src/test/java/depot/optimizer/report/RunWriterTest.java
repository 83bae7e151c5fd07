package depot.optimizer.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import depot.optimizer.fixture.DescribedTables;
import depot.optimizer.plan.PackStock;
import depot.optimizer.plan.Plan;
import depot.optimizer.replay.FleetReplay;
import depot.optimizer.scenario.Scenario;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RunWriterTest {

    private static final Scenario SCENARIO = ScenarioFixture.hostile();
    private static final Plan PLAN = PlanFixture.of(SCENARIO);

    private static final Path GUIDE = Path.of("..", "..", "outputs", "README.md");

    @TempDir
    private Path outputs;

    @Test
    void writesTheTables() throws IOException {
        Path run = write("run");

        assertThat(lines(run, "purchases.csv"))
                .containsExactly(
                        "phase,depot,kind,item,needed_pieces,owned_pieces,bought_pieces,unit_price,install_cost_per_piece,"
                                + "purchase_total,currency",
                        "now,yard,pack,B10,14,2,12,420,0,5040,EUR",
                        "now,yard,pack,B5,4,0,4,139.9,0,559.6,EUR",
                        "now,yard,charger,four-bay,3,1,2,390,25,830,EUR",
                        "now,yard,portable charger,travel,1,0,1,120,0,120,EUR",
                        "now,yard,load-sharing unit,unit-16,1,0,1,650,180,830,EUR",
                        "now,yard,power bank,bank-2k,1,0,1,1490,0,1490,EUR",
                        "now,yard,new circuit,annexe,1,0,1,450,0,450,EUR",
                        "now,hill,pack,B10,6,0,6,420,0,2520,EUR",
                        "now,hill,charger,four-bay,1,0,1,390,25,415,EUR");
        assertThat(lines(run, "placement.csv"))
                .contains(
                        "now,yard,wall,load-sharing unit,1,charger,wall-01,four-bay,,yes,no,500,2.29",
                        "now,yard,annexe,circuit,1,power bank,,bank-2k,park-1,,,600,2.75");
        assertThat(lines(run, "schedule.csv"))
                .contains(
                        "now,yard,1,summer Mon-Fri,150,15:45,06:45 +1,945,1845,bench-01,bench,1,four-bay,2,B5,yard,100,1");
        assertThat(lines(run, "packs.csv"))
                .contains(
                        "now,yard,yard,,B10,14,2,12,11,3,2.5,",
                        "now,yard,yard,park-1,B10,,,,,,,6",
                        "now,hill,hill,'=cmd|' /C calc'!A0,B10,,,,,,,4");
        assertThat(lines(run, "trips.csv")).contains("now,yard,1,summer Mon-Fri,park-1,2,12:40,15:55,B10,1,2");
        assertThat(lines(run, "shortages.csv").get(1))
                .isEqualTo("now,hill,summer,Fri,'=cmd|' /C calc'!A0,1,bar,212.4,30,610.25,The vehicle holds 6 packs,"
                        + "Hold 7 packs in the vehicle,-320.5,EUR");
    }

    /** By hand: 500 W / (230 V x 0.95) = 2.288 A, 600 W 2.746 A; the supply's base load 4 A + 2 A x 230 V / (400 V x root 3). */
    @Test
    void writesTheCircuitSchedule() throws IOException {
        assertThat(lines(write("run"), "circuit_schedule.csv"))
                .containsExactly(
                        "phase,depot,circuit,work_wanted,volts,phases,breaker_amps,continuous_factor,usable_amps,"
                                + "other_loads_amps,plate_amps,diversity_factor,load_sharing_unit,unit_setting_amps,"
                                + "unit_setting_beside_other_loads_amps,counted_amps,margin_amps,outlets_used,outlets,"
                                + "plug_limit_amps,greatest_replay_amps,greatest_replay_limit_amps,"
                                + "greatest_replay_time,greatest_replay_days",
                        "now,yard,bench,existing,230,1,16,0.8,12.8,2,2.29,1,,,,2.29,8.51,1,4,10,2.2,10.8,15:45,summer Mon-Fri",
                        "now,yard,wall,existing,230,1,16,0.8,12.8,0,4.58,1,unit-16,10,10,4.58,8.22,2,4,10,3.98,10,00:00 +1,"
                                + "summer Mon-Fri",
                        "now,yard,annexe,new circuit,230,1,16,0.8,12.8,0,2.75,1,,,,2.75,10.05,1,4,10,,,,",
                        "now,yard,supply,existing,400,3,40,0.8,32,4.66,3.19,1,,,,3.19,24.15,4,,,,,,",
                        "now,hill,shed,existing,230,1,16,0.8,12.8,0,2.29,1,,,,2.29,10.51,1,4,10,2.2,12.8,14:45,summer Fri",
                        "now,hill,supply,existing,230,1,32,0.8,25.6,0,2.29,1,,,,2.29,23.31,1,,,,,,");
    }

    @Test
    void writesDaysDrawnAtRandomWhereTheyWereAskedFor() throws IOException {
        assertThat(write("without").resolve("trials.csv")).doesNotExist();
        Path run = outputs.resolve("run");
        RunWriter.write(
                run,
                SCENARIO,
                PLAN,
                ReplayFixture.of(PLAN),
                List.of(),
                RunExtras.NONE,
                Optional.of(PlanFixture.trials()));

        // Wilson's interval of 190 in 200 and of 380 in 400 at 95 %: recomputed from its formula.
        assertThat(lines(run, "trials.csv"))
                .containsExactly(
                        "depot,season,drawn_days,met_days,met_percent,lower_percent,upper_percent,seed",
                        ",,400,380,95,92.404,96.74,7",
                        ",summer,400,380,95,92.404,96.74,7",
                        "yard,,200,190,95,91.042,97.262,7",
                        "yard,summer,200,190,95,91.042,97.262,7",
                        "hill,,200,190,95,91.042,97.262,7",
                        "hill,summer,200,190,95,91.042,97.262,7");
        assertThat(DescribedTables.faults(run)).isEmpty();
        assertThat(Files.readString(GUIDE)).contains("| trials.csv |");
    }

    @Test
    void writesTheSameBytesAgain() throws IOException {
        Path first = write("first");
        Path second = write("second");

        try (var files = Files.list(first)) {
            assertThat(files).isNotEmpty().allSatisfy(file -> assertThat(second.resolve(file.getFileName()))
                    .hasSameBinaryContentAs(file));
        }
    }

    @Test
    void writesWhatTheReplayFound() throws IOException {
        Path run = write("run");

        assertThat(lines(run, "replay.csv").get(2))
                .isEqualTo(
                        "now,yard,2,winter Sat,18,failed,0,84.6,park-2,1,2,bar,,wall-02,39.8,wall,1.68,0.3192,1.3745,EUR,0.3,1");
        assertThat(lines(run, "circuit_load.csv"))
                .contains("now,yard,1,summer Mon-Fri,wall,00:00 +1,3.982,10,39.8,6.018");
        assertThat(lines(run, "load_timing.csv"))
                .contains("now,yard,1,summer Mon-Fri,wall-02,wall,16:00,06:00 +1,06:45 +1,45,4")
                .contains("now,yard,2,winter Sat,wall-02,wall,16:00,never,06:45 +1,,4");
        assertThat(lines(run, "violations.csv").get(1))
                .isEqualTo("now,yard,2,winter Sat,late,wall-02,06:45 +1,3,4,"
                        + "3 of 4 packs are full when wall-02 is collected at 06:45 +1");
    }

    @Test
    void writesCostsThatAddUpToThePlans() throws IOException {
        BigDecimal sum = lines(write("run"), "costs.csv").stream()
                .skip(1)
                .map(line ->
                        new BigDecimal(line.substring(0, line.lastIndexOf(',')).replaceAll(".*,", "")))
                .reduce(BigDecimal.ZERO, BigDecimal::add);

        assertThat(sum).isEqualByComparingTo("12000");
    }

    @Test
    void writesYearlyFlows() throws IOException {
        Path run = write("run");
        List<String> yearly = lines(run, "cash_flow.csv");

        assertThat(yearly.get(0))
                .startsWith("year,purchases,fleet_purchases,installation,replacements,")
                .contains(",petrol_saved,");
        assertThat(yearly).hasSize(1 + 1 + SCENARIO.horizonYears());
        // By hand from the purchases above: pieces without their installation, and 3 x 25 + 180 + 450 for that.
        assertThat(yearly.get(1)).startsWith("0,-11549.6,0,-705,0,0,0,");
        assertThat(lines(run, "finance.csv"))
                .contains("figure,value,unit,remark", "horizon,8,years,", "discount_rate,0.05,per year,");
        assertThat(run.resolve("workbook.xlsx")).isNotEmptyFile();
    }

    @Test
    void writesAPlanThatBreaksRulesToo() throws IOException {
        Path run = outputs.resolve("run");
        RunWriter.write(run, SCENARIO, PLAN, FleetReplay.run(SCENARIO, PLAN), List.of());

        assertThat(lines(run, "violations.csv")).hasSizeGreaterThan(1);
        assertThat(run.resolve("report.html")).isNotEmptyFile();
    }

    @Test
    void saysWhichNameTheScenarioLacks() {
        PackStock unknown = new PackStock("yard", "B99", 1, 0, 0.1);
        Plan foreign = PlanFixture.withPacks(PLAN, List.of(unknown));

        assertThatThrownBy(() ->
                        RunWriter.write(outputs.resolve("run"), SCENARIO, foreign, ReplayFixture.of(PLAN), List.of()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("pack type 'B99'")
                .hasMessageContaining("Maybe the tables changed");
        assertThat(outputs).isEmptyDirectory();
    }

    private Path write(String name) throws IOException {
        Path run = outputs.resolve(name);
        RunWriter.write(run, SCENARIO, PLAN, ReplayFixture.of(PLAN), PlanFixture.shortages(SCENARIO));
        return run;
    }

    private static List<String> lines(Path run, String file) throws IOException {
        return Files.readString(run.resolve(file)).lines().toList();
    }
}
