package depot.optimizer.cli;

import depot.optimizer.replay.TrialReport;
import depot.optimizer.replay.TrialReport.DepotTrials;
import depot.optimizer.replay.TrialReport.Share;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** How many of the drawn days a plan meets: over the fleet, by season and by depot. */
final class TrialSummary {

    private final TrialReport report;

    TrialSummary(TrialReport report) {
        this.report = report;
    }

    List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add("Days drawn at random: %d for each depot, seed %d"
                .formatted(report.settings().trials(), report.settings().seed()));
        lines.add(line("all", report.fleet()));
        report.seasons().forEach((season, share) -> lines.add(line(season, share)));
        for (DepotTrials depot : report.depots()) {
            lines.add(line(depot.depot(), depot.all()));
        }
        return lines;
    }

    private static String line(String label, Share share) {
        return String.format(
                Locale.ROOT,
                "  %-16s %6.2f %% met (95 %% sure: %.2f to %.2f %%), %d of %d",
                label,
                100 * share.share(),
                100 * share.lower(),
                100 * share.upper(),
                share.met(),
                share.trials());
    }
}
