/** The fleet as it was checked: immutable records, units in the names of their components. Imports no stage. */
package depot.optimizer.scenario;
