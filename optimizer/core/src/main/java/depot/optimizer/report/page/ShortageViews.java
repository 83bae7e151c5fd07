package depot.optimizer.report.page;

import depot.optimizer.plan.ExplainedShortage;
import depot.optimizer.report.text.Amounts;
import depot.optimizer.report.text.DayNames;
import depot.optimizer.report.text.Figures;
import java.util.List;
import java.util.OptionalDouble;

/** Work that the packs do not cover, why, and what would cure it. */
final class ShortageViews {

    private ShortageViews() {}

    static TableView table(Amounts amounts, List<ExplainedShortage> shortages) {
        TableView.Builder table = TableView.of("shortage-table", "Work that the packs do not cover")
                .words("Depot", "Day", "Crew and trip", "Pack family")
                .numbers(
                        "Short on the planned day (Wh)",
                        "Days a year",
                        "Covering it otherwise (" + amounts.code() + ")")
                .words("What limits it", "Cheapest cure found")
                .numbers("Cost with the cure, more or less (" + amounts.code() + ")");
        for (ExplainedShortage shortage : shortages) {
            table.row(
                    shortage.depot(),
                    DayNames.of(shortage.occurrence()),
                    shortage.crew() + ", trip " + shortage.trip(),
                    shortage.family(),
                    Figures.read(shortage.wattHours(), 0),
                    Figures.plain(shortage.daysPerYear(), 1),
                    amount(amounts, shortage.presentCost(), "no price"),
                    shortage.limit(),
                    shortage.cure(),
                    amount(amounts, shortage.curePresentCost(), "-"));
        }
        return table.build();
    }

    private static String amount(Amounts amounts, OptionalDouble value, String none) {
        return value.isPresent() ? amounts.show(amounts.rounded(value.getAsDouble())) : none;
    }
}
