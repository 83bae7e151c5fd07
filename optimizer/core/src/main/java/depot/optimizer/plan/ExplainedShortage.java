package depot.optimizer.plan;

import java.util.OptionalDouble;

/**
 * Why a trip falls short, and the cheapest single change that would cure the depot's shortages.
 *
 * @param occurrence season and weekday
 * @param wattHours not covered on that trip
 * @param daysPerYear how often that happens
 * @param presentCost what it costs to cover otherwise, empty: shortage is forbidden and has no price
 * @param limit the limit that binds, in plain words
 * @param cure the cheapest change found, in plain words with its size
 * @param curePresentCost what the plan would cost more or less with the cure, building work without a price in the tables left out;
 *     empty: no single change cures it
 */
public record ExplainedShortage(
        String depot,
        String phase,
        SeasonDay occurrence,
        String crew,
        int trip,
        String family,
        double wattHours,
        double daysPerYear,
        OptionalDouble presentCost,
        String limit,
        String cure,
        OptionalDouble curePresentCost) {}
