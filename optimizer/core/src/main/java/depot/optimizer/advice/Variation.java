package depot.optimizer.advice;

import depot.optimizer.problem.PieceLimit;
import java.util.List;

/**
 * A way in which another plan has to differ from the one asked about, which breaks these limits.
 *
 * @param words such as "no new circuits"
 */
public record Variation(String words, List<PieceLimit> limits) {

    /** Copies the list. */
    public Variation {
        limits = List.copyOf(limits);
    }
}
