package depot.optimizer.model;

import depot.optimizer.mip.Expr;
import depot.optimizer.mip.MipModel;
import depot.optimizer.problem.DepotProblem;
import java.util.List;

/**
 * A charger holds one batch from one handover to a later one; nobody swaps packs in between.
 *
 * <ul>
 *   <li>plain, for each type c and each span between neighbouring handovers h: sum of chargers of the batches that cover h &lt;= sum over k of
 *       plain[k,c]
 *   <li>shared, for each circuit k: the same &lt;= shared[k,c]; of batches that are collected before the end of the cycle &lt;= priority[k,c], since
 *       only priority outlets are sure to be fed at once
 *   <li>for each span and each slot count m of it: packs that need m slots or fewer &lt;= sum over m' &lt;= m of m' chargers[m']. Packs that charge faster
 *       may ride in a batch of slower ones; by Hall's condition on the nested sets this is exact.
 * </ul>
 */
final class Bays implements DayRule {

    @Override
    public void add(MipModel model, DepotProblem problem, CapacityVars capacity, DayVars day) {
        List<Integer> handovers = day.kind().handovers();
        for (int c = 0; c < problem.chargers().size(); c++) {
            for (int h = 0; h + 1 < handovers.size(); h++) {
                int at = handovers.get(h);
                String key = "c" + c + "_" + at + "@" + day.tag();
                Expr plain = busy(day, BatchSpan.PLAIN, c, at, Integer.MAX_VALUE);
                for (int k = 0; k < problem.circuits().size(); k++) {
                    plain.add(-1, capacity.plain[k][c]);
                    Expr shared = busy(day, k, c, at, Integer.MAX_VALUE);
                    if (!shared.isEmpty()) {
                        model.atMost("bays_k" + k + "_" + key, shared.add(-1, capacity.shared[k][c]), 0);
                        Expr first = busy(day, k, c, at, day.end());
                        model.atMost("priorityBays_k" + k + "_" + key, first.add(-1, capacity.priority[k][c]), 0);
                    }
                }
                model.atMost("bays_plain_" + key, plain, 0);
            }
        }
        day.loads().forEach((span, loads) -> addSlots(model, day, span, loads));
    }

    /** Chargers of a type in batches that cover a minute and are collected before another. */
    private static Expr busy(DayVars day, int circuit, int charger, int at, int collectedBefore) {
        Expr sum = new Expr();
        for (Batch batch : day.batches()) {
            BatchSpan span = batch.span();
            if (span.circuit() == circuit
                    && span.charger() == charger
                    && span.covers(at)
                    && span.to() < collectedBefore) {
                sum.add(1, batch.chargers());
            }
        }
        return sum;
    }

    private static void addSlots(MipModel model, DayVars day, BatchSpan span, List<Load> loads) {
        List<Batch> batches =
                day.batches().stream().filter(b -> b.span().equals(span)).toList();
        for (Batch limit : batches) {
            Expr packs = new Expr();
            for (Load load : loads) {
                if (load.slots() <= limit.slots()) {
                    packs.add(1, load.count());
                }
            }
            for (Batch batch : batches) {
                if (batch.slots() <= limit.slots()) {
                    packs.add(-batch.slots(), batch.chargers());
                }
            }
            model.atMost("slots_" + span.key() + "_m" + limit.slots() + "@" + day.tag(), packs, 0);
        }
    }
}
