package depot.optimizer.advice;

import java.util.Optional;

/**
 * Why a plan buys something.
 *
 * @param binding when it is needed most, empty: the plan's days do not use it
 * @param without the depot solved again without any of it
 * @param oneFewer the same with one fewer, empty: there is only one
 */
public record Reason(Piece piece, Optional<Binding> binding, Answer without, Optional<Answer> oneFewer) {}
