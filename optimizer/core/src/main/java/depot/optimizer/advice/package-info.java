/** Answers to a manager's questions about a plan: how it compares with rules of thumb, why it buys what it buys, and what would be next best. */
package depot.optimizer.advice;
