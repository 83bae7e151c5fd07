package depot.optimizer.advice.thumb;

/**
 * What a planner without a model goes by. The values usually taken are common practice, no source.
 *
 * @param spareShare packs bought on top of those that the hours ask for, as a share of them, 0 or more
 * @param breaker what counts as a full circuit
 */
public record ThumbSettings(double spareShare, Breaker breaker) {

    /** One spare pack for every five, and chargers plugged in up to the number printed on the breaker. */
    public static final ThumbSettings USUAL = new ThumbSettings(0.2, Breaker.FULL);

    /** When a circuit is taken to be full. */
    public enum Breaker {
        /** When the plates add up to the breaker's rating; what the circuit feeds already is not looked at. */
        FULL,
        /** When they add up to what the breaker may carry for hours beside what it feeds already, as an electrician would reckon. */
        USABLE
    }
}
