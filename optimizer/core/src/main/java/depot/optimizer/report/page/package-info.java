/**
 * The pages of a run: what they show, worked out and formatted here so that the templates only lay it out. report.html is the fleet,
 * depot-*.html one depot each; every page stands alone, without scripts or anything from elsewhere.
 */
package depot.optimizer.report.page;
