package depot.optimizer.finance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import depot.optimizer.fixture.Planned;
import depot.optimizer.fixture.ScenarioText;
import depot.optimizer.fixture.TwoDepots;
import depot.optimizer.fleet.FleetPlanner;
import depot.optimizer.fleet.ProgressListener;
import depot.optimizer.plan.FleetCost;
import depot.optimizer.plan.Plan;
import depot.optimizer.scenario.Scenario;
import java.util.TreeMap;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/**
 * What quantity prices do to the cash flow and to taxes, by hand. Two depots buy two and three packs at 300, which come back at what was paid after ten
 * years, and one and two chargers at 200, a bay for each pack, which last as long. A quarter is tax; four tenths are written off in the first year, six in the second.
 */
class QuantityPriceFlowsTest {

    private static final Offset<Double> CENT = within(0.005);
    private static final String TAX = "{\"tax_rate\": 0.25, \"depreciation\": \"two-year\"}";

    private static ScenarioText tiers(String... rows) {
        return TwoDepots.free()
                .setting("finance", TAX)
                .table("depreciation.csv", "schedule,year,share\ntwo-year,1,0.4\ntwo-year,2,0.6\n")
                .table("price_tiers.csv", "item,from_count,price\n")
                .rows("price_tiers.csv", rows);
    }

    private static Plan plan(Scenario scenario) {
        return new FleetPlanner(ProgressListener.SILENT)
                .plan(scenario, new TreeMap<>())
                .plan();
    }

    private static CashFlow flow(ScenarioText text) {
        Scenario scenario = Planned.load(text);
        Plan plan = plan(scenario);
        CashFlow flow = CashFlow.of(scenario, plan);
        assertThat(Appraisal.of(flow).presentCost())
                .isCloseTo(plan.certificate().cost(), CENT);
        return flow;
    }

    /** Written off and worth at the end is what was paid: what is left of it is neither a gain nor a loss but for the packs, whose books are empty. */
    private static void assertFlows(CashFlow flow, double fleet, double paid, double packsAtEnd) {
        assertThat(flow.at(FlowKind.PURCHASES, 0)).isCloseTo(-5 * 300 - 3 * 200, CENT);
        assertThat(flow.at(FlowKind.FLEET_PURCHASES, 0)).isCloseTo(fleet, CENT);
        assertThat(flow.at(FlowKind.VALUE_AT_END, 10)).isCloseTo(packsAtEnd, CENT);
        assertThat(flow.at(FlowKind.TAX_SHIELD, 1)).isCloseTo(0.25 * 0.4 * paid, CENT);
        assertThat(flow.at(FlowKind.TAX_SHIELD, 2)).isCloseTo(0.25 * 0.6 * paid, CENT);
        assertThat(flow.at(FlowKind.TAX_SHIELD, 3)).isZero();
        double yearly = flow.at(FlowKind.TAX_ON_SAVING, 9);
        assertThat(flow.at(FlowKind.TAX_ON_SAVING, 10)).isCloseTo(yearly - 0.25 * packsAtEnd, CENT);
    }

    @Test
    void aTierThatIsReachedLowersWhatIsWrittenOff() {
        assertFlows(flow(tiers("pack-500,5,240")), 5 * 60, 5 * 240 + 3 * 200, 5 * 240);
    }

    @Test
    void aTierThatIsNotReachedChangesNothing() {
        assertFlows(flow(tiers("pack-500,99,240")), 0, 5 * 300 + 3 * 200, 5 * 300);
    }

    /** A sixth pack makes six of them cost 6 x 240 in place of 5 x 300. */
    @Test
    void aSparePieceIsWrittenOffWithTheOthers() {
        assertFlows(flow(tiers("pack-500,6,240")), 6 * 60 - 300, 6 * 240 + 3 * 200, 6 * 240);
    }

    /** The order was for three chargers; those that follow them after four and eight years cost their own price, and are written off at it. */
    @Test
    void whatFollowsAtTheEndOfALifeCostsItsOwnPrice() {
        CashFlow flow = flow(tiers("duo,2,150").replace("charger_types.csv", "no,200,10", "no,200,4"));

        assertThat(flow.at(FlowKind.FLEET_PURCHASES, 0)).isCloseTo(3 * 50, CENT);
        assertThat(flow.byKind().get(FlowKind.FLEET_PURCHASES).subList(1, 11)).containsOnly(0.0);
        assertThat(flow.at(FlowKind.REPLACEMENTS, 4)).isCloseTo(-3 * 200, CENT);
        assertThat(flow.at(FlowKind.REPLACEMENTS, 8)).isCloseTo(-3 * 200, CENT);
        assertThat(flow.at(FlowKind.TAX_SHIELD, 1)).isCloseTo(0.25 * 0.4 * (5 * 300 + 3 * 150), CENT);
        assertThat(flow.at(FlowKind.TAX_SHIELD, 5)).isCloseTo(0.25 * 0.4 * 3 * 200, CENT);
        // Half of the life of the last three is left, and they were bought at their own price.
        assertThat(flow.at(FlowKind.VALUE_AT_END, 10)).isCloseTo(5 * 300 + 3 * 200 / 2.0, CENT);
    }

    @Test
    void aPieceThatOutlivesThePlanIsWorthItsShareOfWhatWasPaid() {
        CashFlow flow = flow(tiers("duo,2,150").replace("charger_types.csv", "no,200,10", "no,200,16"));

        assertThat(flow.at(FlowKind.VALUE_AT_END, 10)).isCloseTo(5 * 300 + 3 * 150 * 6 / 16.0, CENT);
    }

    /** Bought after three years, written off from the fourth on. */
    @Test
    void anOrderOfALaterPhaseIsWrittenOffFromThenOn() {
        ScenarioText phases = tiers("pack-500,2,240")
                .table("phases.csv", "phase,year,budget\nfirst,0,\nsecond,3,\n")
                .table(
                        "crew_phases.csv",
                        "crew,earliest_phase,latest_phase\ncrew-1,second,second\ncrew-2,second,second\n");
        CashFlow flow = flow(phases);

        assertThat(flow.at(FlowKind.FLEET_PURCHASES, 0)).isZero();
        assertThat(flow.at(FlowKind.FLEET_PURCHASES, 3)).isCloseTo(5 * 60, CENT);
        assertThat(flow.at(FlowKind.TAX_SHIELD, 3)).isZero();
        assertThat(flow.at(FlowKind.TAX_SHIELD, 4)).isCloseTo(0.25 * 0.4 * (5 * 240 + 3 * 200), CENT);
    }

    @Test
    void anItemThatTheScenarioLacksIsNamed() {
        Scenario scenario = Planned.load(TwoDepots.free());
        FleetCost cost = new FleetCost(
                scenario.coupling().phases().get(0).id(), FleetCost.Kind.QUANTITY_PRICE, "trio", 2, 5, -10);

        assertThatThrownBy(() -> FleetOutlays.of(scenario, cost))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("'trio'");
    }
}
