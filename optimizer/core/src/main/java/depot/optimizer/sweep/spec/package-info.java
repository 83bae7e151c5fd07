/** What a sweep asks for: the records of its file, read and checked against the scenario, all findings at once. */
package depot.optimizer.sweep.spec;
