package depot.optimizer.fleet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import depot.optimizer.fixture.Planned;
import depot.optimizer.fixture.ScenarioText;
import depot.optimizer.fixture.TwoDepots;
import depot.optimizer.fleet.FleetPlanner.Method;
import depot.optimizer.plan.FleetCost;
import depot.optimizer.plan.Plan;
import depot.optimizer.replay.BoundCheck;
import depot.optimizer.replay.FleetReplay;
import depot.optimizer.replay.Violation;
import depot.optimizer.replay.Violation.Kind;
import depot.optimizer.scenario.Scenario;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Two depots of one crew each that share something, by both methods. */
class SharedFleetTest {

    private static final double GAP = 0.002;

    private static FleetResult plan(ScenarioText text, Method method) {
        return new FleetPlanner(ProgressListener.SILENT).plan(Planned.load(text), new TreeMap<>(), method);
    }

    private static double cost(ScenarioText text) {
        return plan(text, Method.APART).plan().certificate().cost();
    }

    /** By hand: two packs and a duo cost 800 at the depot of 2 h, three packs and a duo 1100 at that of 3 h. */
    @ParameterizedTest
    @EnumSource(Method.class)
    void aBudgetDecidesWhichCrewChangesWhen(Method method) {
        ScenarioText free = TwoDepots.inPhases("first,0,", "second,2,");
        Plan all = plan(free, method).plan();
        assertThat(all.depots()).hasSize(4).allSatisfy(depot -> assertThat(depot.onPetrol())
                .isEmpty());

        FleetResult tight = plan(TwoDepots.inPhases("first,0,1000", "second,2,"), method);
        assertThat(tight.replay().violations()).isEmpty();
        assertThat(tight.replay().proven()).isTrue();
        assertThat(tight.plan().depots().get(0).onPetrol()).isEmpty();
        assertThat(tight.plan().depots().get(1).onPetrol()).containsExactly("crew-2");
        assertThat(tight.plan().depots().get(3).onPetrol()).isEmpty();
        assertThat(tight.plan().certificate().cost())
                .isGreaterThan(all.certificate().cost());
    }

    @Test
    void bothMethodsAgreeAndNoBoundIsAboveTheOthersCost() {
        for (ScenarioText text : new ScenarioText[] {
            TwoDepots.inPhases("first,0,1000", "second,2,"),
            TwoDepots.inPhases("first,0,1000", "second,2,")
                    .table("price_tiers.csv", "item,from_count,price\npack-500,3,250\n"),
            TwoDepots.free().table("price_tiers.csv", "item,from_count,price\npack-500,4,250\npack-500,9,200\n"),
            TwoDepots.free()
                    .table("owned.csv", "depot,circuit,crew,item,count\nnorth,,,pack-500,6\n")
                    .table("moves.csv", "item,cost\npack-500,10\n"),
            TwoDepots.inPhases("first,0,", "second,3,")
                    .table("delivery_limits.csv", "item,phase,count\npack-500,first,3\n")
        }) {
            Scenario scenario = Planned.load(text);
            FleetResult apart = plan(text, Method.APART);
            FleetResult whole = plan(text, Method.WHOLE);
            double best = Math.min(
                    apart.plan().certificate().cost(),
                    whole.plan().certificate().cost());

            assertThat(apart.replay().violations()).isEmpty();
            assertThat(whole.replay().violations()).isEmpty();
            assertThat(apart.plan().certificate().bound()).isLessThanOrEqualTo(best * (1 + 1e-9));
            assertThat(whole.plan().certificate().bound()).isLessThanOrEqualTo(best * (1 + 1e-9));
            assertThat(whole.plan().certificate().gap()).isLessThanOrEqualTo(GAP);
            assertThat(apart.plan().certificate().cost())
                    .isCloseTo(whole.plan().certificate().cost(), within(0.05 * best));
            assertThat(BoundCheck.of(scenario, apart.plan()).faults()).isEmpty();
        }
    }

    @Test
    void aLargerBudgetNeverCostsMore() {
        double before = Double.POSITIVE_INFINITY;
        for (int budget : new int[] {0, 1000, 1200, 2500}) {
            double cost = cost(TwoDepots.inPhases("first,0," + budget, "second,4,"));
            assertThat(cost).isLessThanOrEqualTo(before * (1 + GAP));
            before = cost;
        }
        assertThat(before).isCloseTo(cost(TwoDepots.inPhases("first,0,", "second,4,")), within(GAP * before));
    }

