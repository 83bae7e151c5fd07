/** Plans all depots and proves the fleet's cost. */
package depot.optimizer.fleet;
