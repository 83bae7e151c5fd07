package depot.optimizer.scenario;

import java.math.BigDecimal;

/**
 * A depot that a crew could work from, and what that costs a year. A crew can always work from its own depot; a row of it
 * only says what that costs.
 */
public record CrewBase(String crew, String depot, BigDecimal costPerYear) {}
