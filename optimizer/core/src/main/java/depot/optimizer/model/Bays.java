package depot.optimizer.model;

import depot.optimizer.mip.Expr;
import depot.optimizer.mip.MipModel;
import depot.optimizer.mip.Var;
import depot.optimizer.problem.DepotProblem;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/**
 * A charger holds one batch from one handover to a later one; nobody swaps packs in between.
 *
 * <ul>
 *   <li>plain, for each type c and each span between neighbouring handovers h, guests' included: sum of chargers of the batches that cover h &lt;= sum over k of
 *       plain[k,c]
 *   <li>behind units: the same &lt;= sum over k of shared[k,c]; of batches that are collected before the end of the cycle &lt;= sum over k of
 *       priority[k,c], since only priority outlets are sure to be fed at once
 *   <li>for each span and each slot count m of it: packs that need m slots or fewer &lt;= sum over m' &lt;= m of m' chargers[m']. Packs that charge faster
 *       may ride in a batch of slower ones; by Hall's condition on the nested sets this is exact.
 *   <li>instead, where the span has fillings: fillings of a slot count &lt;= chargers of it; packs of a kind = those in the fillings
 * </ul>
 */
final class Bays implements DayRule {

    @Override
    public void add(MipModel model, DepotProblem problem, CapacityVars capacity, DayVars day) {
        List<Integer> handovers = day.kind().times();
        for (int c = 0; c < problem.chargers().size(); c++) {
            for (int h = 0; h + 1 < handovers.size(); h++) {
                int at = handovers.get(h);
                String key = "c" + c + "_" + at + "@" + day.tag();
                addBusy(model, "bays_plain_" + key, busy(day, c, at, BatchSpan::plain), capacity.plain, c);
                addBusy(model, "bays_shared_" + key, busy(day, c, at, b -> !b.plain()), capacity.shared, c);
                addBusy(
                        model,
                        "bays_priority_" + key,
                        busy(day, c, at, b -> b.feed() == Feed.PRIORITY),
                        capacity.priority,
                        c);
            }
        }
        day.loads().forEach((span, loads) -> {
            List<Filling> fillings = day.fillings().get(span);
            if (fillings == null) {
                addSlots(model, day, span, loads);
            } else {
                addFillings(model, day, span, loads, fillings);
            }
        });
    }

    private static void addBusy(MipModel model, String name, Expr busy, Var[][] chargers, int c) {
        if (!busy.isEmpty()) {
            for (Var[] circuit : chargers) {
                busy.add(-1, circuit[c]);
            }
            model.atMost(name, busy, 0);
        }
    }

    /** Chargers of a type in batches that cover a minute. */
    private static Expr busy(DayVars day, int charger, int at, Predicate<BatchSpan> of) {
        Expr sum = new Expr();
        for (Batch batch : day.batches()) {
            BatchSpan span = batch.span();
            if (span.charger() == charger && span.covers(at) && of.test(span)) {
                sum.add(1, batch.chargers());
            }
        }
        return sum;
    }

    private static void addFillings(
            MipModel model, DayVars day, BatchSpan span, List<Load> loads, List<Filling> fillings) {
        for (Batch batch : day.batches()) {
            if (batch.span().equals(span)) {
                Expr filled = new Expr().add(-1, batch.chargers());
                fillings.stream()
                        .filter(filling -> filling.slots() == batch.slots())
                        .forEach(filling -> filled.add(1, filling.chargers()));
                model.atMost("filled_" + span.key() + "_m" + batch.slots() + "@" + day.tag(), filled, 0);
            }
        }
        Map<PackKind, Expr> packs = new LinkedHashMap<>();
        loads.forEach(
                load -> packs.computeIfAbsent(load.kind(), kind -> new Expr()).add(1, load.count()));
        packs.forEach((kind, loaded) -> {
            for (Filling filling : fillings) {
                if (filling.count(kind) > 0) {
                    loaded.add(-filling.count(kind), filling.chargers());
                }
            }
            String key = span.key() + "_" + kind.fit().pack().id() + "_" + kind.level();
            model.equal("fillings_" + key + "@" + day.tag(), loaded, 0);
        });
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
