package depot.optimizer.scenario;

/**
 * A part of the year in which the working days look alike.
 *
 * @param id key of the season
 * @param weeksPerYear how many weeks of a year belong to it
 * @param packCapacityFactor share of a pack's usable energy that is left at the season's temperature, 0 to 1
 */
public record Season(String id, double weeksPerYear, double packCapacityFactor) {}
