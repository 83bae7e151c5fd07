package depot.optimizer.model;

import depot.optimizer.mip.Expr;
import depot.optimizer.mip.MipModel;
import depot.optimizer.problem.DepotProblem;
import java.util.List;

/**
 * On a charger that does not wait packs charge in turns from the moment of loading, so that a later, cheaper turn is only open behind an earlier one.
 *
 * <p>For each span with turns: packs of turn 1 &lt;= chargingAtOnce * chargers; packs of turn r + 1 &lt;= packs of turn r.
 */
final class Turns implements DayRule {

    @Override
    public void add(MipModel model, DepotProblem problem, CapacityVars capacity, DayVars day) {
        day.loads().forEach((span, loads) -> {
            int turns = loads.stream().mapToInt(l -> l.rounds().size()).max().orElse(1);
            if (turns > 1) {
                Expr first = inTurn(loads, 0);
                int atOnce = problem.chargers().get(span.charger()).type().chargingAtOnce();
                for (Batch batch : day.batches()) {
                    if (batch.span().equals(span)) {
                        first.add(-atOnce, batch.chargers());
                    }
                }
                model.atMost("turns_" + span.key() + "_0@" + day.tag(), first, 0);
                for (int r = 1; r < turns; r++) {
                    model.atMost(
                            "turns_" + span.key() + "_" + r + "@" + day.tag(),
                            inTurn(loads, r).add(-1, inTurn(loads, r - 1)),
                            0);
                }
            }
        });
    }

    private static Expr inTurn(List<Load> loads, int turn) {
        Expr sum = new Expr();
        for (Load load : loads) {
            if (turn < load.rounds().size()) {
                sum.add(1, load.rounds().get(turn));
            }
        }
        return sum;
    }
}
