package depot.optimizer.mip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import depot.optimizer.mip.Outcome.Stop;
import java.util.ArrayList;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.EnumSource.Mode;

/** The engines against small problems with known answers. */
class EngineTest {

    /** Engines keep rows and whole numbers to about this. */
    private static final double FEASIBILITY = 1e-6;
    /** Objectives of whole numbers. */
    private static final Offset<Double> OBJECTIVE = within(1e-6);

    private static final Limits EXACT = new Limits(0, 100_000, 30, 1);

    /** Knapsack of Martello & Toth, Knapsack Problems, 1990: best profit 107, seen, recomputed. */
    private static final int[] PROFITS = {70, 20, 39, 37, 7, 5, 10};

    private static final int[] WEIGHTS = {31, 10, 20, 19, 4, 3, 6};
    private static final int CAPACITY = 50;
    private static final double BEST_PROFIT = 107;

    /** Bin packing example of OR-Tools' guide: 4 bins of 100, seen; sum 370, so 4 is also the least possible. */
    private static final int[] ITEMS = {48, 30, 19, 36, 36, 27, 42, 42, 36, 24, 30};

    private static final int BIN = 100;
    private static final double FEWEST_BINS = 4;

    @ParameterizedTest
    @EnumSource(
            mode = Mode.EXCLUDE,
            names = {"SIMPLEX", "SECOND_SIMPLEX"})
    void packsTheKnapsack(Engine engine) {
        MipModel model = knapsack(false);

        Outcome outcome = engine.solve(model, EXACT);

        assertThat(outcome.stop()).isEqualTo(Stop.GAP_REACHED);
        assertThat(outcome.objective()).isEqualTo(-BEST_PROFIT, OBJECTIVE);
        assertSound(model, outcome);
    }

    @Test
    void knapsackByTryingAllHasTheSameProfit() {
        int best = 0;
        for (int set = 0; set < (1 << PROFITS.length); set++) {
            int profit = 0;
            int weight = 0;
            for (int i = 0; i < PROFITS.length; i++) {
                profit += ((set >> i) & 1) * PROFITS[i];
                weight += ((set >> i) & 1) * WEIGHTS[i];
            }
            best = weight <= CAPACITY ? Math.max(best, profit) : best;
        }
        assertThat((double) best).isEqualTo(BEST_PROFIT);
    }

    @Test
    void simplexBoundsTheKnapsack() {
        Outcome outcome = Engine.SIMPLEX.solve(knapsack(false), EXACT);

        // By hand, in falling profit per weight: 70 + 20 in 41, and 9/20 of the third (39 for 20): 107.55
        assertThat(outcome.objective()).isEqualTo(-107.55, OBJECTIVE);
    }

    @ParameterizedTest
    @EnumSource(
            mode = Mode.EXCLUDE,
            names = {"SIMPLEX", "SECOND_SIMPLEX"})
    void packsTheBins(Engine engine) {
        MipModel model = bins(5);

        Outcome outcome = engine.solve(model, EXACT);

        assertThat(outcome.stop()).isEqualTo(Stop.GAP_REACHED);
        assertThat(outcome.objective()).isEqualTo(FEWEST_BINS, OBJECTIVE);
        assertSound(model, outcome);
    }

    @ParameterizedTest
    @EnumSource
    void reportsThatNothingFits(Engine engine) {
        Outcome outcome = engine.solve(knapsack(true), EXACT);

        assertThat(outcome.stop()).isEqualTo(Stop.INFEASIBLE);
        assertThat(outcome.hasPoint()).isFalse();
        assertThat(outcome.bound()).isEqualTo(Double.NEGATIVE_INFINITY);
    }

