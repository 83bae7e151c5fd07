/**
 * The independent proof of a plan: it reads a scenario and a plan, works out trips, needs, limits and prices anew, and runs every day
 * minute by minute. Imports scenario and plan only.
 */
package depot.optimizer.replay;
