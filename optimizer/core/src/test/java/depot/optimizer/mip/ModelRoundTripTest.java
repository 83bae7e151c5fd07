package depot.optimizer.mip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.google.ortools.modelbuilder.ModelBuilder;
import com.google.ortools.modelbuilder.ModelSolver;
import com.google.ortools.modelbuilder.SolveStatus;
import depot.optimizer.fixture.Glpsol;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What other programs understand of the exported texts. */
class ModelRoundTripTest {

    private static final Limits EXACT = new Limits(0, 100_000, 30, 1);
    private static final double CLOSE = 1e-6;
    private static final double OPTIMUM = 990.5;

    /**
     * By hand: with 3 x + y <= 10, y <= 2.5 and x whole, x = 3 and y = 1 gain 7; x = 2 and y = 2.5 only 6.5. The others sit on a bound each: low at
     * -4, gap at -1.5, above at 2, and whole, at least a half, at 1. 1000 - 7 - 4 - 1.5 + 2 + 1 = 990.5.
     */
    private static MipModel model() {
        MipModel model = new MipModel("round trip");
        model.scope("1st yard:");
        Var x = model.integer("x", 0, MipModel.INFINITY);
        Var y = model.continuous("y", 0, 2.5);
        Var low = model.continuous("low", -4, 3);
        Var gap = model.continuous("gap", -MipModel.INFINITY, -1);
        Var above = model.continuous("above", 2, MipModel.INFINITY);
        Var whole = model.binary("whole");
        model.integer("unused", 0, 0);
        model.continuous("idle", -MipModel.INFINITY, MipModel.INFINITY);
        model.atMost("room", new Expr().add(3, x).add(1, y), 10);
        model.atLeast("floor", new Expr().add(1, gap), -1.5);
        model.atLeast("half", new Expr().add(1, whole), 0.5);
        model.equal("tied", new Expr().add(1, above).add(-1, above).add(1, low), -4);
        model.atMost("nothing", new Expr().add(1, x), MipModel.INFINITY);
        model.cost(1000);
        model.cost(-2, x);
        model.cost(
                1, new Expr().add(-1, y).add(1, low).add(1, gap).add(1, above).add(1, whole));
        return model;
    }

    @Test
    void theEngineFindsTheOptimum() {
        assertThat(Engine.BRANCH_AND_CUT.solve(model(), EXACT).objective()).isCloseTo(OPTIMUM, within(CLOSE));
    }

    @ParameterizedTest
    @EnumSource
    void glpsolFindsItInTheText(ModelFormat format, @TempDir Path folder) throws IOException, InterruptedException {
        assumeTrue(Glpsol.installed(), "glpsol is not installed");
        Path file = Files.writeString(folder.resolve("model"), format.write(model()));

        assertThat(Glpsol.optimum(file, format)).isCloseTo(OPTIMUM, within(CLOSE));
    }

    @Test
    void theSolverLibraryFindsItInTheMps() {
        NativeSolver.version();
        ModelBuilder builder = new ModelBuilder();
        assertThat(builder.importFromMpsString(ModelFormat.MPS.write(model()))).isTrue();
        ModelSolver solver = new ModelSolver("scip");

        assertThat(solver.solve(builder)).isEqualTo(SolveStatus.OPTIMAL);
        assertThat(solver.getObjectiveValue()).isCloseTo(OPTIMUM, within(CLOSE));
        assertThat(builder.getHelper().numVariables()).isEqualTo(model().variableCount() + 1);
    }
}
