package depot.optimizer.mip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Engines on small programs with known answers. */
class KnownProgramsTest {

    private static final Limits EXACT = new Limits(0, 100_000, 60, 1);
    private static final double CLOSE = 1e-6;

    // Martello & Toth, Knapsack Problems (1990) (seen, recomputed): 107 with items 1 and 4.
    private static MipModel knapsack() {
        int[] profits = {70, 20, 39, 37, 7, 5, 10};
        int[] weights = {31, 10, 20, 19, 4, 3, 6};
        MipModel model = new MipModel("knapsack");
        Expr weight = new Expr();
        for (int i = 0; i < profits.length; i++) {
            Var taken = model.binary("x" + i);
            model.cost(-profits[i], taken);
            weight.add(weights[i], taken);
        }
        model.atMost("capacity", weight, 50);
        return model;
    }

    @ParameterizedTest
    @EnumSource(names = {"BRANCH_AND_CUT", "SECOND_BRANCH_AND_CUT"})
    void bothBranchAndCutsFindTheKnapsackOptimum(Engine engine) {
        Outcome outcome = engine.solve(knapsack(), EXACT);

        assertThat(outcome.stop()).isEqualTo(Outcome.Stop.GAP_REACHED);
        assertThat(outcome.objective()).isCloseTo(-107, within(CLOSE));
        assertThat(outcome.bound()).isCloseTo(-107, within(CLOSE));
        assertThat(knapsack().violations(outcome.point(), CLOSE)).isEmpty();
        assertThat(knapsack().objectiveAt(outcome.point())).isCloseTo(-107, within(CLOSE));
    }

    // Dantzig's rule (recomputed): items 1 and 2 whole, 9/20 of item 3.
    @ParameterizedTest
    @EnumSource(names = {"SIMPLEX", "SECOND_SIMPLEX"})
    void theRelaxationFillsTheKnapsackToTheBrim(Engine simplex) {
        assertThat(simplex.solve(knapsack(), EXACT).objective()).isCloseTo(-(70 + 20 + 39 * 0.45), within(CLOSE));
    }

    @ParameterizedTest
    @EnumSource(names = {"SIMPLEX", "SECOND_SIMPLEX"})
    void reducedCostsTellWhatAFixedVariableIsWorth(Engine simplex) {
        MipModel model = new MipModel("fixed");
        Var bought = model.continuous("bought", 2, 2);
        Var missing = model.continuous("missing", 0, MipModel.INFINITY);
        model.atLeast("need", new Expr().add(3, bought).add(1, missing), 10);
        model.cost(5, missing);
        Outcome outcome = simplex.solve(model, EXACT);

        assertThat(outcome.objective()).isCloseTo(20, within(CLOSE));
        assertThat(outcome.reducedCosts()[bought.index()]).isCloseTo(-15, within(CLOSE));
    }

    @ParameterizedTest
    @EnumSource
    void aModelWithoutAPointIsInfeasible(Engine engine) {
        MipModel model = new MipModel("none");
        model.atLeast("high", new Expr().add(1, model.integer("x", 0, 1)), 2);
        Outcome outcome = engine.solve(model, EXACT);

        assertThat(outcome.stop()).isEqualTo(Outcome.Stop.INFEASIBLE);
        assertThat(outcome.hasPoint()).isFalse();
    }

    @Test
    void termsOfOneVariableAddUp() {
        MipModel model = new MipModel("twice");
        Var x = model.continuous("x", 0, 10);
        model.cost(-1, x);
        model.cost(3);
        model.atMost("limit", new Expr().add(1, x).add(2, new Expr().add(1, x)), 6);

        assertThat(Engine.SIMPLEX.solve(model, EXACT).objective()).isCloseTo(3 - 2, within(CLOSE));
    }
}
