package depot.optimizer.mip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import depot.optimizer.mip.Outcome.Stop;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Models solved part by part: bounds against known ones and against the whole model's optimum, points against its rows. */
class PricedPartsTest {

    private static final Limits EXACT = new Limits(0, 100_000, 30, 1);
    private static final double ROUNDING = 1e-6;
    private static final int MODELS = 60;

    /**
     * The example of Fisher, An Applications Oriented Guide to Lagrangian Relaxation, Interfaces 15:2, 1985, from memory: most of 16 a + 10 b + 4 d, with
     * 8 a + 2 b + c + 4 d at most 10, one of a and b, one of c and d. By hand: a alone, or a and c, is worth 16 and nothing is worth more.
     */
    private static MipModel fisher() {
        MipModel model = new MipModel("fisher");
        Var a = model.binary("a");
        Var b = model.binary("b");
        model.part(1);
        Var c = model.binary("c");
        Var d = model.binary("d");
        model.atMost("joint", new Expr().add(8, a).add(2, b).add(1, c).add(4, d), 10);
        model.atMost("first", new Expr().add(1, a).add(1, b), 1);
        model.atMost("second", new Expr().add(1, c).add(1, d), 1);
        model.cost(-16, a);
        model.cost(-10, b);
        model.cost(-4, d);
        return model;
    }

    /** By hand, at a price of u: the larger of 16 - 8 u, 10 - 2 u and 0, the larger of 4 - 4 u and 0, and 10 u. */
    @ParameterizedTest
    @CsvSource({"0, 20", "0.5, 19", "0.75, 18.5", "1, 18", "2, 26", "3, 34", "6, 60"})
    void theBoundIsThatOfTheParts(double price, double most) {
        Outcome outcome =
                new PricedParts(fisher(), new double[] {-price, 0, 0}, 16).solve(Engine.BRANCH_AND_CUT, EXACT);

        assertThat(outcome.bound()).isCloseTo(-most, within(ROUNDING));
        assertThat(fisher().violations(outcome.point(), ROUNDING)).isEmpty();
        assertThat(outcome.objective()).isBetween(-16 - ROUNDING, 0.0);
    }

    @Test
    void aPriceThatNoBoundAnswersCountsForNothing() {
        // The joint row has no lower bound, which a price above 0 would be paid for.
        Outcome outcome = new PricedParts(fisher(), new double[] {5, 0, 0}, 16).solve(Engine.BRANCH_AND_CUT, EXACT);

        assertThat(outcome.bound()).isCloseTo(-20, within(ROUNDING));
    }

    @Test
    void aPartThatCannotKeepItsRowsMakesTheWholeInfeasible() {
        MipModel model = fisher();
        model.atLeast("both", new Expr().add(1, new Var(2, "c")).add(1, new Var(3, "d")), 2);

        Outcome outcome = new PricedParts(model, new double[] {-1, 0, 0, 0}, 16).solve(Engine.BRANCH_AND_CUT, EXACT);

        assertThat(outcome.stop()).isEqualTo(Stop.INFEASIBLE);
        assertThat(outcome.hasPoint()).isFalse();
    }

    @Test
    void whereOneOrderLeadsNowhereTheOtherMay() {
        MipModel model = new MipModel("late");
        Var first = model.binary("first");
        model.part(1);
        Var second = model.binary("second");
        model.atLeast("joint", new Expr().add(1, second).add(-2, first), 0);
        model.cost(-1, first);
        model.cost(1, second);

        PricedParts parts = new PricedParts(model, new double[] {0}, 1);

        // By hand: each by itself, the first part has its 1 and the second nothing, which the first's 1 rules out; from
        // the second on, neither has anything.
        Outcome outcome = parts.solve(Engine.BRANCH_AND_CUT, EXACT);
        assertThat(outcome.bound()).isCloseTo(-1, within(ROUNDING));
        assertThat(outcome.objective()).isCloseTo(0, within(ROUNDING));
        assertThat(parts.solveInTurn(Engine.BRANCH_AND_CUT, EXACT).objective()).isCloseTo(0, within(ROUNDING));
    }

    @Test
    void thereIsNoPointWhereNeitherOrderLeadsToOne() {
        MipModel model = new MipModel("neither");
        Var first = model.binary("first");
        model.part(1);
        Var second = model.binary("second");
        model.atLeast("joint", new Expr().add(1, second).add(1, first), 3);

        PricedParts parts = new PricedParts(model, new double[] {0}, 1);

        assertThat(parts.solve(Engine.BRANCH_AND_CUT, EXACT).hasPoint()).isFalse();
        assertThat(parts.solveInTurn(Engine.BRANCH_AND_CUT, EXACT).hasPoint()).isFalse();
    }

    /** At the duals of the linear relaxation: bounds between that and the optimum, points that keep all rows. */
    @Test
    void boundsOfRandomModelsLieBetweenRelaxationAndOptimum() {
        int higher = 0;
        for (long seed = 1; seed <= MODELS; seed++) {
            MipModel model = random(seed);
            Outcome linear = Engine.SECOND_SIMPLEX.solve(model, EXACT);
            Outcome best = Engine.BRANCH_AND_CUT.solve(model, EXACT);
            PricedParts parts = new PricedParts(model, linear.duals(), linear.objective());

            Outcome outcome = parts.solve(Engine.BRANCH_AND_CUT, EXACT);

            assertThat(outcome.bound())
                    .as("seed %d", seed)
                    .isBetween(linear.objective() - ROUNDING, best.objective() + ROUNDING);
            higher += outcome.bound() > linear.objective() + ROUNDING ? 1 : 0;
            assertKept(model, outcome, best);
            assertKept(model, parts.solveInTurn(Engine.BRANCH_AND_CUT, EXACT), best);
        }
        assertThat(higher).isGreaterThan(MODELS / 2);
    }

    private static void assertKept(MipModel model, Outcome outcome, Outcome best) {
        if (outcome.hasPoint()) {
            assertThat(model.violations(outcome.point(), ROUNDING)).isEmpty();
            assertThat(outcome.objective()).isGreaterThanOrEqualTo(best.objective() - ROUNDING);
            assertThat(model.objectiveAt(outcome.point())).isCloseTo(outcome.objective(), within(ROUNDING));
        }
    }

    /** Three parts of five whole-number variables, with rows of their own and rows of every kind that join them. */
    private static MipModel random(long seed) {
        Random random = new Random(seed);
        MipModel model = new MipModel("random");
        List<Var> all = new ArrayList<>();
        for (int part = 0; part < 3; part++) {
            model.part(part);
            Expr own = new Expr();
            for (int i = 0; i < 5; i++) {
                Var var = model.integer("x" + part + "_" + i, 0, 3);
                all.add(var);
                own.add(1 + random.nextInt(9), var);
                model.cost(1 + random.nextInt(20), var);
            }
            model.atLeast("own" + part, own, 7 + random.nextInt(20));
        }
        model.cost(100);
        for (int row = 0; row < 4; row++) {
            Expr joint = new Expr();
            all.forEach(var -> joint.add(random.nextInt(4), var));
            switch (row % 3) {
                case 0 -> model.atLeast("joint" + row, joint, 20 + random.nextInt(10));
                case 1 -> model.atMost("joint" + row, joint, 45 + random.nextInt(10));
                default -> {
                    Var spare = model.continuous("spare" + row, 0, 5);
                    model.equal("joint" + row, joint.add(-1, spare), 24);
                }
            }
        }
        return model;
    }
}
