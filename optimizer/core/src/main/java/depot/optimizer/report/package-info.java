/**
 * Everything written to outputs: plan.json, the tables and the pages of a run. Imports scenario, plan and replay only.
 */
package depot.optimizer.report;
