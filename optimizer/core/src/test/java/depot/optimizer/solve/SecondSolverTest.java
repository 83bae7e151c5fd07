package depot.optimizer.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import depot.optimizer.fixture.Planned;
import depot.optimizer.fixture.TinyScenarios;
import depot.optimizer.mip.Engine;
import depot.optimizer.mip.Limits;
import depot.optimizer.mip.MipModel;
import depot.optimizer.mip.ModelFormat;
import depot.optimizer.mip.Outcome;
import depot.optimizer.scenario.Scenario;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The whole model of a tiny depot has the same optimum for every solver, and the plan costs just that. */
class SecondSolverTest {

    private static final Limits EXACT = new Limits(0, 1_000_000, 60, 1);

    /** Relative. */
    private static final double SAME_COST = 1e-6;

    private static final int SEEDS = 20;
    private static final int SECONDS = 20;
    private static final double POINT = 1e-5;

    private static Outcome solve(Engine engine, Scenario scenario) {
        MipModel model = ModelExport.model(scenario);
        Outcome outcome = engine.solve(model, EXACT);
        assertThat(outcome.stop()).isEqualTo(Outcome.Stop.GAP_REACHED);
        assertThat(model.violations(outcome.point(), POINT)).isEmpty();
        return outcome;
    }

    @Test
    void aSecondBranchAndCutFindsTheSameOptimum() {
        for (long seed = 1; seed <= SEEDS; seed++) {
            Scenario scenario = TinyScenarios.random(seed);
            double first = solve(Engine.BRANCH_AND_CUT, scenario).objective();

            assertThat(solve(Engine.SECOND_BRANCH_AND_CUT, scenario).objective())
                    .as("seed %d", seed)
                    .isCloseTo(first, within(SAME_COST * first));
        }
    }

    @Test
    void thePlansCostLinesAddUpToTheModelsOptimum() {
        for (long seed = 1; seed <= 2 * SEEDS; seed++) {
            Scenario scenario = TinyScenarios.random(seed);
            double optimum = solve(Engine.BRANCH_AND_CUT, scenario).objective();

            assertThat(Planned.of(scenario).cost()).as("seed %d", seed).isCloseTo(optimum, within(SAME_COST * optimum));
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void anotherProgramReadsTheExportedModelAndAgrees(long seed, @TempDir Path folder)
            throws IOException, InterruptedException {
        assumeTrue(onPath("glpsol"), "glpsol is not installed");
        Scenario scenario = TinyScenarios.random(seed);
        Path file = folder.resolve("model.mps");
        Path report = folder.resolve("report.txt");
        ModelExport.write(scenario, file, ModelFormat.MPS);
        Process process = new ProcessBuilder(
                        "glpsol", "--freemps", file.toString(), "--cuts", "-o", report.toString())
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("log.txt").toFile())
                .start();
        boolean done = process.waitFor(SECONDS, TimeUnit.SECONDS);
        process.destroyForcibly();
        assumeTrue(done, "glpsol is too slow for this model");
        double optimum = solve(Engine.BRANCH_AND_CUT, scenario).objective();

        assertThat(objective(Files.readString(report))).isCloseTo(optimum, within(SAME_COST * optimum));
    }

    private static boolean onPath(String program) {
        return Arrays.stream(System.getenv("PATH").split(java.io.File.pathSeparator))
                .anyMatch(folder -> Files.isExecutable(Path.of(folder, program)));
    }

    private static double objective(String report) {
        assertThat(report).contains("INTEGER OPTIMAL");
        Matcher line = Pattern.compile("Objective: .*? = (\\S+)").matcher(report);
        assertThat(line.find()).isTrue();
        return Double.parseDouble(line.group(1));
    }
}
