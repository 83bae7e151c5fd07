package depot.optimizer.mip;

import com.google.ortools.Loader;
import com.google.ortools.init.OrToolsVersion;
import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPObjective;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPSolverParameters;
import com.google.ortools.linearsolver.MPVariable;
import depot.optimizer.mip.Outcome.Stop;
import java.util.ArrayList;
import java.util.List;

/** A model handed to the native solver. Its memory is not the garbage collector's: it must be closed. */
final class NativeSolver implements AutoCloseable {

    static {
        Loader.loadNativeLibraries();
    }

    /**
     * Measured on generated depots. Inference branching is two to three times as fast as the default, which spends its time on strong branching; few
     * rounds of cuts at the root and none below it are twice as fast again; first looks take a fifth less time where equations are not added to one
     * another to cancel terms. (Without probing it would be another fifth, but then the same model was seen to be solved differently from run to run.)
     * Ctrl-C is for the program, not for a single solve.
     */
    private static final String INFERENCE = """
            branching/inference/priority = 100000
            presolving/dualsparsify/maxrounds = 0
            """;

    private static final String TUNING = """
            separating/maxroundsroot = 5
            separating/maxrounds = 0
            misc/catchctrlc = FALSE
            """;

    /** Pivots after which the simplex is taken to go round in circles, which it was seen to do for good on a degenerate master: some, and so many for each variable and row. */
    private static final long FEWEST_PIVOTS = 10_000;

    private static final long PIVOTS = 50;

    private final Engine engine;
    private final MipModel model;
    private final MPSolver solver;
    private final MPVariable[] variables;
    private final List<MPConstraint> constraints = new ArrayList<>();

    NativeSolver(Engine engine, MipModel model) {
        this.engine = engine;
        this.model = model;
        solver = MPSolver.createSolver(engine.engineId());
        if (solver == null) {
            throw new IllegalStateException("the solver library has no engine " + engine.engineId());
        }
        variables = new MPVariable[model.columns().size()];
        addColumns();
        addRows();
        addObjective();
    }

    static String version() {
        return "OR-Tools " + OrToolsVersion.getVersionString();
    }

    private void addColumns() {
        List<MipModel.Column> columns = model.columns();
        for (int i = 0; i < variables.length; i++) {
            MipModel.Column c = columns.get(i);
            variables[i] = solver.makeVar(c.lower(), c.upper(), c.integer() && !engine.linear(), c.name());
        }
    }

    private void addRows() {
        for (MipModel.Row row : model.rows()) {
            MPConstraint constraint = solver.makeConstraint(row.lower(), row.upper(), row.name());
            row.expr().forEachTerm((i, value) -> constraint.setCoefficient(variables[i], value));
            constraints.add(constraint);
        }
    }

    private void addObjective() {
        MPObjective objective = solver.objective();
        model.objective().forEachTerm((i, value) -> objective.setCoefficient(variables[i], value));
        objective.setOffset(model.objectiveConstant());
        objective.setMinimization();
    }

    Outcome solve(Limits limits) {
        if (engine.limitsNodes()) {
            String absolute = limits.absoluteGap() > 0 ? "limits/absgap = " + limits.absoluteGap() + "\n" : "";
            solver.setSolverSpecificParametersAsString((engine.infers() ? INFERENCE : "") + TUNING + absolute
                    + "limits/nodes = " + limits.nodes() + "\nrandomization/randomseedshift = " + limits.seed() + "\n");
        }
        if (engine == Engine.SIMPLEX) {
            long most = FEWEST_PIVOTS + PIVOTS * (variables.length + constraints.size());
            solver.setSolverSpecificParametersAsString("max_number_of_iterations: " + most + "\n");
        }
        solver.setTimeLimit((long) (limits.seconds() * 1000));
        MPSolverParameters parameters = new MPSolverParameters();
        try {
            parameters.setDoubleParam(MPSolverParameters.DoubleParam.RELATIVE_MIP_GAP, limits.relativeGap());
            return outcome(solver.solve(parameters), limits);
        } finally {
            parameters.delete();
        }
    }

    private Outcome outcome(MPSolver.ResultStatus status, Limits limits) {
        double[] none = new double[0];
        // A point of a linear program that is not known to be its best bounds nothing.
        boolean feasible = status == MPSolver.ResultStatus.FEASIBLE;
        if (status == MPSolver.ResultStatus.OPTIMAL || (feasible && !engine.linear())) {
            double[] point = new double[variables.length];
            for (int i = 0; i < point.length; i++) {
                point[i] = variables[i].solutionValue();
            }
            double objective = solver.objective().value();
            boolean linear = engine.linear();
            double bound =
                    linear ? objective : Math.min(objective, solver.objective().bestBound());
            boolean closed = status == MPSolver.ResultStatus.OPTIMAL
                    || objective - bound
                            <= Math.max(limits.absoluteGap(), limits.relativeGap() * Math.abs(objective)) + 1e-9;
            return new Outcome(
                    closed ? Stop.GAP_REACHED : Stop.LIMIT_REACHED,
                    objective,
                    bound,
                    point,
                    linear ? 0 : solver.nodes(),
                    linear ? reducedCosts() : none,
                    linear ? duals() : none);
        }
        Stop stop =
                switch (status) {
                    case INFEASIBLE -> Stop.INFEASIBLE;
                    case NOT_SOLVED, FEASIBLE -> Stop.LIMIT_REACHED;
                    default -> Stop.FAILED;
                };
        return new Outcome(stop, Double.NaN, Double.NEGATIVE_INFINITY, none, 0, none, none);
    }

    private double[] duals() {
        return constraints.stream().mapToDouble(MPConstraint::dualValue).toArray();
    }

    private double[] reducedCosts() {
        double[] costs = new double[variables.length];
        for (int i = 0; i < costs.length; i++) {
            costs[i] = variables[i].reducedCost();
        }
        return costs;
    }

    @Override
    public void close() {
        solver.delete();
    }
}