    @Test
    void aFleetTwiceWithTwiceTheBudgetCostsTwice() {
        Plan once = plan(TwoDepots.inPhases("first,0,1000", "second,4,"), Method.APART)
                .plan();
        ScenarioText twice = TwoDepots.inPhases("first,0,2000", "second,4,")
                .rows("depots.csv", "east,East yard,flat,400,3,63,10", "west,West yard,flat,400,3,63,10")
                .rows("circuits.csv", "east-1,east,230,1,16,4", "west-1,west,230,1,16,4")
                .rows("crews.csv", "crew-3,east,8,60,900", "crew-4,west,8,60,700")
                .rows("crew_phases.csv", "crew-3,first,", "crew-4,first,")
                .rows(
                        "stops.csv",
                        "summer,Mon-Fri,crew-3,1,east,,07:00",
                        "summer,Mon-Fri,crew-3,2,park,08:00,15:00",
                        "summer,Mon-Fri,crew-3,3,east,16:00,",
                        "summer,Mon-Fri,crew-4,1,west,,07:00",
                        "summer,Mon-Fri,crew-4,2,park,08:00,15:00",
                        "summer,Mon-Fri,crew-4,3,west,16:00,")
                .rows("work.csv", "summer,Mon-Fri,crew-3,2,trimmer,2", "summer,Mon-Fri,crew-4,2,trimmer,3");
        Plan doubled = plan(twice, Method.APART).plan();

        assertThat(doubled.certificate().cost())
                .isBetween(
                        2 * once.certificate().bound(), 2 * once.certificate().cost() * (1 + GAP));
        assertThat(doubled.certificate().bound())
                .isLessThanOrEqualTo(2 * once.certificate().cost() * (1 + 1e-9));
    }

    @Test
    void aQuantityPriceNeverRaisesTheCost() {
        ScenarioText tier = TwoDepots.free().table("price_tiers.csv", "item,from_count,price\npack-500,5,240\n");
        FleetResult cheaper = plan(tier, Method.WHOLE);

        // Five packs: 60 off each, less what they are worth less at the end (1.05^-10).
        double off = 5 * 60 * (1 - Math.pow(1.05, -10));
        assertThat(cost(TwoDepots.free()) - cheaper.plan().certificate().cost())
                .isCloseTo(off, within(GAP * cost(TwoDepots.free())));
        assertThat(cheaper.plan().fleetCosts()).hasSize(1);
        assertThat(cost(tier)).isLessThanOrEqualTo(cost(TwoDepots.free()) * (1 + GAP));
    }

    /**
     * Five packs are needed and some are owned. Where the price of five is 100 in place of 300, five are bought all the same: the model leaves owned ones
     * idle, a plan uses them and keeps the new ones as spare. At 290 only those that are missing are bought.
     */
    @ParameterizedTest
    @CsvSource({"1, 100, 1", "2, 100, 2", "1, 290, 0", "2, 290, 0"})
    void ownedPacksDoNotCountTowardsAQuantityPrice(int owned, int price, int spare) {
        ScenarioText text = TwoDepots.free()
                .table("owned.csv", "depot,circuit,crew,item,count\nnorth,,,pack-500," + owned + "\n")
                .table("price_tiers.csv", "item,from_count,price\npack-500,5," + price + "\n");
        FleetResult whole = plan(text, Method.WHOLE);

        assertThat(whole.replay().violations()).isEmpty();
        assertThat(whole.plan().fleetCosts().stream()
                        .filter(cost -> cost.kind() == FleetCost.Kind.SPARE_PIECES)
                        .mapToInt(FleetCost::pieces)
                        .sum())
                .isEqualTo(spare);
        assertThat(whole.plan().certificate().bound())
                .isLessThanOrEqualTo(whole.plan().certificate().cost() * (1 + 1e-9));
    }

    @Test
    void aBudgetTooSmallForAnyPlanIsToldWithTheSmallestThatWouldDo() {
        ScenarioText must = TwoDepots.free().table("phases.csv", "phase,year,budget\nfirst,0,1500\n");

        assertThatThrownBy(() -> plan(must, Method.APART))
                .isInstanceOf(NothingFitsException.class)
                .hasMessageContaining("budget first is 1500 EUR, and no plan does with less than 2100");
        assertThat(plan(must.replace("phases.csv", "1500", "2100"), Method.APART)
                        .replay()
                        .proven())
                .isTrue();
    }

    @Test
    void theReplaySeesABudgetThatIsExceeded() {
        Plan plan = plan(TwoDepots.inPhases("first,0,1000", "second,2,"), Method.APART)
                .plan();

        assertThat(FleetReplay.run(Planned.load(TwoDepots.inPhases("first,0,800", "second,2,")), plan)
                        .violations())
                .isEmpty();
        assertThat(FleetReplay.run(Planned.load(TwoDepots.inPhases("first,0,799", "second,2,")), plan)
                        .violations())
                .extracting(Violation::kind)
                .containsExactly(Kind.SHARED_LIMIT);
    }

    @Test
    void aCertificateThatWasChangedDoesNotAddUp() {
        ScenarioText text = TwoDepots.inPhases("first,0,1000", "second,2,");
        Plan plan = plan(text, Method.APART).plan();
        Scenario wider = Planned.load(TwoDepots.inPhases("first,0,1001", "second,2,"));

        assertThat(BoundCheck.of(Planned.load(text), plan).faults()).isEmpty();
        assertThat(BoundCheck.of(wider, plan).faults())
                .anySatisfy(fault -> assertThat(fault).contains("budget first"));
    }
}
