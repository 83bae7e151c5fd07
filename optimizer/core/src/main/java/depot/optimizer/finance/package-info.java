/** Present costs and annuities. Imports scenario only. */
package depot.optimizer.finance;
