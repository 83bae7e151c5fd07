/** How times, numbers and days are written, the same in tables and on pages and whatever the machine's language. */
package depot.optimizer.report.text;
