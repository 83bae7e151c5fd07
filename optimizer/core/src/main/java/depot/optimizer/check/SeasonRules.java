package depot.optimizer.check;

import depot.optimizer.dictionary.RouteTables.Seasons;
import depot.optimizer.scenario.Season;

/** Rules of seasons. */
final class SeasonRules {
    private static final double WEEKS_OF_A_YEAR = 53;

    private SeasonRules() {}

    /** The seasons together are no longer than a year. */
    static void weeks(Drafts drafts, Findings findings) {
        double sum = 0;
        for (Located<Season> season : drafts.seasons) {
            double before = sum;
            sum += season.value().weeksPerYear();
            if (sum > WEEKS_OF_A_YEAR && before <= WEEKS_OF_A_YEAR) {
                findings.error(
                        season,
                        Seasons.WEEKS_PER_YEAR,
                        "the seasons together are longer than " + WEEKS_OF_A_YEAR + " weeks",
                        "a year has 52.18 weeks");
            }
        }
    }
}
