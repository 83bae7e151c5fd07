package depot.optimizer.fleet;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.fixture.Planned;
import depot.optimizer.fixture.ScenarioText;
import depot.optimizer.fixture.TwoDepots;
import depot.optimizer.fleet.FleetPlanner.Leaving;
import depot.optimizer.fleet.FleetPlanner.Method;
import depot.optimizer.fleet.LeftBehind.Touched;
import depot.optimizer.plan.CostLine;
import depot.optimizer.plan.Plan;
import depot.optimizer.problem.DepotProblems;
import depot.optimizer.problem.DepotRollout;
import depot.optimizer.problem.QuantityPrices;
import depot.optimizer.problem.SharedLimit;
import depot.optimizer.problem.SharedLimits;
import depot.optimizer.replay.BoundCheck;
import depot.optimizer.replay.FleetReplay;
import depot.optimizer.scenario.Scenario;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** What one search leaves behind, and what the next one makes of it. */
class FleetStartTest {

    private static final int NORTH = 0;
    private static final int SOUTH = 1;
    private static final double GAP = 0.002;
    private static final double ROUNDING = 1e-9;

    /** Room for everything that pays: the budget has no price. */
    private static final ScenarioText AMPLE = TwoDepots.inPhases("first,0,5000", "second,2,");

    /** Not everything that pays can be bought at once. */
    private static final ScenarioText TIGHT = TwoDepots.inPhases("first,0,1000", "second,2,");

    /** Notes which questions were answered by a search. */
    private static final class Asked implements AnswerStore {
        private final List<String> questions = new ArrayList<>();

        @Override
        public Optional<Answer> find(String question) {
            return Optional.empty();
        }

        @Override
        public synchronized void keep(String question, Answer answer) {
            questions.add(question);
        }
    }

    private static LeftBehind leftBy(ScenarioText text) {
        Scenario scenario = Planned.load(text);
        Leaving leaving = new FleetPlanner(ProgressListener.SILENT).planLeaving(scenario, new TreeMap<>());
        assertThat(leaving.result().plan())
                .isEqualTo(new FleetPlanner(ProgressListener.SILENT)
                        .plan(scenario, new TreeMap<>())
                        .plan());
        return LeftBehind.of(scenario, rollouts(scenario), leaving.left().orElseThrow());
    }

    private static List<DepotRollout> rollouts(Scenario scenario) {
        DepotProblems problems = new DepotProblems(scenario);
        return scenario.depots().stream().map(problems::rollout).toList();
    }

    private static FleetStart start(LeftBehind left, Touched touched, ScenarioText text) {
        Scenario scenario = Planned.load(text);
        List<SharedLimit> limits = SharedLimits.of(scenario);
        FleetBound bounds = new FleetBound(limits, new QuantityPrices(scenario));
        return new FleetStart(scenario, rollouts(scenario), limits, bounds, Optional.of(left), touched);
    }

    private static Plan from(LeftBehind left, Touched touched, Scenario scenario, AnswerStore answers) {
        return new FleetPlanner(ProgressListener.SILENT, new RunControl(() -> false, answers))
                .planFrom(left, touched, scenario, new TreeMap<>())
                .plan();
    }

    private static double whole(Scenario scenario) {
        return new FleetPlanner(ProgressListener.SILENT)
                .plan(scenario, new TreeMap<>(), Method.WHOLE)
                .plan()
                .certificate()
                .cost();
    }

    private static void assertGood(Scenario scenario, Plan plan) {
        double other = whole(scenario);
        assertThat(FleetReplay.run(scenario, plan).proven()).isTrue();
        assertThat(BoundCheck.of(scenario, plan).faults()).isEmpty();
        assertThat(plan.certificate().bound()).isLessThanOrEqualTo(other * (1 + ROUNDING));
        assertThat(plan.certificate().cost()).isLessThanOrEqualTo(other * (1 + GAP));
    }

    @Test
    void aBudgetThatDoesNotBindIsChangedWithoutPlanningAnyDepot() {
        LeftBehind left = leftBy(AMPLE);
        Scenario scenario = Planned.load(TwoDepots.inPhases("first,0,4000", "second,2,"));
        Asked asked = new Asked();

        Plan plan = from(left, Touched.REPRICED, scenario, asked);

        assertThat(asked.questions).isEmpty();
        assertThat(plan.certificate().proven()).isTrue();
        assertGood(scenario, plan);
    }

    @Test
    void aBudgetThatBindsHasItsOwnPricesAndFewerPlans() {
        LeftBehind left = leftBy(AMPLE);
        Scenario scenario = Planned.load(TIGHT);
        Asked anew = new Asked();
        new FleetPlanner(ProgressListener.SILENT, new RunControl(() -> false, anew)).plan(scenario, new TreeMap<>());
        Asked begun = new Asked();

        Plan plan = from(left, Touched.REPRICED, scenario, begun);

        assertThat(begun.questions).isNotEmpty().hasSizeLessThanOrEqualTo(anew.questions.size());
        assertGood(scenario, plan);
    }

