package depot.optimizer.advice;

import java.util.List;
import java.util.Optional;

/**
 * What there is to say about the plan of one depot. Parts that were not asked for are empty.
 *
 * @param planned the plan asked about
 * @param thumb the plan by rules of thumb
 * @param reasons one for each line of what is bought
 * @param limits what limits would be worth
 * @param alternatives other plans, the cheapest first, then variations without one
 */
public record DepotAdvice(
        String depot,
        ReplayedPlan planned,
        List<Piece> pieces,
        Optional<ReplayedPlan> thumb,
        List<Reason> reasons,
        List<LimitWorth> limits,
        List<Alternative> alternatives) {}
