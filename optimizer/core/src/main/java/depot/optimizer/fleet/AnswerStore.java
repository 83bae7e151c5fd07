package depot.optimizer.fleet;

import depot.optimizer.plan.DepotPlan;
import java.util.List;
import java.util.Optional;

/**
 * Keeps what depots answered to prices of shared limits, so that a run that was broken off goes on where it was. An answer depends on nothing but the
 * scenario and its question; so a run that finds some answers here ends with the same plan as one that works them all out. Called from several threads.
 */
public interface AnswerStore {

    /** Keeps nothing. */
    AnswerStore NONE = new AnswerStore() {
        @Override
        public Optional<Answer> find(String question) {
            return Optional.empty();
        }

        @Override
        public void keep(String question, Answer answer) {}
    };

    /**
     * A depot's answer.
     *
     * @param phases its plan in each phase
     * @param bound no plan of the depot costs less, prices of shared limits included
     */
    record Answer(List<DepotPlan> phases, double bound) {}

    /** The answer to a question that was asked before. */
    Optional<Answer> find(String question);

    /** Keeps an answer. */
    void keep(String question, Answer answer);
}
