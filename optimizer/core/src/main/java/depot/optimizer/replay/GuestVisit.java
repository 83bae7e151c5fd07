package depot.optimizer.replay;

/**
 * A stay of another depot's crew at a depot.
 *
 * @param home depot that the crew belongs to
 * @param stop number in the route
 * @param fromMinute arrival, rounded up to a handover
 * @param toMinute departure, rounded down to a handover
 */
record GuestVisit(String crew, String home, int stop, int fromMinute, int toMinute) {}
