/** Plans a depot the way it is done without a model, by rules of thumb. What comes of it is a plan like any other, for the replay to judge. */
package depot.optimizer.advice.thumb;
