/**
 * The mixed-integer model of one depot. Variables sit in typed holders; each family of constraints is a class named by its rule;
 * {@link depot.optimizer.model.DepotModel} lists them in order.
 */
package depot.optimizer.model;
