/**
 * Turns a record of the open utility-rate database (OpenEI, format versions 3 to 8) into rows of {@code tariffs.csv} and
 * {@code tariff_terms.csv}, or says all that keeps it from being one. Writes no file itself.
 */
package depot.optimizer.tariff;
