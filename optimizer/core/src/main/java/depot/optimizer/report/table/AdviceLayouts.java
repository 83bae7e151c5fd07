package depot.optimizer.report.table;

import static depot.optimizer.report.table.CommonColumns.CURRENCY;
import static depot.optimizer.report.table.CommonColumns.DAYS_PER_YEAR;
import static depot.optimizer.report.table.CommonColumns.DEPOT;
import static depot.optimizer.report.table.CommonColumns.PHASE;
import static depot.optimizer.report.table.OutputColumn.amount;
import static depot.optimizer.report.table.OutputColumn.count;
import static depot.optimizer.report.table.OutputColumn.number;
import static depot.optimizer.report.table.OutputColumn.oneOf;
import static depot.optimizer.report.table.OutputColumn.words;
import static depot.optimizer.report.table.OutputColumn.yesNo;

import java.util.List;

/** What the tables about a plan's questions hold, declared once. */
final class AdviceLayouts {

    private static final OutputColumn KIND = oneOf("kind", AdviceWords.kinds(), "what kind of item it is");
    private static final OutputColumn ITEM = words("item", "key of its type, circuit or depot");
    private static final OutputColumn PLANNED = amount("planned_present_cost", "of the plan asked about");
    private static final String LEAST =
            "the best plans differ by at least this; blank: nothing to compare, or not known";
    private static final String MOST = "they differ by at most this; blank: nothing to compare, or not known";

    static final TableLayout THUMB = TableLayout.of(
            "rules_of_thumb.csv",
            "depot",
            DEPOT,
            PLANNED,
            amount("thumb_present_cost", "of the plan by rules of thumb, whether it works or not"),
            amount("difference", "what the rules of thumb cost more"),
            amount("planned_purchases_at_once", "purchases and installation of the plan asked about"),
            amount("thumb_purchases_at_once", "the same by rules of thumb"),
            DAYS_PER_YEAR,
            number("days_kept_per_year", "days", "days on which the rules of thumb break no rule"),
            yesNo("proven", "whether the plan by rules of thumb passes its replay"),
            CURRENCY);

    static final TableLayout BROKEN = TableLayout.of(
            "rules_of_thumb_broken.csv",
            "depot and rule that the plan by rules of thumb breaks",
            DEPOT,
            oneOf("rule", Words.rules(), "which rule"),
            number(
                    "days_per_year",
                    "days",
                    "days on which it is broken; every day where the equipment itself breaks it"),
            words("first", "what is wrong, the first time"));

    static final TableLayout WHY = TableLayout.of(
            "why.csv",
            "line of what is bought, by phase",
            PHASE,
            DEPOT,
            KIND,
            ITEM,
            words("where", "circuit, or crew that carries it; blank: the depot").orBlank(),
            count("pieces", "pieces", "pieces in use, owned ones included"),
            count("bought_pieces", "pieces", "those of them that are bought"),
            oneOf("limit", AdviceWords.bindings(), "what binds when it is needed most; blank: no day uses it")
                    .orBlank(),
            number("used", "", "of the limit at that moment, in its unit").orBlank(),
            number("there", "", "the limit").orBlank(),
            words("season_days", "days of that moment").orBlank(),
            OutputColumn.time("from", "start of that moment").orBlank(),
            OutputColumn.time("to", "its end").orBlank(),
            words("crews", "crews that are concerned").orBlank(),
            oneOf("without", AdviceWords.endings(), "how the depot solved without any of it ends"),
            amount("without_difference", "what that costs more; blank: nothing to compare")
                    .orBlank(),
            amount("without_least", LEAST).orBlank(),
            amount("without_most", MOST).orBlank(),
            words("without_words", "the same in words"),
            oneOf("one_fewer", AdviceWords.endings(), "how it ends with one fewer; blank: there is only one")
                    .orBlank(),
            amount("one_fewer_difference", "what that costs more; blank: nothing to compare")
                    .orBlank(),
            amount("one_fewer_least", LEAST).orBlank(),
            amount("one_fewer_most", MOST).orBlank(),
            words("one_fewer_words", "the same in words; blank: there is only one")
                    .orBlank(),
            oneOf(
                            "later",
                            AdviceWords.endings(),
                            "how it ends when it may be bought in a later phase; blank: there is none")
                    .orBlank(),
            amount("later_difference", "what that costs more; blank: nothing to compare")
                    .orBlank(),
            amount("later_least", LEAST).orBlank(),
            amount("later_most", MOST).orBlank(),
            words("later_words", "the same in words; blank: there is no later phase")
                    .orBlank(),
            CURRENCY);

