package depot.optimizer.advice;

import depot.optimizer.scenario.Scenario;

/**
 * A limit with a little more room.
 *
 * @param subject circuit, charger type or depot; for stops and vehicles: the depot, whose crews are meant all together
 * @param step how much more, in the limit's unit
 * @param scenario with the limit loosened
 */
public record Loosening(Limit limit, String subject, int step, Scenario scenario) {

    /** What is loosened. */
    public enum Limit {
        /** Rating of a circuit's breaker. */
        CIRCUIT_AMPS("A"),
        /** Outlets of a circuit. */
        OUTLETS("outlet"),
        /** Wall or bench places of the depot. */
        PLACES("place"),
        /** Bays of every charger of a type; how many charge at once stays. */
        BAYS("bay"),
        /** Rating of the depot's supply. */
        SUPPLY_AMPS("A"),
        /** The stay of crews at the depot in the middle of their day: they leave later, all other times stay. */
        LUNCH_MINUTES("min"),
        /** Pack places in every vehicle of the depot. */
        PACK_PLACES("place");

        private final String unit;

        Limit(String unit) {
            this.unit = unit;
        }

        /** Unit of the step. */
        public String unit() {
            return unit;
        }
    }
}
