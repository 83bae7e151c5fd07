package depot.optimizer.sweep;

import depot.optimizer.plan.Plan;
import java.util.Optional;

/** Keeps finished plans of depots, so that a sweep that was interrupted goes on where it stopped. Called from several threads. */
public interface CaseStore {

    /** Keeps nothing. */
    CaseStore NONE = new CaseStore() {
        @Override
        public Optional<Plan> find(String key) {
            return Optional.empty();
        }

        @Override
        public void keep(String key, Plan plan) {}
    };

    /** The plan that was kept under a key; empty: none, or it can no longer be read. */
    Optional<Plan> find(String key);

    /** Keeps a plan of one depot. */
    void keep(String key, Plan plan);
}
