package depot.optimizer.sweep.spec;

import depot.optimizer.check.Finding;
import java.util.List;
import java.util.Optional;

/**
 * What came of loading a sweep's file.
 *
 * @param sweep present if and only if nothing was found
 * @param findings all of them errors, by line; the file's name in them is the one that the user gave
 * @param hash SHA-256 of the file
 */
public record LoadedSweep(Optional<Sweep> sweep, List<Finding> findings, String hash) {}
