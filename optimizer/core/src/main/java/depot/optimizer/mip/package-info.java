/** Mixed-integer programs: variables, expressions, rows, limits, outcomes, export. The only package that imports the solver. */
package depot.optimizer.mip;
