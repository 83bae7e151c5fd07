package depot.optimizer.solve;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.fixture.Planned;
import depot.optimizer.fixture.ScenarioEdit;
import depot.optimizer.fixture.TinyScenarios;
import depot.optimizer.mip.Engine;
import depot.optimizer.mip.Limits;
import depot.optimizer.plan.Certificate;
import depot.optimizer.plan.SolveStop;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.scenario.SolveSettings;
import depot.optimizer.scenario.TariffTerms;
import depot.optimizer.scenario.Work;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Solving on a few days, the others held up by cuts, comes to the same cost as one model of all days. */
class BindingDaysTest {

    private static final Limits EXACT = new Limits(0, 1_000_000, 60, 1);
    private static final int SEEDS = 20;

    /** Its master runs into the clock, although one model of all days takes a second. */
    private static final long SLOW_SEED = 4;

    private static final double GAP = 0.05;

    /** Relative. */
    private static final double SAME_COST = 1e-6;

    @Test
    void unlikeDaysCostTheSameAsInOneModel() {
        assertThat(seeds().map(BindingDaysTest::unlikeDays).flatMap(BindingDaysTest::difference))
                .isEmpty();
    }

    @Test
    void unlikeDaysCostTheSameAsInOneModelUnderADemandCharge() {
        TariffTerms peak = new TariffTerms("price", BigDecimal.ZERO, BigDecimal.valueOf(9), 15);

        assertThat(seeds().map(seed ->
                                new ScenarioEdit(unlikeDays(seed)).terms(peak).scenario())
                        .flatMap(BindingDaysTest::difference))
                .isEmpty();
    }

    @Test
    void withAGapTheBoundStaysBelowAndTheCostWithinIt() {
        List<SolveStop> stops = new ArrayList<>();
        seeds().map(BindingDaysTest::unlikeDays).forEach(scenario -> {
            double optimum = optimum(scenario);
            SolveSettings s = scenario.solve();
            SolveStop stop = Planned.of(scenario.withSolve(
                            new SolveSettings(GAP, s.nodeLimit(), s.timeLimitSeconds(), 1, 1, s.handoverMinutes())))
                    .plan()
                    .stop();
            stops.add(stop);
            assertThat(stop.certificate().proven()).as(scenario.name()).isTrue();
            assertThat(stop.certificate().bound()).as(scenario.name()).isLessThanOrEqualTo(optimum * (1 + SAME_COST));
            assertThat(stop.certificate().cost())
                    .as(scenario.name())
                    .isBetween(optimum * (1 - SAME_COST), optimum / (1 - GAP) * (1 + SAME_COST));
        });

        assertThat(stops).as("days left to the cuts").anyMatch(stop -> stop.bindingDays() < stop.kindsOfDay());
    }

    /** Those whose turns are all priced as they run. */
    private static Stream<Long> seeds() {
        return LongStream.rangeClosed(1, SEEDS).boxed().filter(seed -> {
            Scenario tiny = TinyScenarios.random(seed);
            return seed != SLOW_SEED
                    && (tiny.packTypes().size() == 1 || tiny.priceBands().size() == 1);
        });
    }

    /** From Monday to Friday each day has work of its own, between nothing much and a quarter more. */
    private static Scenario unlikeDays(long seed) {
        Random random = new Random(seed);
        Scenario tiny = TinyScenarios.random(seed);
        List<Work> work = new ArrayList<>();
        for (Work row : tiny.work()) {
            for (DayOfWeek day : List.of(
                    DayOfWeek.MONDAY, DayOfWeek.TUESDAY, DayOfWeek.WEDNESDAY, DayOfWeek.THURSDAY, DayOfWeek.FRIDAY)) {
                double hours = row.hours() * (0.05 + 0.15 * random.nextInt(9));
                work.add(new Work(row.season(), Set.of(day), row.crew(), row.stop(), row.tool(), hours, 1));
            }
        }
        return new ScenarioEdit(tiny).work(work).scenario();
    }

    private static double optimum(Scenario scenario) {
        return Engine.BRANCH_AND_CUT.solve(ModelExport.model(scenario), EXACT).objective();
    }

    /** What is wrong with the plan of a scenario. */
    private static Stream<String> difference(Scenario scenario) {
        double optimum = optimum(scenario);
        Planned planned = Planned.of(scenario);
        Certificate certificate = planned.plan().stop().certificate();
        boolean right = Math.abs(planned.cost() - optimum) <= SAME_COST * optimum
                && certificate.bound() <= optimum * (1 + SAME_COST);
        return right
                ? Stream.empty()
                : Stream.of("%s: one model %.4f, %s"
                        .formatted(scenario.name(), optimum, planned.plan().stop()));
    }
}
