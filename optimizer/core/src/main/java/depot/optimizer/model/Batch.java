package depot.optimizer.model;

import depot.optimizer.mip.Var;

/**
 * Chargers of a batch span that hold at most a number of packs each.
 *
 * @param slots packs that each holds
 * @param chargers how many chargers are loaded like that
 * @param busyMinutes from the loading until the last pack is done, when nothing waits
 */
record Batch(BatchSpan span, int slots, Var chargers, int busyMinutes) {}
