/**
 * Every table, column and setting of a scenario, declared once: name, type, unit, range, default and meaning. The
 * checker, the documentation, the JSON Schema and the table schema are all made from these declarations.
 */
package depot.optimizer.dictionary;
