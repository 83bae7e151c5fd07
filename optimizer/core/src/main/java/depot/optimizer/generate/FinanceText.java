package depot.optimizer.generate;

import depot.optimizer.dictionary.FinanceTables.Depreciation;
import depot.optimizer.scenario.DepreciationShare;
import depot.optimizer.scenario.FinanceTerms;
import java.util.List;

/** Tables of finance. */
final class FinanceText {
    private FinanceText() {}

    static List<TableText> tables(FinanceTerms terms) {
        return List.of(TableText.of(Depreciation.TABLE, terms.schedules(), FinanceText::share));
    }

    private static void share(TableText.Row row, DepreciationShare share) {
        row.put(Depreciation.SCHEDULE, share.schedule())
                .put(Depreciation.YEAR, share.year())
                .put(Depreciation.SHARE, share.share());
    }
}
