package depot.optimizer.scenario;

import java.math.BigDecimal;

/** A depot that a crew could work from, and what that costs a year. */
public record CrewBase(String crew, String depot, BigDecimal costPerYear) {}
