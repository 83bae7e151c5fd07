package depot.optimizer.advice;

import java.util.Optional;

/**
 * Why a plan buys something.
 *
 * @param phase id of the phase that buys it
 * @param piece as it stands in that phase
 * @param binding when it is needed most in that phase, empty: its days do not use it
 * @param without the depot solved again without any of it; in several phases without what this phase buys, from then on
 * @param oneFewer the same with one fewer, empty: there is only one
 * @param later the same when it may be bought in a later phase, empty: there is none
 */
public record Reason(
        String phase,
        Piece piece,
        Optional<Binding> binding,
        Answer without,
        Optional<Answer> oneFewer,
        Optional<Answer> later) {}
