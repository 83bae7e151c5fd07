/** What a sweep changes: each change is a function from one scenario to another, and touches nothing but what its kind says. */
package depot.optimizer.sweep.change;