    static final TableLayout WORTH = TableLayout.of(
            "worth.csv",
            "limit with a little more room",
            DEPOT,
            oneOf("limit", AdviceWords.limits(), "what is loosened"),
            words("subject", "circuit, charger type or depot"),
            count("step", "", "by how much, in the unit beside it"),
            words("unit", "unit of the step"),
            oneOf("result", AdviceWords.endings(), "how the depot solved with it ends"),
            amount("saving", "present cost saved; blank: nothing to compare").orBlank(),
            amount("saving_least", LEAST).orBlank(),
            amount("saving_most", MOST).orBlank(),
            amount("saving_per_year", "the same every year; blank: nothing to compare")
                    .orBlank(),
            yesNo("told", "whether something is saved for sure; no: the gap could hide it"),
            words("words", "the same in words"),
            CURRENCY);

    static final TableLayout NEXT = TableLayout.of(
            "next_best.csv",
            "other structure that was tried, the cheapest first",
            DEPOT,
            words("structure", "in which way it has to differ from the plan"),
            oneOf("result", AdviceWords.endings(), "how the depot solved so ends"),
            PLANNED,
            amount("present_cost", "of the other plan; blank: there is none that works")
                    .orBlank(),
            amount("difference", "what it costs more; blank: nothing to compare")
                    .orBlank(),
            number("difference_percent", "%", "the same as a share of the plan's cost")
                    .orBlank(),
            amount("difference_least", LEAST).orBlank(),
            amount("difference_most", MOST).orBlank(),
            yesNo("within", "whether it works on every day and costs no more than was asked for"),
            words("same_as", "structure further up that buys the same; blank: none")
                    .orBlank(),
            words("plan_file", "file that holds it, to be replayed; blank: none")
                    .orBlank(),
            words("words", "how it ends, in words"),
            CURRENCY);

    static final TableLayout PIECES = TableLayout.of(
            "other_purchases.csv",
            "depot, other plan and item of which it has more or fewer",
            DEPOT,
            words("plan", "rules of thumb, or the structure as in next_best.csv"),
            KIND,
            ITEM,
            count("planned_pieces", "pieces", "pieces in the plan asked about, owned ones included"),
            count("other_pieces", "pieces", "pieces in the other plan"),
            count("difference_pieces", "pieces", "what the other plan has more"));

    static final TableLayout SHARED = TableLayout.of(
            "shared_limits.csv",
            "budget or limit of delivery; only where depots share some, or there are several phases",
            words("limit", "budget, region budget or delivery, with its phase, and region or item"),
            number("most", "", "money, or pieces, that the depots may use together"),
            number("used", "", "what the plan uses of it"),
            number("left", "", "what it leaves"),
            number(
                            "price",
                            "",
                            "by the certificate one unit more saves at most this present cost, beyond what the gap leaves open; blank: the plan has no prices")
                    .orBlank(),
            number(
                            "step",
                            "",
                            "how much more of it the fleet was planned with anew, as its plan has no prices; blank: it was not")
                    .orBlank(),
            amount("saving", "what that saves; blank: nothing to compare").orBlank(),
            amount("saving_least", LEAST).orBlank(),
            amount("saving_most", MOST).orBlank(),
            words("words", "the same in words"),
            CURRENCY);

    /** All of them. */
    static final List<TableLayout> ALL = List.of(THUMB, BROKEN, WHY, WORTH, NEXT, PIECES, SHARED);

    private AdviceLayouts() {}
}
