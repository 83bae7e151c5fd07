package depot.optimizer.model;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.fixture.Planned;
import depot.optimizer.fixture.ScenarioText;
import depot.optimizer.mip.Engine;
import depot.optimizer.mip.Limits;
import depot.optimizer.mip.MipModel;
import depot.optimizer.mip.Outcome;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.DepotProblems;
import depot.optimizer.scenario.Scenario;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * A vehicle has places for eight packs while its crew works with packs, and for none while it stays on petrol: a pack that it took along for nothing cost
 * little enough to be left in a plan within the gap, and was then loaded without having been brought back.
 */
class PackPlacesTest {

    private static final int PLACES = 8;

    /** Most packs that the crew can take along. */
    private static int mostPacks(boolean electric) {
        Scenario scenario = Planned.load(ScenarioText.tiny()
                .column("crews.csv", "petrol_cost_per_year", "100")
                .table("crew_phases.csv", "crew,earliest_phase,latest_phase\ncrew-1,,\n"));
        DepotProblem problem = new DepotProblems(scenario).of(scenario.depots().get(0));
        MipModel model = new MipModel("most packs on board");
        CapacityVars capacity = DepotModel.addCapacity(model, problem, Set.of());
        DayTerms terms = new DayTerms(Tightening.NONE, ShortagePolicy.REFUSE);
        DayVars day = DepotModel.addDay(model, problem, capacity, problem.days().get(0), "d0", terms);
        // Far more than any pack or charger costs.
        day.carriedPacks().forEach(packs -> model.cost(-1e6, packs));
        MipModel decided = model.fixed(List.of(capacity.electric[0]), new double[] {electric ? 1 : 0});

        Outcome outcome = Engine.BRANCH_AND_CUT.solve(decided, new Limits(0, 10_000, 60, 1));

        return day.carriedPacks().stream().mapToInt(outcome::count).sum();
    }

    @Test
    void aCrewWithPacksFillsItsVehicle() {
        assertThat(mostPacks(true)).isEqualTo(PLACES);
    }

    @Test
    void aCrewOnPetrolTakesNoneAlong() {
        assertThat(mostPacks(false)).isZero();
    }
}
