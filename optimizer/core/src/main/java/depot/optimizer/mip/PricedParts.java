package depot.optimizer.mip;

import depot.optimizer.mip.Outcome.Stop;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A model solved part by part (Lagrangian relaxation: Geoffrion 1974, from memory). Rows that join parts are left out, and each is paid for by what it lacks,
 * or pays for what it has to spare, at its price. Whatever the prices, what all parts cost together at the least is not above the model's optimum; at the
 * duals of its linear relaxation it is not below that relaxation.
 *
 * <p>A point of the model follows one part after the other: what joins a part to those whose values are settled already it has to keep; what joins it to
 * others stays priced.
 */
public final class PricedParts {

    /** How far a row may be broken by a point that keeps it. */
    private static final double TOLERANCE = 1e-6;

    private static final double[] NONE = {};

    private final MipModel model;
    private final double cost;
    private final int parts;
    private final int[] place;
    private final List<Joint> joints = new ArrayList<>();
    private final List<List<MipModel.Row>> own = new ArrayList<>();

    /** A row that joins parts, and its price: above 0 what its lower bound rises by costs, below 0 what its upper bound falls by. */
    private record Joint(MipModel.Row row, BitSet parts, double price) {

        double constant() {
            return price == 0 ? 0 : price * (price > 0 ? row.lower() : row.upper());
        }

        boolean keptBy(double[] point) {
            double value = row.expr().value(point);
            return value >= row.lower() - TOLERANCE && value <= row.upper() + TOLERANCE;
        }
    }

    /**
     * Takes a model apart.
     *
     * @param duals prices of the rows, in their order, as in {@link Outcome#duals}
     * @param cost about what a point costs, of which a relative gap is a share
     */
    public PricedParts(MipModel model, double[] duals, double cost) {
        this.model = model;
        this.cost = Math.abs(cost);
        parts = 1
                + model.columns().stream().mapToInt(MipModel.Column::part).max().orElse(0);
        place = new int[model.columns().size()];
        int[] sizes = new int[parts];
        for (int i = 0; i < place.length; i++) {
            place[i] = sizes[part(i)]++;
        }
        for (int part = 0; part < parts; part++) {
            own.add(new ArrayList<>());
        }
        for (int r = 0; r < duals.length; r++) {
            add(model.rows().get(r), duals[r]);
        }
    }

    private void add(MipModel.Row row, double dual) {
        BitSet touched = new BitSet();
        row.expr().forEachTerm((i, value) -> touched.set(part(i)));
        if (touched.cardinality() > 1) {
            boolean priced = Double.isFinite(dual > 0 ? row.lower() : row.upper());
            joints.add(new Joint(row, touched, priced ? dual : 0));
        } else {
            own.get(Math.max(0, touched.nextSetBit(0))).add(row);
        }
    }

    private int part(int column) {
        return model.columns().get(column).part();
    }

    /**
     * The bound of all parts together, and a point if one is found: first from the last part to the first one, and where that is not within the gap from the
     * first one to the last as well.
     *
     * @param limits of each part; the gap is that of the whole
     */
    public Outcome solve(Engine engine, Limits limits) {
        Limits each = each(limits);
        double bound = model.objectiveConstant()
                + joints.stream().mapToDouble(Joint::constant).sum();
        List<Outcome> apart = new ArrayList<>();
        long nodes = 0;
        for (int part = 0; part < parts; part++) {
            Outcome outcome = engine.solve(single(part, new Settled()), each);
            nodes += outcome.nodes();
            if (outcome.stop() == Stop.INFEASIBLE) {
                return outcome.after(Double.NEGATIVE_INFINITY, nodes - outcome.nodes());
            }
            bound += outcome.bound();
            apart.add(outcome);
        }
        Outcome point = inTurn(engine, each, falling(), apart).after(bound, nodes);
        if (point.hasPoint() && point.objective() - bound <= parts * each.absoluteGap()) {
            return point;
        }
        return cheaper(point, inTurn(engine, each, rising(), apart));
    }

