package depot.optimizer.sweep.change;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.fixture.Planned;
import depot.optimizer.fixture.ScenarioText;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.DepotProblems;
import depot.optimizer.scenario.Scenario;
import java.math.BigDecimal;
import org.junit.jupiter.api.Test;

class PlanBasisTest {

    private static final ScenarioText TEXT = ScenarioText.tiny().column("crews.csv", "petrol_cost_per_year", "60");

    @Test
    void namesAndPetrolThatNothingDependsOnAreLeftOut() {
        ScenarioText other =
                TEXT.replace("depots.csv", "North yard", "Old yard").replace("crews.csv", ",60,60", ",60,70");
        assertThat(problem(other)).isEqualTo(problem(TEXT));
    }

    @Test
    void petrolOfACrewThatMayStayOnItCounts() {
        ScenarioText choice = TEXT.table("crew_phases.csv", "crew,earliest_phase,latest_phase\ncrew-1,,\n");
        assertThat(problem(choice).choice()).containsExactly("crew-1");
        assertThat(problem(choice).crews().get(0).petrolCostPerYear()).isEqualByComparingTo(new BigDecimal(60));
        assertThat(problem(choice.replace("crews.csv", ",60,60", ",60,70"))).isNotEqualTo(problem(choice));
    }

    @Test
    void aSweepPlansCrewsWithAChoiceAsAPlanDoes() {
        ScenarioText choice = TEXT.table("crew_phases.csv", "crew,earliest_phase,latest_phase\ncrew-1,,\n")
                .replace("crews.csv", ",60,60", ",60,100000");
        Scenario scenario = Planned.load(choice);
        assertThat(Planned.of(scenario).plan().onPetrol()).isEmpty();
        assertThat(Planned.of(OneDepot.of(scenario, "north")).plan().onPetrol()).isEmpty();
    }

    private static DepotProblem problem(ScenarioText text) {
        Scenario basis = PlanBasis.of(Planned.load(text));
        return new DepotProblems(basis).of(basis.depots().get(0));
    }
}
