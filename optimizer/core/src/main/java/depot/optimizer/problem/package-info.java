/**
 * The sub-problem of one depot, made from the scenario: trips with their energy needs, day cycles with handovers and price slices. Records
 * only, so that a sub-problem can travel. The replay must not use this package: it works the same facts out on its own.
 */
package depot.optimizer.problem;
