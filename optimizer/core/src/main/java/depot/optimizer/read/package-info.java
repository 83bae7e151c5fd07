/**
 * Reads the files of a scenario into raw rows that still know their file, line and column. Knows how files are written,
 * not what their values mean.
 */
package depot.optimizer.read;