    @Test
    void onlyADepotThatHasChangedIsPlanned() {
        LeftBehind left = leftBy(AMPLE);
        ScenarioText text = AMPLE.replace("work.csv", "crew-2,2,trimmer,3", "crew-2,2,trimmer,4");
        Scenario scenario = Planned.load(text);
        Asked asked = new Asked();

        Plan plan = from(left, Touched.LEFT_OUT, scenario, asked);

        assertThat(asked.questions).isNotEmpty().allMatch(question -> question.startsWith("south "));
        assertGood(scenario, plan);
        FleetStart start = start(left, Touched.LEFT_OUT, text);
        assertThat(start.plans(SOUTH)).isEmpty();
        assertThat(start.bound(SOUTH)).isEmpty();
        assertThat(start.plans(NORTH)).isNotEmpty();
        assertThat(start.bound(NORTH)).isPresent();
    }

    @Test
    void plansOfADepotThatHasNotChangedAreAsTheyWere() {
        LeftBehind left = leftBy(TIGHT);

        FleetStart start = start(left, Touched.LEFT_OUT, TwoDepots.inPhases("first,0,1100", "second,2,"));

        for (int depot : List.of(NORTH, SOUTH)) {
            List<ProvenDepot> old =
                    left.depot(depot == NORTH ? "north" : "south").orElseThrow().plans();
            assertThat(start.plans(depot))
                    .extracting(plan -> plan.rollout().phases())
                    .isEqualTo(old.stream().map(plan -> plan.rollout().phases()).toList());
            assertThat(start.plans(depot)).allSatisfy(plan -> {
                assertThat(plan.replayed()).isTrue();
                assertThat(plan.bound()).isEqualTo(Double.NEGATIVE_INFINITY);
                assertThat(plan.rollout().use().keySet()).anyMatch(limit -> limit.most() == 1100);
            });
        }
    }

    @Test
    void plansAtOtherPricesCostWhatTheyCostThere() {
        LeftBehind left = leftBy(TIGHT);
        ScenarioText dearer = TIGHT.replace("crews.csv", ",700", ",1400");

        List<ProvenDepot> old = left.depot("south").orElseThrow().plans();
        List<ProvenDepot> repriced = start(left, Touched.REPRICED, dearer).plans(SOUTH);

        assertThat(repriced).hasSameSizeAs(old).allMatch(ProvenDepot::replayed);
        for (int p = 0; p < old.size(); p++) {
            assertThat(petrol(repriced.get(p))).isEqualTo(2 * petrol(old.get(p)));
        }
        assertThat(repriced).anyMatch(plan -> petrol(plan) > 0);
    }

    private static double petrol(ProvenDepot plan) {
        return plan.rollout().phases().stream()
                .flatMap(phase -> phase.costs().stream())
                .filter(line -> line.category() == CostLine.Category.PETROL)
                .mapToDouble(CostLine::presentCost)
                .sum();
    }

    /** A breaker of one ampere feeds no charger. */
    @Test
    void whatTheReplayFailsIsLeftOut() {
        LeftBehind left = leftBy(AMPLE);
        ScenarioText weaker = AMPLE.replace("circuits.csv", "south-1,south,230,1,16", "south-1,south,230,1,1");

        assertThat(start(left, Touched.REPRICED, AMPLE).plans(SOUTH)).isNotEmpty();
        assertThat(start(left, Touched.REPRICED, weaker).plans(SOUTH)).allMatch(plan -> plan.rollout().phases().stream()
                .allMatch(phase -> phase.chargers().isEmpty()));
        assertThat(start(left, Touched.REPRICED, weaker).plans(NORTH)).isNotEmpty();
    }

    /** A tier that takes more off makes pieces cheaper at any price of the budget: an old bound says nothing about that. */
    @Test
    void aBoundHoldsAtTheVerySamePricesOnly() {
        String tiers = "item,from_count,price\npack-500,4,%d\n";
        LeftBehind left = leftBy(TwoDepots.free().table("price_tiers.csv", tiers.formatted(250)));

        assertThat(start(left, Touched.LEFT_OUT, TwoDepots.free().table("price_tiers.csv", tiers.formatted(250)))
                        .bound(NORTH))
                .isPresent();
        assertThat(start(left, Touched.LEFT_OUT, TwoDepots.free().table("price_tiers.csv", tiers.formatted(200)))
                        .bound(NORTH))
                .isEmpty();
    }
}
