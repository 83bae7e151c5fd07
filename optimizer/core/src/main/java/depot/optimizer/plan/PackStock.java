package depot.optimizer.plan;

/**
 * How many packs of a type a pool has.
 *
 * @param pool id of the depot when packs are shared, of the crew when they are not
 * @param owned how many of the count are not bought
 * @param replacedPerYear packs worn out a year, over the whole pool
 */
public record PackStock(String pool, String packType, int count, int owned, double replacedPerYear) {}
