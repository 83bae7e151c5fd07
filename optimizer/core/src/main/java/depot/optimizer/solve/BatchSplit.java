package depot.optimizer.solve;

import depot.optimizer.model.DayDecision.LoadDecision;
import depot.optimizer.model.DayDecision.SpanDecision;
import depot.optimizer.model.PackKind;
import depot.optimizer.plan.ChargerLoad.Loaded;
import depot.optimizer.problem.DepotProblem;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Splits the packs of one batch among its chargers. Where the model says what each charger holds, it gets that; where it counted turns, the chargers get
 * as many packs as make those turns; otherwise the packs are spread evenly, which lets each charger finish as early as it can.
 */
final class BatchSplit {

    private final SpanDecision span;
    private final DepotProblem problem;
    private final List<Integer> slots;
    private final int[] target;
    private final int[] held;
    private final List<List<Loaded>> packs = new ArrayList<>();

    /**
     * @param slots packs that each charger may hold, rising
     */
    BatchSplit(SpanDecision span, DepotProblem problem, List<Integer> slots) {
        this.span = span;
        this.problem = problem;
        this.slots = slots;
        target = new int[slots.size()];
        held = new int[slots.size()];
        slots.forEach(s -> packs.add(new ArrayList<>()));
    }

    List<List<Loaded>> split() {
        if (!span.fillings().isEmpty()) {
            return filled();
        }
        setTargets();
        List<LoadDecision> slowFirst = new ArrayList<>(span.loads());
        slowFirst.sort(Comparator.comparingInt(LoadDecision::slots));
        for (LoadDecision load : slowFirst) {
            int left = place(load, load.count(), target);
            left = place(load, left, slots.stream().mapToInt(Integer::intValue).toArray());
            if (left > 0) {
                throw new IllegalStateException("a batch of depot "
                        + problem.depot().id() + " holds " + left + " packs more than its chargers have room for");
            }
        }
        return packs;
    }

    /** Packs of one kind differ by their pool at most, which is the same to a charger. */
    private List<List<Loaded>> filled() {
        Map<PackKind, Deque<LoadDecision>> left = new HashMap<>();
        for (LoadDecision load : span.loads()) {
            left.computeIfAbsent(load.kind(), kind -> new ArrayDeque<>())
                    .addAll(Collections.nCopies(load.count(), load));
        }
        List<List<Loaded>> filled = new ArrayList<>();
        for (List<PackKind> order : span.fillings()) {
            List<Loaded> charger = new ArrayList<>();
            for (PackKind kind : order) {
                addBehind(charger, DayScheduler.loaded(problem, left.get(kind).remove(), 1));
            }
            filled.add(List.copyOf(charger));
        }
        return filled;
    }

    private static void addBehind(List<Loaded> charger, Loaded pack) {
        int last = charger.size() - 1;
        if (last >= 0 && charger.get(last).sameKind(pack)) {
            Loaded before = charger.remove(last);
            charger.add(new Loaded(pack.packType(), pack.pool(), pack.level(), before.count() + pack.count()));
        } else {
            charger.add(pack);
        }
    }

    private void setTargets() {
        int turns = span.loads().stream().mapToInt(l -> l.turns().size()).max().orElse(1);
        if (turns > 1) {
            int atOnce = problem.chargers().get(span.charger()).type().chargingAtOnce();
            for (int r = 0; r < turns; r++) {
                int left = inTurn(r);
                // The roomiest chargers, which come last, take the late turns.
                for (int i = target.length - 1; i >= 0 && left > 0; i--) {
                    int take = Math.min(left, Math.min(atOnce, slots.get(i) - target[i]));
                    target[i] += take;
                    left -= take;
                }
            }
        } else {
            int left = span.loads().stream().mapToInt(LoadDecision::count).sum();
            while (left > 0) {
                int emptiest = -1;
                for (int i = 0; i < target.length; i++) {
                    if (target[i] < slots.get(i) && (emptiest < 0 || target[i] < target[emptiest])) {
                        emptiest = i;
                    }
                }
                if (emptiest < 0) {
                    return;
                }
                target[emptiest]++;
                left--;
            }
        }
    }

    private int inTurn(int turn) {
        return span.loads().stream()
                .filter(l -> turn < l.turns().size())
                .mapToInt(l -> l.turns().get(turn))
                .sum();
    }

    /** Places packs in chargers up to a limit for each, tightest chargers first; returns how many are left. */
    private int place(LoadDecision load, int count, int[] limit) {
        int left = count;
        for (int i = 0; i < limit.length && left > 0; i++) {
            int take = slots.get(i) <= load.slots() ? Math.min(left, limit[i] - held[i]) : 0;
            if (take > 0) {
                packs.get(i).add(DayScheduler.loaded(problem, load, take));
                held[i] += take;
                left -= take;
            }
        }
        return left;
    }
}
