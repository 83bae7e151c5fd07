package depot.optimizer.advice;

import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.PieceLimit;
import depot.optimizer.scenario.Scenario;
import java.util.List;

/** Solves a depot again with something changed. Called from several threads. */
interface Resolving {

    /** The plan asked about. */
    ReplayedPlan base();

    /** The scenario that it was made for. */
    Scenario scenario();

    /** The depot's problem in each phase. */
    List<DepotProblem> problems();

    /**
     * The depot with fewer pieces allowed.
     *
     * @param limits for each phase
     */
    Answer harder(List<List<PieceLimit>> limits);

    /** The depot in a scenario in which it may do more. */
    Answer easier(Scenario changed);
}
