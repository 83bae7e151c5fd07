package depot.optimizer.solve;

import depot.optimizer.mip.Outcome;
import depot.optimizer.mip.Outcome.Stop;

/** A first look at a master: its point and bound after little work, or after more where little finds no point. */
final class FirstLook {

    /** Share of the gap that a first look may leave; the rest is for the days outside the master and for whole numbers of loads. */
    static final double MASTER_SHARE = 0.5;

    /** Nodes, times the master's variables. */
    private static final long WORK = 200_000;

    /** Times the nodes that the next attempt gets where one found no point. */
    private static final int MORE_NODES = 4;

    private final SearchTask task;
    private final Stage stage;
    private final long most;

    /** @param most nodes for a single attempt */
    FirstLook(SearchTask task, Stage stage, long most) {
        this.task = task;
        this.stage = stage;
        this.most = most;
    }

    /**
     * A point with its bound, and the nodes of all attempts.
     *
     * @throws NoPlanException when none is found within the limits
     * @throws NeedsCannotBeMetException when shortage is refused and no purchases meet every need
     */
    Outcome at(MasterProblem master) {
        if (!task.byPhase()) {
            return asAWhole(master);
        }
        Outcome byPhase = byPhase(master);
        return byPhase.hasPoint() ? byPhase : asAWhole(master).after(byPhase.bound(), byPhase.nodes());
    }

    private Outcome asAWhole(MasterProblem master) {
        long few = Math.min(most, master.nodes(WORK));
        Outcome outcome = solve(master, few);
        while (!outcome.hasPoint() && outcome.stop() != Stop.INFEASIBLE && few < most) {
            few = Math.min(most, few * MORE_NODES);
            outcome = solve(master, few).after(Double.NEGATIVE_INFINITY, outcome.nodes());
        }
        task.refuseInfeasible(outcome);
        if (!outcome.hasPoint()) {
            throw task.noPlan(outcome);
        }
        return outcome;
    }

    private Outcome solve(MasterProblem master, long nodes) {
        return master.solve(stage, task.limits(task.gap() * MASTER_SHARE, nodes));
    }

    /** Each phase is that much smaller, and gets the more nodes. */
    private Outcome byPhase(MasterProblem master) {
        Outcome linear = master.relaxed(task.limits(0, 0));
        if (!linear.hasPoint()) {
            return linear;
        }
        long few = Math.min(most, task.rollout().phases().size() * master.nodes(WORK));
        return master.solveByPhase(stage, linear, task.limits(task.gap() * MASTER_SHARE, few));
    }
}
