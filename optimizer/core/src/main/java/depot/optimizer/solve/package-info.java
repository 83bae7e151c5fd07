/** Solves one depot: binding days, limits, outcome, and the plan read from the solver's point. */
package depot.optimizer.solve;
