package depot.optimizer.tariff;

import depot.optimizer.check.Finding;
import depot.optimizer.scenario.PriceBand;
import depot.optimizer.scenario.TariffTerms;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What came of an import.
 *
 * @param findings in the order in which they were found; their files are whole paths
 * @param rows present if and only if no finding is an error
 */
public record ImportedTariff(List<Finding> findings, Optional<Rows> rows) {
    /** Copies the list. */
    public ImportedTariff {
        findings = List.copyOf(findings);
    }

    /**
     * The tariff, and the tables with it.
     *
     * @param source name of the utility and its tariff, as the record has them
     * @param files new texts by the name of the file; files that stay as they are are not among them
     */
    public record Rows(String source, List<PriceBand> bands, TariffTerms terms, SortedMap<String, String> files) {
        /** Copies the collections. */
        public Rows {
            bands = List.copyOf(bands);
            files = Collections.unmodifiableSortedMap(new TreeMap<>(files));
        }
    }
}
