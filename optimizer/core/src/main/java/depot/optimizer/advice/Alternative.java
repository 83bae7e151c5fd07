package depot.optimizer.advice;

import java.util.List;

/**
 * Another plan for a depot.
 *
 * @param pieces what it has, empty where there is no plan
 * @param within whether it is proven, meets every day and costs no more than was asked for
 * @param sameAs words of an earlier variation with the same purchases, empty: none
 */
public record Alternative(Variation variation, Answer answer, List<Piece> pieces, boolean within, String sameAs) {

    /** Copies the list. */
    public Alternative {
        pieces = List.copyOf(pieces);
    }
}
