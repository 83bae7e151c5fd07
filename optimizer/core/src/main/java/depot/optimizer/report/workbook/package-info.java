/** Workbooks whose numbers recalculate. The only importer of the workbook library. */
package depot.optimizer.report.workbook;
