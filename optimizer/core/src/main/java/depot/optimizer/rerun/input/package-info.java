/** What has changed in the tables of a scenario, cell by cell. */
package depot.optimizer.rerun.input;
