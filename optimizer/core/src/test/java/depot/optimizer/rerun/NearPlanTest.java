package depot.optimizer.rerun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import depot.optimizer.fixture.Planned;
import depot.optimizer.fixture.ScenarioText;
import depot.optimizer.fixture.TwoDepots;
import depot.optimizer.fleet.FleetPlanner;
import depot.optimizer.fleet.ProgressListener;
import depot.optimizer.plan.BoundProof;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.Plan;
import depot.optimizer.replay.BoundCheck;
import depot.optimizer.replay.FleetReplay;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.sweep.FleetAssembly;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** One depot planned within what the other leaves, and the bound at an earlier certificate's prices. North needs 800, south 1,300. */
class NearPlanTest {

    private static final double GAP = 0.002;

    private static Plan plan(Scenario scenario) {
        return new FleetPlanner(ProgressListener.SILENT)
                .plan(scenario, new TreeMap<>())
                .plan();
    }

    private static ScenarioText budget(int amount) {
        return TwoDepots.free().table("phases.csv", "phase,year,budget\nall,0,%d\n".formatted(amount));
    }

    @Test
    void aDepotHasWhatTheOthersLeaveOfABudget() {
        Scenario scenario = Planned.load(budget(2100));
        Plan whole = plan(scenario);
        List<DepotPlan> north = FleetAssembly.byDepot(whole).get("north");

        Plan near = NearPlan.of(scenario, new FleetAssembly(scenario), Map.of("north", north), whole, 0)
                .orElseThrow();
        Scenario tight = Planned.load(budget(2099));

        assertThat(near.certificate().cost())
                .isCloseTo(
                        whole.certificate().cost(),
                        within(GAP * whole.certificate().cost()));
        assertThat(FleetReplay.run(scenario, near).proven()).isTrue();
        // One less, and something is missing: south falls short.
        Plan lacking = NearPlan.of(tight, new FleetAssembly(tight), Map.of("north", north), whole, 0)
                .orElseThrow();
        assertThat(lacking.depots().get(1).days().get(0).trips())
                .anyMatch(trip -> !trip.shortages().isEmpty());
    }

    @Test
    void theBoundAtEarlierPricesIsABound() {
        Scenario scenario = Planned.load(TwoDepots.inPhases("first,0,1000", "second,2,"));
        Scenario dearer =
                Planned.load(TwoDepots.inPhases("first,0,1000", "second,2,").replace("tariffs.csv", "0.30", "0.60"));
        Plan earlier = plan(scenario);
        FleetAssembly assembly = new FleetAssembly(dearer);

        BoundProof proof =
                EarlierPrices.proof(dearer, assembly, earlier.proof()).orElseThrow();
        double bound = proof.bound();
        Plan best = plan(dearer);

        assertThat(bound).isLessThanOrEqualTo(best.certificate().cost() * (1 + 1e-9));
        // Dearer energy makes no plan cheaper, so that neither is the bound at the same prices lower.
        assertThat(bound).isGreaterThanOrEqualTo(earlier.certificate().bound() * (1 - GAP));
        assertThat(BoundCheck.of(scenario, earlier).faults()).isEmpty();
    }

    @Test
    void quantityPricesThatTheCertificateDoesNotKnowGiveNoBound() {
        Scenario tiers =
                Planned.load(TwoDepots.free().table("price_tiers.csv", "item,from_count,price\npack-500,4,250\n"));

        assertThat(EarlierPrices.proof(tiers, new FleetAssembly(tiers), BoundProof.NONE))
                .isEmpty();
    }
}
