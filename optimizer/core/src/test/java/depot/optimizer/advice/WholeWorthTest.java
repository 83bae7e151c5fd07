package depot.optimizer.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import depot.optimizer.advice.AdviceSettings.Part;
import depot.optimizer.advice.Loosening.Limit;
import depot.optimizer.advice.thumb.ThumbSettings;
import depot.optimizer.fixture.Planned;
import depot.optimizer.fixture.ScenarioText;
import depot.optimizer.fixture.TwoDepots;
import depot.optimizer.fleet.FleetPlanner;
import depot.optimizer.fleet.FleetPlanner.Method;
import depot.optimizer.fleet.ProgressListener;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.Plan;
import depot.optimizer.scenario.Scenario;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/**
 * What more room is worth to two depots that were planned as one model. By hand: north needs two packs and a charger of two bays, 800, and south three packs
 * and two chargers, 1,300, since each pack waits in a bay of its own. What that saves against petrol for ten years is in SharedExplainTest.
 */
class WholeWorthTest {

    private static final Offset<Double> CENT = within(0.01);

    /** What packs save north and south. */
    private static final double NORTH = 5_475.48;

    private static final double SOUTH = 3_094.09;

    private static ScenarioText text(String budget) {
        return TwoDepots.inPhases("first,0," + budget).replace("scenario.json", "0.002", "0.000001");
    }

    private static ScenarioText onePlace(ScenarioText text) {
        return text.replace("depots.csv", "south,South yard,flat,400,3,63,10", "south,South yard,flat,400,3,63,1");
    }

    private static Advice advice(ScenarioText text) {
        return advice(text, EnumSet.of(Part.WORTH));
    }

    private static Advice advice(ScenarioText text, Set<Part> parts) {
        Scenario scenario = Planned.load(text);
        Plan plan = new FleetPlanner(ProgressListener.SILENT)
                .plan(scenario, new TreeMap<>(), Method.WHOLE)
                .plan();
        assertThat(plan.proof().given()).isFalse();
        return AdviceRun.of(
                scenario,
                plan,
                List.of("south"),
                new AdviceSettings(parts, ThumbSettings.USUAL, AdviceSettings.USUAL_WITHIN),
                AdviceProgress.SILENT);
    }

    private static Answer worth(Advice advice, Limit limit, String subject) {
        return advice.depots().get(0).limits().stream()
                .filter(worth -> worth.loosening().limit() == limit
                        && worth.loosening().subject().equals(subject))
                .findFirst()
                .orElseThrow()
                .answer();
    }

    private static FleetAdvice.More more(Advice advice, String limit) {
        return advice.fleet().orElseThrow().limits().stream()
                .filter(use -> use.limit().equals(limit))
                .findFirst()
                .orElseThrow()
                .more()
                .orElseThrow();
    }

    private static void assertSaves(Answer answer, double amount) {
        Difference difference = answer.difference().orElseThrow();
        assertThat(difference.told()).isTrue();
        assertThat(difference.found()).isCloseTo(-amount, CENT);
        assertThat(difference.least()).isCloseTo(-amount, CENT);
        assertThat(difference.most()).isCloseTo(-amount, CENT);
        assertThat(answer.plan().orElseThrow().proven()).isTrue();
    }

    private static void assertSavesNothing(Answer answer) {
        Difference difference = answer.difference().orElseThrow();
        assertThat(difference.found()).isCloseTo(0, CENT);
        assertThat(difference.told()).isFalse();
        assertThat(difference.least()).isCloseTo(0, CENT);
    }

    private static List<List<String>> onPetrol(Answer answer) {
        return answer.plan().orElseThrow().fleet().orElseThrow().depots().stream()
                .map(DepotPlan::onPetrol)
                .toList();
    }

    @Test
    void aHundredthOfABudgetThatIsJustShortIsWorthACrew() {
        FleetAdvice.More more = more(advice(text("2090")), "budget first");

        assertThat(more.step()).isEqualTo(21);
        assertSaves(more.answer(), SOUTH);
    }

    @Test
    void aHundredthOfABudgetThatIsNotSpentIsWorthNothing() {
        FleetAdvice.More more = more(advice(text("3000")), "budget first");

        assertThat(more.step()).isEqualTo(30);
        assertSavesNothing(more.answer());
    }

    @Test
    void oneMorePieceIsWorthACrewWhereOneIsMissing() {
        String deliveries = "item,phase,count\npack-500,first,";
        assertSaves(
                more(advice(text("").table("delivery_limits.csv", deliveries + "4\n")), "delivery first pack-500")
                        .answer(),
                SOUTH);
        assertSavesNothing(
                more(advice(text("").table("delivery_limits.csv", deliveries + "5\n")), "delivery first pack-500")
                        .answer());
    }

    /** Without a second place there is no second charger, and the third pack has no bay. */
    @Test
    void aPlaceIsWorthACrewWhereTheBudgetPaysForIt() {
        Advice advice = advice(onePlace(text("3000")));

        assertSaves(worth(advice, Limit.PLACES, "south"), SOUTH);
        assertSavesNothing(worth(advice, Limit.SUPPLY_AMPS, "south"));
        assertSavesNothing(worth(advice, Limit.PACK_PLACES, "south"));
    }

    @Test
    void aPlaceIsWorthNothingWhereTheBudgetIsSpentBetter() {
        assertSavesNothing(worth(advice(onePlace(text("1500"))), Limit.PLACES, "south"));
    }

    /** Where south has more to save than north, north goes back to petrol for it: a plan that is not there while north is held. */
    @Test
    void aPlaceIsWorthWhatTheWholeFleetMakesOfIt() {
        ScenarioText dear =
                onePlace(text("1500")).replace("crews.csv", "crew-2,south,8,60,700", "crew-2,south,8,60,2000");
        Answer answer = worth(advice(dear), Limit.PLACES, "south");

        // Petrol of 1,300 a year more for ten years at five per cent, from an interest table.
        assertSaves(answer, SOUTH + 1_300 * 7.721735 - NORTH);
        assertThat(onPetrol(answer)).containsExactly(List.of("crew-1"), List.of());
    }

    @Test
    void nothingIsPlannedAnewWhereThatIsNotAsked() {
        Advice advice = advice(text("2090"), EnumSet.of(Part.THUMB));

        assertThat(advice.fleet().orElseThrow().limits()).isNotEmpty().allSatisfy(use -> assertThat(use.more())
                .isEmpty());
    }

    /** Its prices bound what more of a budget is worth, as ever. */
    @Test
    void aPlanByPricesIsNotPlannedAnew() {
        Scenario scenario = Planned.load(text("2090"));
        Plan plan = new FleetPlanner(ProgressListener.SILENT)
                .plan(scenario, new TreeMap<>())
                .plan();

        assertThat(FleetAnew.asks(scenario, plan)).isFalse();
        assertThat(AdviceRun.tellsWorth(scenario, plan)).isTrue();
        Plan assembled = plan.with(plan.certificate(), plan.fleetCosts(), plan.depots());
        assertThat(FleetAnew.asks(scenario, assembled)).isFalse();
        assertThat(AdviceRun.tellsWorth(scenario, assembled)).isFalse();
    }
}
