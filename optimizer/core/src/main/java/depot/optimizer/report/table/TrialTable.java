package depot.optimizer.report.table;

import static depot.optimizer.report.table.OutputColumn.count;
import static depot.optimizer.report.table.OutputColumn.number;
import static depot.optimizer.report.table.OutputColumn.words;

import depot.optimizer.replay.TrialReport;
import depot.optimizer.replay.TrialReport.DepotTrials;
import depot.optimizer.replay.TrialReport.Share;

/** trials.csv: how many days drawn at random the plan meets. */
public final class TrialTable {

    private static final int DECIMALS = 3;

    private static final TableLayout LAYOUT = TableLayout.of(
            "trials.csv",
            "depot and season whose days were drawn at random, with sums; only where trials were asked for",
            words("depot", "key of the depot; blank: all depots").orBlank(),
            words("season", "key of the season; blank: all seasons").orBlank(),
            count("drawn_days", "days", "days drawn"),
            count("met_days", "days", "those on which no trip lacked energy and every pack was full in time"),
            number("met_percent", "%", "their share"),
            number("lower_percent", "%", "lower end of the share's interval at 95 % (Wilson)"),
            number("upper_percent", "%", "upper end of that interval"),
            count("seed", "", "seed of the draws"));

    private TrialTable() {}

    /** The fleet and its seasons, then each depot and its seasons. */
    public static CsvTable of(TrialReport trials) {
        CsvTable table = new CsvTable(LAYOUT);
        row(table, trials, "", "", trials.fleet());
        trials.seasons().forEach((season, share) -> row(table, trials, "", season, share));
        for (DepotTrials depot : trials.depots()) {
            row(table, trials, depot.depot(), "", depot.all());
            depot.seasons().forEach((season, share) -> row(table, trials, depot.depot(), season, share));
        }
        return table;
    }

    private static void row(CsvTable table, TrialReport trials, String depot, String season, Share share) {
        table.row(row -> row.text(depot)
                .text(season)
                .count(share.trials())
                .count(share.met())
                .number(100 * share.share(), DECIMALS)
                .number(100 * share.lower(), DECIMALS)
                .number(100 * share.upper(), DECIMALS)
                .count(trials.settings().seed()));
    }
}
