/** Synthetic fleets of any size from a seed, and writing a scenario as a folder of tables. */
package depot.optimizer.generate;
