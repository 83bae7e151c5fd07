package depot.optimizer.report.table;

import static depot.optimizer.report.table.CommonColumns.CURRENCY;
import static depot.optimizer.report.table.OutputColumn.amount;
import static depot.optimizer.report.table.OutputColumn.count;
import static depot.optimizer.report.table.OutputColumn.number;
import static depot.optimizer.report.table.OutputColumn.words;
import static depot.optimizer.report.table.OutputColumn.yesNo;

import java.util.ArrayList;
import java.util.List;

/** What the tables of a sweep hold, declared once. */
final class SweepLayouts {

    private static final OutputColumn COST = amount(
                    "present_cost", "over the horizon, in today's money; blank: no plan was found")
            .orBlank();
    private static final OutputColumn DIFFERENCE =
            amount("difference_from_base", "of the present cost").orBlank();
    private static final OutputColumn AT_ONCE =
            amount("purchases_at_once", "purchases and installation").orBlank();
    private static final OutputColumn BOUND =
            amount("bound", "no plan costs less; blank: purchases are kept").orBlank();
    private static final OutputColumn GAP = number(
                    "gap_percent", "%", "between cost and bound; blank: there is no bound")
            .orBlank();
    private static final OutputColumn DAYS_MET = number(
                    "days_met_per_year", "days", "depot days that the replay finds met")
            .orBlank();
    private static final OutputColumn DAYS =
            number("days_per_year", "days", "depot days with work").orBlank();
    private static final OutputColumn SHORT = number("shortage_kwh_per_year", "kWh", "work that packs do not cover")
            .orBlank();
    private static final OutputColumn STATUS = words("status", "how the case ends, in plain words");
    private static final OutputColumn NOTE =
            words("note", "what else is to be known").orBlank();

    static final TableLayout ALL = TableLayout.of(
            SweepTables.ALL,
            "case",
            words("case", "its name"),
            words("table", "which table of the sweep it belongs to"),
            words("change", "what is changed").orBlank(),
            words("values", "what it is changed to, with units").orBlank(),
            words("mode", "planned anew, purchases kept, or bought on top"),
            COST,
            DIFFERENCE,
            number("difference_percent", "%", "the same as a share of the base plan's cost")
                    .orBlank(),
            AT_ONCE,
            BOUND,
            GAP,
            DAYS_MET,
            DAYS,
            SHORT,
            amount("petrol_avoided_present_value", "what the crews' petrol tools would cost over the horizon")
                    .orBlank(),
            amount("cost_less_petrol_avoided", "present_cost less the former").orBlank(),
            STATUS,
            NOTE,
            CURRENCY);

    static final TableLayout TORNADO = TableLayout.of(
            "tornado.csv",
            "change, the one that moves the cost furthest first",
            count("rank", "", "1 moves the cost furthest"),
            words("change", "what is changed"),
            words("low", "lower value, with its unit"),
            words("high", "higher value, with its unit"),
            amount("present_cost_at_low", "over the horizon, in today's money").orBlank(),
            amount("present_cost_at_high", "the same at the higher value").orBlank(),
            amount("difference_at_low", "from the base plan").orBlank(),
            amount("difference_at_high", "from the base plan").orBlank(),
            amount("span", "how far the change moves the cost"),
            number("gap_percent_at_low", "%", "between cost and bound").orBlank(),
            number("gap_percent_at_high", "%", "between cost and bound").orBlank(),
            words("status_at_low", "how the case ends, in plain words"),
            words("status_at_high", "how the case ends, in plain words"),
            CURRENCY);

    static final TableLayout LOSSES = TableLayout.of(
            "losses.csv",
            "depot and loss; in several phases for each that has other equipment or crews than the one before",
            words("phase", "key of the phase in which it fails; blank: there is only one")
                    .orBlank(),
            words("depot", "key of the depot"),
            words("loss", "what is lost"),
            yesNo("holds", "whether the base plan still meets every day"),
            DAYS_MET,
            DAYS,
            SHORT,
            words("what_happens", "in plain words"),
            words("what_makes_it_hold", "what is bought on top; blank: nothing is needed")
                    .orBlank(),
            AT_ONCE,
            amount("present_cost_more", "what that adds to the present cost").orBlank(),
            CURRENCY);

    private SweepLayouts() {}

    static TableLayout line(String file) {
        return TableLayout.of(
                file,
                "value along one change",
                words("change", "what is changed"),
                number("value", "", "what it is changed to, in the unit beside it"),
                words("unit", "of the value").orBlank(),
                COST,
                BOUND,
                GAP,
                DIFFERENCE,
                AT_ONCE,
                SHORT,
                STATUS,
                NOTE,
                CURRENCY);
    }

    /**
     * @param phases ids of the phases
     */
    static TableLayout frontier(String file, List<String> phases) {
        List<OutputColumn> columns = new ArrayList<>(List.of(
                words("change", "what is changed"),
                number("value", "", "budget as an amount, or what the budgets are multiplied by"),
                words("unit", "of the value: currency or times"),
                COST,
                amount("bound", "no plan with this budget costs less").orBlank(),
                GAP,
                DIFFERENCE));
        phases.forEach(phase -> columns.add(
                amount("spent in " + phase, "what the plan pays when the phase begins, all purchases together")
                        .orBlank()));
        columns.addAll(List.of(
                number(
                                "least_value",
                                "",
                                "smallest value with which a plan can be paid for; blank: there is a plan, or it is not known")
                        .orBlank(),
                words("plan_of", "case whose plan this is; blank: its own").orBlank(),
                words("bound_of", "case whose bound this is; blank: its own").orBlank(),
                STATUS,
                NOTE,
                CURRENCY));
        return new TableLayout(file, "budget", columns);
    }

    /**
     * @param corner what the rows and the columns change
     * @param across values of the second change
     */
    static TableLayout grid(String file, String corner, List<String> across) {
        List<OutputColumn> columns = new ArrayList<>(List.of(words(corner, "value of the first change")));
        across.forEach(value -> columns.add(number(value, "", "present cost at this value of the second change")
                .orBlank()));
        return new TableLayout(file, "value of the first change", columns);
    }
}
