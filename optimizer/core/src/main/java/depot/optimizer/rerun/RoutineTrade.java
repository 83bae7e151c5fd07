package depot.optimizer.rerun;

/**
 * What keeping the daily routine comes to in a depot.
 *
 * @param linesFree lines of the routine that the cheapest plan found changes, each season day by itself
 * @param linesKept lines that the plan changes
 * @param costMore present cost of the plan less that of the cheapest one
 */
public record RoutineTrade(int linesFree, int linesKept, double costMore) {}
