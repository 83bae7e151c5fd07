package depot.optimizer.replay;

import static depot.optimizer.replay.Replays.change;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import depot.optimizer.plan.Certificate;
import depot.optimizer.plan.Plan;
import depot.optimizer.plan.PlanSettings;
import depot.optimizer.replay.TrialReport.Share;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.distribution.LogNormalDistribution;
import org.junit.jupiter.api.Test;

/** Days drawn at random. */
class MonteCarloTest {
    private static final TrialSettings ON_TIME = new TrialSettings(4000, 7, LateReturns.NEVER);

    private static Plan fleet(String plan) {
        return new Plan(
                Plan.FORMAT_VERSION,
                "fixture",
                "EUR",
                Map.of(),
                "by hand",
                new PlanSettings(0, 1, 1, 1, 15),
                Certificate.of(0, 0, 0),
                List.of(Replays.plan(plan)));
    }

    private static TrialReport trials(String scenario, String plan, TrialSettings settings) {
        return MonteCarlo.run(ScenarioText.read(scenario), fleet(plan), settings);
    }

    @Test
    void withNothingUncertainEveryDayIsMet() {
        TrialReport report = trials(Replays.SCENARIO, Replays.PLAN, new TrialSettings(50, 1, LateReturns.NEVER));

        assertThat(report.fleet()).isEqualTo(new Share(50, 50));
        assertThat(report.fleet().upper()).isEqualTo(1, within(1e-12));
    }

    @Test
    void oneStopIsCoveredAsOftenAsItsDistributionSays() {
        // Packs hold 400 Wh; the stop takes 300 Wh on average.
        String spread = "settings spread=0.3\n" + change(Replays.SCENARIO, "hours=4", "hours=3");
        double sigma = Math.sqrt(Math.log1p(0.09));
        double expected =
                new LogNormalDistribution(Math.log(300) - sigma * sigma / 2, sigma).cumulativeProbability(400);

        Share share = trials(spread, Replays.PLAN, ON_TIME).fleet();

        // Four standard errors of 4,000 draws.
        assertThat(share.share()).isCloseTo(expected, within(4 * Math.sqrt(expected * (1 - expected) / 4000)));
        assertThat(share.lower()).isLessThan(share.share());
        assertThat(share.upper()).isGreaterThan(share.share());
    }

    @Test
    void theSameSeedGivesTheSameDays() {
        String spread = "settings spread=0.3\n" + change(Replays.SCENARIO, "hours=4", "hours=3");
        Plan plan = fleet(Replays.PLAN);

        TrialReport first = MonteCarlo.run(ScenarioText.read(spread), plan, 500, 11);

        assertThat(MonteCarlo.run(ScenarioText.read(spread), plan, 500, 11)).isEqualTo(first);
        assertThat(MonteCarlo.run(ScenarioText.read(spread), plan, 500, 12)).isNotEqualTo(first);
    }

    @Test
    void lateReturnsMatterOnlyWhereTimeIsShort() {
        LateReturns often = new LateReturns(1, 30);
        TrialSettings settings = new TrialSettings(2000, 3, often);

        // A night of 19 hours for 320 minutes of charging.
        assertThat(trials(Replays.SCENARIO, Replays.PLAN, settings).fleet().share())
                .isEqualTo(1);
        // 320 minutes from 26:30 to 31:50 leave ten minutes: met when the crew is at most ten minutes late.
        String night = Replays.SCENARIO.replace("D 12:30", "D 26:30");
        String plan = Replays.PLAN.replace("08:00 12:30", "08:00 26:30").replace("Q-1 12:30", "Q-1 26:30");
        double expected = 1 - Math.exp(-10 / 30.0);
        assertThat(trials(night, plan, settings).fleet().share())
                .isCloseTo(expected, within(4 * Math.sqrt(expected * (1 - expected) / 2000)));
    }

    @Test
    void seasonsAreDrawnByTheirWeeks() {
        String seasons = "season year weeks=39\nseason cold weeks=13 factor=0.5\n" + Replays.SCENARIO
                + "stop A 1 D 08:00 season=cold\nstop A 2 lawn 08:30 12:00 season=cold\nstop A 3 D 12:30 season=cold\n"
                + "work A 2 T hours=4 season=cold\n";
        String day = change(Replays.PLAN, "stock D P 4\ncharger Q-1 C Q\n", "");
        String plan = "stock D P 4\ncharger Q-1 C Q\nday Mon-Sun per_year=273\n" + day
                + "day Mon-Sun season=cold per_year=91\n" + day;

        TrialReport report = trials(seasons, plan, ON_TIME);

        assertThat(report.seasons().get("year").share()).isEqualTo(1);
        assertThat(report.seasons().get("cold").share()).isZero();
        assertThat(report.fleet().share()).isCloseTo(0.75, within(4 * Math.sqrt(0.75 * 0.25 / 4000)));
    }

    @Test
    void theWilsonIntervalStaysInsideZeroAndOne() {
        // Wilson score interval (recomputed): 0 of 10 gives 0 to 0.2775, 5 of 10 gives 0.2366 to 0.7634.
        assertThat(new Share(0, 10).lower()).isEqualTo(0, within(1e-12));
        assertThat(new Share(0, 10).upper()).isCloseTo(0.2775, within(5e-5));
        assertThat(new Share(5, 10).lower()).isCloseTo(0.2366, within(5e-5));
        assertThat(new Share(5, 10).upper()).isCloseTo(0.7634, within(5e-5));
    }
}
