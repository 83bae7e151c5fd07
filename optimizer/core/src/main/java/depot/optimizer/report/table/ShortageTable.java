package depot.optimizer.report.table;

import static depot.optimizer.report.table.CommonColumns.CREW;
import static depot.optimizer.report.table.CommonColumns.CURRENCY;
import static depot.optimizer.report.table.CommonColumns.DEPOT;
import static depot.optimizer.report.table.CommonColumns.PHASE;
import static depot.optimizer.report.table.CommonColumns.TRIP;
import static depot.optimizer.report.table.OutputColumn.amount;
import static depot.optimizer.report.table.OutputColumn.number;
import static depot.optimizer.report.table.OutputColumn.words;

import depot.optimizer.plan.ExplainedShortage;
import depot.optimizer.report.text.DayNames;
import depot.optimizer.report.text.Figures;
import java.util.Currency;
import java.util.List;
import java.util.OptionalDouble;

/** shortages.csv: work that the packs do not cover, why, and what would cure it. */
public final class ShortageTable {

    private static final TableLayout LAYOUT = TableLayout.of(
            "shortages.csv",
            "day and trip whose work the packs do not cover",
            PHASE,
            DEPOT,
            words("season", "key of the season"),
            words("day", "day of the week"),
            CREW,
            TRIP,
            words("pack_family", "family of the packs that fall short"),
            number("short_wh", "Wh", "work that is not covered"),
            number("days_per_year", "days", "days of a year on which it is not"),
            amount("present_cost_of_covering_otherwise", "over the horizon, in today's money; blank: no price is set")
                    .orBlank(),
            words("limit", "what stands in the way; blank: not found").orBlank(),
            words("cheapest_cure", "least change that would cover it; blank: not found")
                    .orBlank(),
            amount("present_cost_change_with_cure", "what the plan costs more with it; blank: not worked out")
                    .orBlank(),
            CURRENCY);

    private ShortageTable() {}

    /** One row per season day, trip and pack family that falls short; only the heading when none does. */
    public static CsvTable of(String currency, List<ExplainedShortage> shortages) {
        int decimals = Figures.decimals(Currency.getInstance(currency));
        CsvTable table = new CsvTable(LAYOUT);
        for (ExplainedShortage shortage : shortages) {
            table.row(row -> row.text(shortage.phase())
                    .text(shortage.depot())
                    .text(shortage.occurrence().season())
                    .text(DayNames.weekday(shortage.occurrence().day()))
                    .text(shortage.crew())
                    .count(shortage.trip())
                    .text(shortage.family())
                    .number(shortage.wattHours(), 1)
                    .number(shortage.daysPerYear(), 3)
                    .text(plainOrBlank(shortage.presentCost(), decimals))
                    .text(shortage.limit())
                    .text(shortage.cure())
                    .text(plainOrBlank(shortage.curePresentCost(), decimals))
                    .text(currency));
        }
        return table;
    }

    private static String plainOrBlank(OptionalDouble value, int decimals) {
        return value.isPresent() ? Figures.plain(value.getAsDouble(), decimals) : "";
    }
}
