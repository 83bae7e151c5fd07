/** Runs side by side. */
package depot.optimizer.report.compare;
