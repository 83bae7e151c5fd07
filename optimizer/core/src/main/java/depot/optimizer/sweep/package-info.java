/** Many variations of one scenario: which cases a sweep has, their plans, and which of them serve each other. */
package depot.optimizer.sweep;
