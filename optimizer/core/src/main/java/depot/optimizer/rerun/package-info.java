/** Plans a fleet again after its tables have changed: what an earlier run bought is there, and depots that nothing touches keep their plan. */
package depot.optimizer.rerun;
