package depot.optimizer.tariff;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What is to be imported, and how.
 *
 * @param record file with the record
 * @param label of the record in a file with several; empty: the file has one
 * @param scenario folder whose currency and seasons the tariff has to fit
 * @param tariff name of the tariff in the scenario
 * @param seasonMonths texts such as {@code winter=Oct-Mar}; none: the prices must be alike all year
 * @param perDollar what a US dollar is worth in the scenario's currency; empty: the scenario counts in US dollars
 * @param leftOut parts that the user can do without
 */
public record ImportRequest(
        Path record,
        Optional<String> label,
        Path scenario,
        String tariff,
        List<String> seasonMonths,
        Optional<BigDecimal> perDollar,
        Set<RecordPart> leftOut,
        KilovoltAmperes kilovoltAmperes,
        Target target) {

    /** Copies the collections. */
    public ImportRequest {
        seasonMonths = List.copyOf(seasonMonths);
        leftOut = Set.copyOf(leftOut);
    }

    /** How a demand price per kVA is taken. */
    public enum KilovoltAmperes {
        /** Not at all. */
        REFUSED,
        /** As one per kW: right at a power factor of 1. */
        AS_KILOWATTS
    }

    /** Where the rows go. */
    public enum Target {
        /** At the end of the scenario's tables; the tariff must not be there yet. */
        ADD,
        /** Into the scenario's tables, in the place of the rows of a tariff of this name. */
        REPLACE,
        /** Into tables of their own. */
        NEW_TABLES
    }
}
