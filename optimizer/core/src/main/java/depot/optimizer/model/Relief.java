package depot.optimizer.model;

import depot.optimizer.mip.MipModel;
import depot.optimizer.mip.Var;
import depot.optimizer.problem.DepotProblem;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * By how much limits are loosened. In a plan all of these are fixed at zero; only the search for what would cure a shortage opens some.
 */
public final class Relief {

    private static final double MOST = 1000;

    private final Map<LimitKind, List<Var>> amounts = new EnumMap<>(LimitKind.class);

    Relief(MipModel model, DepotProblem problem, Set<LimitKind> open) {
        for (LimitKind kind : LimitKind.values()) {
            List<Var> vars = new ArrayList<>();
            for (String subject : subjects(problem, kind)) {
                String name = "relief_" + kind + "_" + subject;
                double most = open.contains(kind) ? MOST : 0;
                vars.add(kind == LimitKind.PAYLOAD ? model.continuous(name, 0, most) : model.integer(name, 0, most));
            }
            amounts.put(kind, List.copyOf(vars));
        }
    }

    /** What a kind of limit applies to: the depot, its circuits or its crews, in the order of the problem. */
    public static List<String> subjects(DepotProblem problem, LimitKind kind) {
        return switch (kind) {
            case PLACES, SUPPLY -> List.of(problem.depot().id());
            case BREAKER, OUTLETS ->
                problem.circuits().stream().map(site -> site.circuit().id()).toList();
            case PACK_PLACES, PAYLOAD ->
                problem.crews().stream().map(crew -> crew.id()).toList();
        };
    }

    /** The amounts of a kind, one for each subject. */
    public List<Var> of(LimitKind kind) {
        return amounts.get(kind);
    }

    Var places() {
        return of(LimitKind.PLACES).get(0);
    }

    Var supplyAmps() {
        return of(LimitKind.SUPPLY).get(0);
    }

    Var breakerAmps(int circuit) {
        return of(LimitKind.BREAKER).get(circuit);
    }

    Var outlets(int circuit) {
        return of(LimitKind.OUTLETS).get(circuit);
    }

    Var packPlaces(int crew) {
        return of(LimitKind.PACK_PLACES).get(crew);
    }

    Var payloadKg(int crew) {
        return of(LimitKind.PAYLOAD).get(crew);
    }
}
