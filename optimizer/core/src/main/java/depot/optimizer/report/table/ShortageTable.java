package depot.optimizer.report.table;

import depot.optimizer.plan.ExplainedShortage;
import depot.optimizer.report.text.DayNames;
import depot.optimizer.report.text.Figures;
import java.util.Currency;
import java.util.List;
import java.util.OptionalDouble;

/** shortages.csv: work that the packs do not cover, why, and what would cure it. */
public final class ShortageTable {

    private ShortageTable() {}

    /** One row per season day, trip and pack family that falls short; only the heading when none does. */
    public static CsvTable of(String currency, List<ExplainedShortage> shortages) {
        int decimals = Figures.decimals(Currency.getInstance(currency));
        CsvTable table = new CsvTable(
                "shortages.csv",
                "depot",
                "season",
                "day",
                "crew",
                "trip",
                "pack_family",
                "short_wh",
                "days_per_year",
                "present_cost_of_covering_otherwise",
                "limit",
                "cheapest_cure",
                "present_cost_change_with_cure",
                "currency");
        for (ExplainedShortage shortage : shortages) {
            table.row(row -> row.text(shortage.depot())
                    .text(shortage.occurrence().season())
                    .text(DayNames.weekday(shortage.occurrence().day()))
                    .text(shortage.crew())
                    .count(shortage.trip())
                    .text(shortage.family())
                    .number(shortage.wattHours(), 1)
                    .number(shortage.daysPerYear(), 3)
                    .text(amount(shortage.presentCost(), decimals))
                    .text(shortage.limit())
                    .text(shortage.cure())
                    .text(amount(shortage.curePresentCost(), decimals))
                    .text(currency));
        }
        return table;
    }

    private static String amount(OptionalDouble value, int decimals) {
        return value.isPresent() ? Figures.plain(value.getAsDouble(), decimals) : "";
    }
}
