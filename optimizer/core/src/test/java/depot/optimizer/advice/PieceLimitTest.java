package depot.optimizer.advice;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.fixture.Planned;
import depot.optimizer.fleet.DepotResult;
import depot.optimizer.fleet.SmallFleet;
import depot.optimizer.fleet.VariedDepot;
import depot.optimizer.plan.Certificate;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.DepotProblems;
import depot.optimizer.problem.PieceLimit;
import depot.optimizer.scenario.Scenario;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Limits of pieces, each slack at what the plan has and binding one below it. Shortage has a price here, so that there is always a plan. */
class PieceLimitTest {

    private static final Scenario SCENARIO = Planned.load(SmallFleet.seasons());

    private static final DepotProblem PROBLEM =
            new DepotProblems(SCENARIO).of(SCENARIO.depots().get(0));

    private static final DepotResult PLAN = VariedDepot.plan(SCENARIO, PROBLEM);

    private static DepotResult with(PieceLimit limit) {
        return VariedDepot.plan(SCENARIO, PROBLEM.with(List.of(limit)));
    }

    @Test
    void aLimitAtWhatThePlanHasLeavesTheBestPlan() {
        Certificate base = PLAN.plan().stop().certificate();
        for (Piece piece : Piece.of(SCENARIO, PLAN.plan())) {
            Certificate same = with(piece.atMost(piece.count())).plan().stop().certificate();

            assertThat(same.bound()).as(piece.toString()).isLessThanOrEqualTo(base.cost() + 0.005);
            assertThat(same.cost()).as(piece.toString()).isGreaterThanOrEqualTo(base.bound() - 0.005);
        }
    }

    @Test
    void aLimitBelowItIsKept() {
        List<Piece> pieces = Piece.of(SCENARIO, PLAN.plan());
        assertThat(pieces).isNotEmpty();
        for (Piece piece : pieces) {
            DepotResult fewer = with(piece.atMost(piece.count() - 1));

            assertThat(fewer.replay().proven()).as(piece.toString()).isTrue();
            assertThat(Piece.of(SCENARIO, fewer.plan()))
                    .filteredOn(other -> other.kind() == piece.kind()
                            && other.item().equals(piece.item())
                            && other.where().equals(piece.where()))
                    .allMatch(other -> other.count() < piece.count());
        }
    }

    @Test
    void aLimitCoversWhatItNames() {
        PieceLimit onBench = new PieceLimit(PieceLimit.Kind.CHARGER, "quick", "bench", 0);
        PieceLimit all = new PieceLimit(PieceLimit.Kind.CHARGER, PieceLimit.ANY, PieceLimit.ANY, 0);

        assertThat(onBench.covers(PieceLimit.Kind.CHARGER, "quick", "bench")).isTrue();
        assertThat(onBench.covers(PieceLimit.Kind.CHARGER, "quick", "wall")).isFalse();
        assertThat(onBench.covers(PieceLimit.Kind.CHARGER, "row", "bench")).isFalse();
        assertThat(all.covers(PieceLimit.Kind.CHARGER, "row", "wall")).isTrue();
        assertThat(all.covers(PieceLimit.Kind.UNIT, "row", "wall")).isFalse();
    }
}
