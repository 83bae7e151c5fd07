package depot.optimizer.scenario;

/**
 * What a depreciation schedule writes off in one year.
 *
 * @param schedule name of the schedule
 * @param year after the payment, from 1
 * @param share of the price, 0 to 1; the shares of a schedule add to 1
 */
public record DepreciationShare(String schedule, int year, double share) {}
