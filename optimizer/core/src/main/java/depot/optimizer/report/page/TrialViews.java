package depot.optimizer.report.page;

import depot.optimizer.replay.TrialReport;
import depot.optimizer.replay.TrialReport.DepotTrials;
import depot.optimizer.replay.TrialReport.Share;
import depot.optimizer.report.text.Figures;

/** How many days drawn at random the plan meets. */
final class TrialViews {

    private TrialViews() {}

    static Fact fact(TrialReport trials) {
        Share fleet = trials.fleet();
        return new Fact(
                "Met of days drawn at random",
                Figures.percent(fleet.share()),
                "%s of %s; 95 %% sure: %s to %s"
                        .formatted(
                                Figures.read(fleet.met(), 0),
                                Figures.read(fleet.trials(), 0),
                                Figures.percent(fleet.lower()),
                                Figures.percent(fleet.upper())));
    }

    /** The fleet, then each season, then each depot. */
    static TableView table(TrialReport trials) {
        TableView.Builder table = TableView.of(
                        "trial-table",
                        "Days drawn for each depot: %s, seed %d"
                                .formatted(
                                        Figures.read(trials.settings().trials(), 0),
                                        trials.settings().seed()))
                .words("Season or depot")
                .numbers("Days drawn", "Days met", "Share", "95 % sure: from", "to");
        trials.seasons().forEach((season, share) -> row(table, "Season " + season, share));
        for (DepotTrials depot : trials.depots()) {
            row(table, "Depot " + depot.depot(), depot.all());
        }
        return table.total(cells("All", trials.fleet())).build();
    }

    private static void row(TableView.Builder table, String name, Share share) {
        table.row(cells(name, share));
    }

    private static String[] cells(String name, Share share) {
        return new String[] {
            name,
            Figures.read(share.trials(), 0),
            Figures.read(share.met(), 0),
            Figures.percent(share.share()),
            Figures.percent(share.lower()),
            Figures.percent(share.upper())
        };
    }
}
