package depot.optimizer.mip;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** A minimisation problem in memory: any engine can be given it, and it can be written to a file. */
public final class MipModel {

    /** Bound that means none. */
    public static final double INFINITY = Double.POSITIVE_INFINITY;

    /** @param part of the model that the variable belongs to */
    record Column(String name, double lower, double upper, boolean integer, int part) {

        Column within(double least, double most) {
            return new Column(name, least, most, integer, part);
        }
    }

    record Row(String name, Expr expr, double lower, double upper) {}

    private final String name;
    private final List<Column> columns = new ArrayList<>();
    private final List<Row> rows = new ArrayList<>();
    private final Set<String> names = new HashSet<>();
    private final Expr objective = new Expr();
    private double objectiveConstant;
    private String scope = "";
    private int part;

    /** An empty model. */
    public MipModel(String name) {
        this.name = name;
    }

    /** From here on, names begin with this, so that several parts of a model may use the same ones. */
    public void scope(String prefix) {
        scope = prefix;
    }

    /** What names begin with at the moment. */
    public String scope() {
        return scope;
    }

    /** From here on, variables belong to this part of the model (see {@link PricedParts}); 0 at first. */
    public void part(int number) {
        part = number;
    }

    /** A variable between two bounds. */
    public Var continuous(String varName, double lower, double upper) {
        return column(new Column(scope + varName, lower, upper, false, part));
    }

    /** A whole-number variable between two bounds. */
    public Var integer(String varName, double lower, double upper) {
        return column(new Column(scope + varName, lower, upper, true, part));
    }

    /** A variable that is 0 or 1. */
    public Var binary(String varName) {
        return integer(varName, 0, 1);
    }

    /** A column of a model like this one; its part counts as well. */
    Var column(Column column) {
        unique(column.name());
        if (column.lower() > column.upper()) {
            throw new IllegalArgumentException(
                    column.name() + ": lower bound " + column.lower() + " is above upper bound " + column.upper());
        }
        columns.add(column);
        return new Var(columns.size() - 1, column.name());
    }

    private void unique(String key) {
        if (!names.add(key)) {
            throw new IllegalArgumentException("the name " + key + " is used twice in model " + name);
        }
    }

    /** The same model in which only some of the whole-number variables have to be whole: a relaxation. */
    public MipModel wholeOnly(Set<Var> whole) {
        boolean[] kept = new boolean[columns.size()];
        whole.forEach(var -> kept[var.index()] = true);
        MipModel relaxed = new MipModel(name);
        for (int i = 0; i < kept.length; i++) {
            Column c = columns.get(i);
            relaxed.columns.add(new Column(c.name(), c.lower(), c.upper(), c.integer() && kept[i], c.part()));
        }
        relaxed.rows.addAll(rows);
        relaxed.objective.add(1, objective);
        relaxed.objectiveConstant = objectiveConstant;
        return relaxed;
    }

    /** The same model without the points that cost more than an amount. */
    public MipModel costingAtMost(double amount) {
        MipModel cut = within(List.of(), new double[0], new double[0]);
        cut.row("costAtMost", new Expr().add(1, objective), -INFINITY, amount - objectiveConstant);
        return cut;
    }

    /** The same model in which some variables have a value each; one outside its bounds, by a rounding error, is put back to the nearest bound. */
    public MipModel fixed(List<Var> vars, double[] values) {
        double[] nearest = new double[values.length];
        for (int j = 0; j < values.length; j++) {
            Column c = columns.get(vars.get(j).index());
            nearest[j] = Math.max(c.lower(), Math.min(c.upper(), values[j]));
        }
        return within(vars, nearest, nearest);
    }

    /**
     * The same model in which some variables lie in narrower bounds: its points are points of this one.
     *
     * @param lower new lower bounds; those below the variable's own do nothing
     * @param upper new upper bounds, likewise
     */
    public MipModel within(List<Var> vars, double[] lower, double[] upper) {
        MipModel narrowed = new MipModel(name);
        narrowed.columns.addAll(columns);
        for (int j = 0; j < lower.length; j++) {
            int i = vars.get(j).index();
            Column c = columns.get(i);
            narrowed.columns.set(i, c.within(Math.max(c.lower(), lower[j]), Math.min(c.upper(), upper[j])));
        }
        narrowed.rows.addAll(rows);
        narrowed.objective.add(1, objective);
        narrowed.objectiveConstant = objectiveConstant;
        return narrowed;
    }

    /** expr <= bound. */
    public void atMost(String rowName, Expr expr, double bound) {
        row(rowName, expr, -INFINITY, bound);
    }

    /** expr >= bound. */
    public void atLeast(String rowName, Expr expr, double bound) {
        row(rowName, expr, bound, INFINITY);
    }

    /** expr = value. */
    public void equal(String rowName, Expr expr, double value) {
        row(rowName, expr, value, value);
    }

    /** lower <= expr <= upper, with a name that is whole already. */
    void addRow(String whole, Expr expr, double lower, double upper) {
        rows.add(new Row(whole, expr, lower, upper));
    }

    private void row(String rowName, Expr expr, double lower, double upper) {
        if (expr.isEmpty() && lower <= 0 && upper >= 0) {
            return;
        }
        unique(scope + rowName);
        rows.add(new Row(scope + rowName, expr, lower, upper));
    }

    /** Adds a term to the objective, which is minimised. */
    public void cost(double coefficient, Var var) {
        objective.add(coefficient, var);
    }

    /** Adds an expression times a factor to the objective. */
    public void cost(double factor, Expr expr) {
        objective.add(factor, expr);
    }

    /** Adds a cost that no decision changes. */
    public void cost(double constant) {
        objectiveConstant += constant;
    }

    /** Name of the model. */
    public String name() {
        return name;
    }

    /** Number of variables. */
    public int variableCount() {
        return columns.size();
    }

    /** Number of rows. */
    public int rowCount() {
        return rows.size();
    }

    /** Objective value at a point. */
    public double objectiveAt(double[] point) {
        return objective.value(point) + objectiveConstant;
    }

    /** Names of rows that a point breaks by more than a tolerance, each with how far; bounds and whole numbers included. */
    public List<String> violations(double[] point, double tolerance) {
        List<String> broken = new ArrayList<>();
        for (int i = 0; i < columns.size(); i++) {
            Column c = columns.get(i);
            double off = Math.max(c.lower() - point[i], point[i] - c.upper());
            double fraction = c.integer() ? Math.abs(point[i] - Math.rint(point[i])) : 0;
            if (Math.max(off, fraction) > tolerance) {
                broken.add(c.name() + " = " + point[i]);
            }
        }
        for (Row row : rows) {
            double value = row.expr().value(point);
            double off = Math.max(row.lower() - value, value - row.upper());
            if (off > tolerance * Math.max(1, Math.abs(value))) {
                broken.add(row.name() + " off by " + off);
            }
        }
        return broken;
    }

    List<Column> columns() {
        return columns;
    }

    List<Row> rows() {
        return rows;
    }

    Expr objective() {
        return objective;
    }

    double objectiveConstant() {
        return objectiveConstant;
    }
}
