package depot.optimizer.check;

/**
 * A record and the row that it was made of.
 *
 * @param <T> type of the record
 */
record Located<T>(T value, TypedRow row) {}
