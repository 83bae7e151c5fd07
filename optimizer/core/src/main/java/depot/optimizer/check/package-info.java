/**
 * Checks a scenario and makes its records: one function per rule, every finding collected with its file, line, column
 * and value. The only maker of a {@link depot.optimizer.scenario.Scenario}.
 */
package depot.optimizer.check;
