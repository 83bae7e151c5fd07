package depot.optimizer.model;

import depot.optimizer.mip.Expr;
import depot.optimizer.mip.Var;
import depot.optimizer.problem.SharedLimit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What a depot's purchases use of what the fleet shares, as expressions of the model's variables. */
public final class RolloutUse {

    private final List<Expr> capital = new ArrayList<>();
    private final List<Map<String, Expr>> bought = new ArrayList<>();
    private final List<Map<String, Var>> crews = new ArrayList<>();
    private final List<Map<String, Expr>> visits = new ArrayList<>();
    private final Map<String, Expr> moved = new HashMap<>();

    RolloutUse(int phases) {
        for (int f = 0; f < phases; f++) {
            capital.add(new Expr());
            bought.add(new HashMap<>());
            crews.add(new HashMap<>());
            visits.add(new HashMap<>());
        }
    }

    void spend(int phase, double amount, Expr pieces) {
        capital.get(phase).add(amount, pieces);
    }

    void buy(int phase, String item, double paid, Expr pieces) {
        capital.get(phase).add(paid, pieces);
        bought.get(phase).computeIfAbsent(item, i -> new Expr()).add(1, pieces);
    }

    void move(String item, Expr coming) {
        moved.put(item, coming);
    }

    void crew(int phase, String crew, Var electric) {
        crews.get(phase).put(crew, electric);
    }

    void visit(int phase, String service, Expr packs) {
        visits.get(phase).put(service, packs);
    }

    /**
     * Use of a shared limit.
     *
     * @param phase place of the limit's phase; of no matter for moves
     */
    public Expr of(SharedLimit limit, int phase) {
        return switch (limit.kind()) {
            case BUDGET, REGION_BUDGET -> capital.get(phase);
            case DELIVERY -> bought.get(phase).getOrDefault(limit.subject(), new Expr());
            case QUANTITY -> new Expr().add(-1, bought.get(phase).getOrDefault(limit.subject(), new Expr()));
            case MOVES -> moved.getOrDefault(limit.subject(), new Expr());
            case VISIT -> visits.get(phase).getOrDefault(limit.subject(), new Expr());
            case CREW -> {
                Var electric = crews.get(phase).get(limit.subject());
                yield electric == null ? new Expr() : new Expr().add(1, electric);
            }
        };
    }
}
