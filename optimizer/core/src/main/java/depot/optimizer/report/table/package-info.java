/** The CSV tables of a run: one class per table, and what tables and pages both count. */
package depot.optimizer.report.table;
