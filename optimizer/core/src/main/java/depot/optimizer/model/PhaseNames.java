package depot.optimizer.model;

import depot.optimizer.mip.MipModel;
import depot.optimizer.problem.DepotRollout;

/** Tells the phases' names apart in one model, and makes each a part of it; those of a single phase stay as they are. */
public final class PhaseNames {
    private PhaseNames() {}

    /** From here on, names are those of a phase, and variables belong to it. */
    public static void enter(MipModel model, DepotRollout rollout, int phase) {
        if (rollout.phases().size() > 1) {
            model.scope(model.scope() + rollout.phases().get(phase).phase() + ":");
            model.part(phase);
        }
    }

    /** Back to the names that held before. */
    public static void leave(MipModel model, DepotRollout rollout, int phase) {
        if (rollout.phases().size() > 1) {
            String own = rollout.phases().get(phase).phase() + ":";
            model.scope(model.scope().substring(0, model.scope().length() - own.length()));
            model.part(0);
        }
    }
}