    /** A point alone, the cheaper one of those in both orders, if one is found; it proves nothing. */
    public Outcome solveInTurn(Engine engine, Limits limits) {
        Limits each = each(limits);
        return cheaper(inTurn(engine, each, falling(), List.of()), inTurn(engine, each, rising(), List.of()));
    }

    private int[] rising() {
        return IntStream.range(0, parts).toArray();
    }

    private int[] falling() {
        return IntStream.range(0, parts).map(part -> parts - 1 - part).toArray();
    }

    private static Outcome cheaper(Outcome one, Outcome other) {
        return other.hasPoint() && !(one.objective() <= other.objective())
                ? other.after(one.bound(), one.nodes())
                : one.after(other.bound(), other.nodes());
    }

    private Limits each(Limits limits) {
        double allowed = Math.max(limits.absoluteGap(), limits.relativeGap() * cost) / parts;
        return new Limits(0, allowed, limits.nodes(), limits.seconds(), limits.seed());
    }

    /** @param apart outcomes of the parts by themselves, where there are any: taken where they keep what is settled */
    private Outcome inTurn(Engine engine, Limits each, int[] order, List<Outcome> apart) {
        Settled settled = new Settled();
        long nodes = 0;
        for (int part : order) {
            if (apart.isEmpty() || !settled.take(part, apart.get(part))) {
                Outcome joined = engine.solve(single(part, settled), each);
                nodes += joined.nodes();
                if (!settled.take(part, joined)) {
                    return new Outcome(
                            Stop.LIMIT_REACHED, Double.NaN, Double.NEGATIVE_INFINITY, NONE, nodes, NONE, NONE);
                }
            }
        }
        return new Outcome(
                Stop.LIMIT_REACHED,
                model.objectiveAt(settled.point),
                Double.NEGATIVE_INFINITY,
                settled.point,
                nodes,
                NONE,
                NONE);
    }

    /** Parts whose values are settled, and these values. */
    private final class Settled {

        private final BitSet done = new BitSet();
        private double[] point = new double[place.length];

        /** Whether a part is the last one of a joint. */
        private boolean completes(int part, Joint joint) {
            BitSet others = (BitSet) joint.parts().clone();
            others.clear(part);
            int joined = others.cardinality();
            others.and(done);
            return joint.parts().get(part) && others.cardinality() == joined;
        }

        /** Takes a part's values, if there are any and what joins it to settled parts is kept. */
        private boolean take(int part, Outcome outcome) {
            if (!outcome.hasPoint()) {
                return false;
            }
            double[] next = point.clone();
            for (int i = 0; i < next.length; i++) {
                if (part(i) == part) {
                    next[i] = outcome.point()[place[i]];
                }
            }
            for (Joint joint : joints) {
                if (completes(part, joint) && !joint.keptBy(next)) {
                    return false;
                }
            }
            point = next;
            done.set(part);
            return true;
        }
    }

    /** A part as a model of its own, with what joins it to settled parts; the rest is priced. */
    private MipModel single(int part, Settled settled) {
        MipModel single = new MipModel(model.name());
        Var[] vars = new Var[place.length];
        for (int i = 0; i < vars.length; i++) {
            if (part(i) == part) {
                vars[i] = single.column(model.columns().get(i));
            }
        }
        single.cost(1, ownTerms(model.objective(), vars));
        for (MipModel.Row row : own.get(part)) {
            single.addRow(row.name(), ownTerms(row.expr(), vars), row.lower(), row.upper());
        }
        for (Joint joint : joints) {
            MipModel.Row row = joint.row();
            if (settled.completes(part, joint)) {
                double others = row.expr().value(settled.point);
                single.addRow(row.name(), ownTerms(row.expr(), vars), row.lower() - others, row.upper() - others);
            } else if (joint.price() != 0 && joint.parts().get(part)) {
                single.cost(-joint.price(), ownTerms(row.expr(), vars));
            }
        }
        return single;
    }

    private static Expr ownTerms(Expr expr, Var[] vars) {
        Expr terms = new Expr();
        expr.forEachTerm((i, value) -> {
            if (vars[i] != null) {
                terms.add(value, vars[i]);
            }
        });
        return terms;
    }
}
