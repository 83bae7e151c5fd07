package depot.optimizer.sweep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import depot.optimizer.fixture.Planned;
import depot.optimizer.fixture.ScenarioText;
import depot.optimizer.fixture.TwoDepots;
import depot.optimizer.fleet.FleetPlanner;
import depot.optimizer.fleet.FleetPlanner.Method;
import depot.optimizer.fleet.NothingFitsException;
import depot.optimizer.fleet.ProgressListener;
import depot.optimizer.plan.Certificate;
import depot.optimizer.replay.FleetReplay;
import depot.optimizer.scenario.Scenario;
import java.util.List;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The least cost along a budget. */
class FrontierTest {

    private static final double GAP = 0.002;
    private static final double ROUNDING = 1e-9;

    private static List<CaseResult> frontier(Scenario scenario, String members) {
        return SweepText.run(scenario, "\"frontiers\": [{\"name\": \"f\", " + members + "}]")
                .cases();
    }

    private static Certificate certificate(CaseResult point) {
        return point.fleet().orElseThrow().plan().certificate();
    }

    private static void assertFalling(List<CaseResult> points) {
        for (int i = 1; i < points.size(); i++) {
            Certificate before = certificate(points.get(i - 1));
            Certificate now = certificate(points.get(i));
            assertThat(now.cost()).as("cost of point %d", i).isLessThanOrEqualTo(before.cost() * (1 + ROUNDING));
            assertThat(now.bound()).as("bound of point %d", i).isLessThanOrEqualTo(before.bound() * (1 + ROUNDING));
        }
    }

    private static double whole(Scenario scenario) {
        return new FleetPlanner(ProgressListener.SILENT)
                .plan(scenario, new TreeMap<>(), Method.WHOLE)
                .plan()
                .certificate()
                .cost();
    }

    @Test
    void everyPointAgreesWithTheFleetAsOneModel() {
        Scenario scenario = Planned.load(TwoDepots.inPhases("first,0,1000", "second,2,"));

        List<CaseResult> points = frontier(scenario, """
                "change": "budget", "of": "first", "values": [0, 800, 1000, 1500, 2500]
                """);

        assertFalling(points);
        assertThat(points).hasSize(5).allSatisfy(point -> {
            double other = whole(point.scenario());
            assertThat(FleetReplay.run(
                                    point.scenario(),
                                    point.fleet().orElseThrow().plan())
                            .proven())
                    .isTrue();
            assertThat(certificate(point).bound()).isLessThanOrEqualTo(other * (1 + ROUNDING));
            assertThat(certificate(point).cost()).isCloseTo(other, within(0.01 * other));
        });
        assertThat(points.get(0).cost()).isGreaterThan(points.get(4).cost() * (1 + GAP));
    }

    @Test
    void aFactorMultipliesEveryBudget() {
        List<CaseResult> points = frontier(
                Planned.load(TwoDepots.inPhases("first,0,1000", "second,2,500")),
                "\"change\": \"all_budgets\", \"values\": [0, 1, 3]");

        assertFalling(points);
        assertThat(points.get(2).scenario().coupling().phases())
                .extracting(phase -> phase.budget().orElseThrow().intValueExact())
                .containsExactly(3000, 1500);
        // Without money the crews stay on petrol, 900 and 700 a year for ten years at 5 %: P/A is 7.7217 (interest
        // tables).
        assertThat(points.get(0).cost()).isCloseTo((900 + 700) * 7.7217, within(0.5));
    }

    /** The smallest amount for two crews that have to change now is known from the fleet's own tests. */
    @Test
    void withoutPhasesTheBudgetIsForWhatIsBoughtNow() {
        Scenario scenario = Planned.load(TwoDepots.free());

        List<CaseResult> points = frontier(scenario, "\"change\": \"budget\", \"values\": [1500, 2099, 2100, 6000]");

        for (CaseResult point : points.subList(0, 2)) {
            assertThat(point.planned()).isFalse();
            assertThat(point.noPlan()).contains("and no plan does with less than 2100");
            assertThat(point.least().orElseThrow()).isCloseTo(2100, within(1e-6));
        }
        assertFalling(points.subList(2, 4));
        SweepResult apart = SweepText.run(scenario, """
                "cases": [{"name": "c", "changes": [{"change": "petrol_price", "value": 2}]}]
                """);
        assertThat(certificate(points.get(3)).bound())
                .isGreaterThanOrEqualTo(apart.base().bound() * (1 - ROUNDING));
        assertThat(points.get(3).cost())
                .isCloseTo(apart.base().cost(), within(GAP * apart.base().cost()));
    }

    /** The base plan spends 2100: it is a plan for every larger budget, and its bound holds for every budget. */
    @ParameterizedTest
    @ValueSource(doubles = {0.002, 0.5})
    void theBasePlanAndItsBoundServeWhereTheyAreBetter(double gap) {
        ScenarioText text = TwoDepots.free()
                .replace("scenario.json", "0.002, \"threads\": 1", gap + ", \"nodes\": 1, \"threads\": 2");

        SweepResult sweep = SweepText.run(Planned.load(text), """
                "frontiers": [{"name": "f", "change": "budget", "values": [2500, 4000, 8000]}]
                """);

        assertFalling(sweep.cases());
        assertThat(sweep.cases()).allSatisfy(point -> {
            Certificate found = certificate(point);
            assertThat(found.bound()).isGreaterThanOrEqualTo(sweep.base().bound() * (1 - ROUNDING));
            assertThat(found.cost()).isLessThanOrEqualTo(sweep.base().cost() * (1 + ROUNDING));
            assertThat(found).isEqualTo(Certificate.of(found.cost(), found.bound(), gap));
        });
    }

    @Test
    void whatIsCarriedOverIsSaid() {
        ScenarioText text = TwoDepots.inPhases("first,0,5000", "second,2,");
        List<CaseResult> points = frontier(Planned.load(text), """
                "change": "budget", "of": "first", "values": [4000, 4500, 9000]
                """);

        assertThat(points).allSatisfy(point -> {
            boolean own = point.carried().planOf().isEmpty();
            assertThat(point.cost()).isCloseTo(points.get(0).cost(), within(0.01));
            assertThat(own || !point.carried().planOf().equals(point.sweepCase().name()))
                    .isTrue();
        });
        // All of them buy the same: the highest bound of a larger budget is everyone's.
        double highest = points.stream()
                .mapToDouble(point -> certificate(point).bound())
                .max()
                .orElseThrow();
        assertThat(certificate(points.get(0)).bound()).isEqualTo(highest);
    }

    @Test
    void aBasePlanThatNothingPaysForIsNoSweep() {
        Scenario scenario = Planned.load(TwoDepots.free().table("phases.csv", "phase,year,budget\nfirst,0,100\n"));

        assertThatThrownBy(() -> frontier(scenario, "\"change\": \"budget\", \"values\": [200, 3000]"))
                .isInstanceOf(NothingFitsException.class);
    }
}
