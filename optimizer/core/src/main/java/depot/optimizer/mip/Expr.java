package depot.optimizer.mip;

import java.util.Arrays;

/** A linear expression under construction: a sum of coefficient times variable. Terms of one variable add up when it is used. */
public final class Expr {

    private int[] indices = new int[8];
    private double[] coefficients = new double[8];
    private int size;

    /** An empty sum. */
    public Expr() {}

    /** The sum of variables. */
    public static Expr sum(Iterable<Var> vars) {
        Expr expr = new Expr();
        vars.forEach(v -> expr.add(1, v));
        return expr;
    }

    /** Adds a term; a zero coefficient is dropped. */
    public Expr add(double coefficient, Var var) {
        if (coefficient != 0) {
            append(coefficient, var.index());
        }
        return this;
    }

    /** Adds another expression times a factor. */
    public Expr add(double factor, Expr other) {
        for (int i = 0; i < other.size; i++) {
            append(factor * other.coefficients[i], other.indices[i]);
        }
        return this;
    }

    private void append(double coefficient, int index) {
        if (size == indices.length) {
            indices = Arrays.copyOf(indices, 2 * size);
            coefficients = Arrays.copyOf(coefficients, 2 * size);
        }
        indices[size] = index;
        coefficients[size++] = coefficient;
    }

    /** Whether no term was added. */
    public boolean isEmpty() {
        return size == 0;
    }

    /** Takes a variable's place in the model and its coefficient. */
    @FunctionalInterface
    interface TermSink {
        void accept(int index, double coefficient);
    }

    /** Hands out one term for each variable, in the order of the model's variables; terms that cancel out are left out. */
    void forEachTerm(TermSink sink) {
        long[] order = new long[size];
        for (int i = 0; i < size; i++) {
            order[i] = ((long) indices[i] << 32) | i;
        }
        Arrays.sort(order);
        for (int i = 0; i < size; ) {
            int index = (int) (order[i] >> 32);
            double sum = 0;
            for (; i < size && (int) (order[i] >> 32) == index; i++) {
                sum += coefficients[(int) order[i]];
            }
            if (sum != 0) {
                sink.accept(index, sum);
            }
        }
    }

    /** Value at a point, indexed like the model's variables. */
    public double value(double[] point) {
        double value = 0;
        for (int i = 0; i < size; i++) {
            value += coefficients[i] * point[indices[i]];
        }
        return value;
    }
}
