/** What a plan says: immutable records that the solver fills, the replay tests and the report writes. Imports scenario only. */
package depot.optimizer.plan;
