package depot.optimizer.sweep.spec;

import depot.optimizer.dictionary.ChangeKind;
import depot.optimizer.sweep.change.Change;
import java.math.BigDecimal;

/** Losses that are changes of the scenario. */
public final class LossChanges {
    private LossChanges() {}

    /** All crews come back later. */
    public static Change late(int minutes) {
        return new Change(ChangeKind.LATE_RETURN, "", BigDecimal.valueOf(minutes));
    }
}
