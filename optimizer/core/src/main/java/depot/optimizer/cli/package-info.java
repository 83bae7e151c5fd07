/** The command line: one class per command, exit statuses, progress and messages. The only importer of picocli. */
package depot.optimizer.cli;