    @ParameterizedTest
    @EnumSource(
            mode = Mode.EXCLUDE,
            names = {"SIMPLEX", "SECOND_SIMPLEX"})
    void boundIsNotAboveTheObjectiveAtAnyGap(Engine engine) {
        for (double gap : new double[] {0, 0.01, 0.1, 0.5}) {
            MipModel model = bins(5);

            Outcome outcome = engine.solve(model, new Limits(gap, 100_000, 30, 1));

            assertSound(model, outcome);
            assertThat(outcome.bound()).isLessThanOrEqualTo(FEWEST_BINS + FEASIBILITY);
        }
    }

    @Test
    void constantCostIsPartOfObjectiveAndBound() {
        MipModel model = knapsack(false);
        model.cost(1000);

        Outcome outcome = Engine.BRANCH_AND_CUT.solve(model, EXACT);

        assertThat(outcome.objective()).isEqualTo(1000 - BEST_PROFIT, OBJECTIVE);
        assertThat(outcome.bound()).isEqualTo(1000 - BEST_PROFIT, OBJECTIVE);
    }

    @Test
    void termsOfOneVariableAddUp() {
        MipModel model = new MipModel("twice");
        Var x = model.integer("x", 0, 100);
        model.atMost("row", new Expr().add(1, x).add(2, x), 10);
        model.cost(-1, x);
        model.cost(-1, x);

        // By hand: 3 x <= 10, so x = 3, and each counts 2
        assertThat(Engine.BRANCH_AND_CUT.solve(model, EXACT).objective()).isEqualTo(-6, OBJECTIVE);
    }

    @Test
    void refusesNamesUsedTwice() {
        MipModel model = new MipModel("names");
        Var x = model.binary("x");
        model.atMost("row", new Expr().add(1, x), 1);

        assertThatIllegalArgumentException()
                .isThrownBy(() -> model.integer("x", 0, 2))
                .withMessageContaining("x is used twice");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> model.atLeast("row", new Expr().add(1, x), 0))
                .withMessageContaining("row is used twice");
    }

    @Test
    void scopesKeepEqualNamesApart() {
        MipModel model = new MipModel("names");
        model.scope("a:");
        Var first = model.binary("x");
        model.scope("b:");

        assertThat(model.binary("x").name()).isEqualTo("b:x").isNotEqualTo(first.name());
    }

    @Test
    void refusesBoundsTheWrongWayRound() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new MipModel("bounds").continuous("x", 2, 1))
                .withMessageContaining("lower bound 2.0 is above upper bound 1.0");
    }

    private static void assertSound(MipModel model, Outcome outcome) {
        assertThat(outcome.bound()).isLessThanOrEqualTo(outcome.objective());
        assertThat(model.violations(outcome.point(), FEASIBILITY)).isEmpty();
        assertThat(model.objectiveAt(outcome.point())).isEqualTo(outcome.objective(), OBJECTIVE);
    }

    private static MipModel knapsack(boolean takeAll) {
        MipModel model = new MipModel("knapsack");
        Expr weight = new Expr();
        List<Var> items = new ArrayList<>();
        for (int i = 0; i < PROFITS.length; i++) {
            Var item = model.binary("item" + i);
            items.add(item);
            weight.add(WEIGHTS[i], item);
            model.cost(-PROFITS[i], item);
        }
        model.atMost("capacity", weight, CAPACITY);
        if (takeAll) {
            model.atLeast("all", Expr.sum(items), PROFITS.length);
        }
        return model;
    }

    private static MipModel bins(int most) {
        MipModel model = new MipModel("bins");
        List<Expr> loads = new ArrayList<>();
        for (int b = 0; b < most; b++) {
            Var used = model.binary("bin" + b);
            model.cost(1, used);
            loads.add(new Expr().add(-BIN, used));
        }
        for (int i = 0; i < ITEMS.length; i++) {
            Expr once = new Expr();
            for (int b = 0; b < most; b++) {
                Var in = model.binary("item" + i + "in" + b);
                once.add(1, in);
                loads.get(b).add(ITEMS[i], in);
            }
            model.equal("once" + i, once, 1);
        }
        for (int b = 0; b < most; b++) {
            model.atMost("load" + b, loads.get(b), 0);
        }
        return model;
    }
}
