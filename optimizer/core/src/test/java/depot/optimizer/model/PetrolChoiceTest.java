package depot.optimizer.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import depot.optimizer.fixture.Planned;
import depot.optimizer.fixture.ScenarioText;
import depot.optimizer.plan.CostLine.Category;
import org.junit.jupiter.api.Test;

/** A crew that need not change to packs does so where that is cheaper, and only then. */
class PetrolChoiceTest {

    private static final double CENT = 0.005;
    private static final double ANNUITY = (1 - Math.pow(1.05, -10)) / 0.05;

    /** The crew pays so much for petrol and may stay on it. */
    private static ScenarioText petrol(double costPerYear) {
        return ScenarioText.tiny()
                .column("crews.csv", "petrol_cost_per_year", Double.toString(costPerYear))
                .table("crew_phases.csv", "crew,earliest_phase,latest_phase\ncrew-1,,\n");
    }

    @Test
    void aCrewStaysOnCheapPetrolAndNothingIsBoughtForIt() {
        Planned planned = Planned.of(petrol(10)).proven();

        assertThat(planned.plan().onPetrol()).containsExactly("crew-1");
        assertThat(planned.packs()).isZero();
        assertThat(planned.chargers()).isZero();
        assertThat(planned.cost()).isCloseTo(10 * ANNUITY, within(CENT));
        assertThat(planned.cost(Category.PETROL)).isCloseTo(10 * ANNUITY, within(CENT));
    }

    @Test
    void aCrewLeavesDearPetrol() {
        Planned planned = Planned.of(petrol(1_000)).proven();

        assertThat(planned.plan().onPetrol()).isEmpty();
        assertThat(planned.cost())
                .isCloseTo(Planned.of(ScenarioText.tiny()).proven().cost(), within(CENT));
    }

    @Test
    void theChoiceTurnsWherePetrolCostsWhatPacksDo() {
        double packs = Planned.of(ScenarioText.tiny()).proven().cost() / ANNUITY;

        assertThat(Planned.of(petrol(packs - 0.01)).proven().plan().onPetrol()).containsExactly("crew-1");
        assertThat(Planned.of(petrol(packs + 0.01)).proven().plan().onPetrol()).isEmpty();
    }

    @Test
    void aCrewThatIsNotListedHasToChange() {
        ScenarioText text = ScenarioText.tiny().column("crews.csv", "petrol_cost_per_year", "10");

        assertThat(Planned.of(text).proven().plan().onPetrol()).isEmpty();
    }

    /** Two crews with the same work, at different times, so that together they need hardly more than one. */
    @Test
    void crewsChooseTogether() {
        ScenarioText two = petrol(60)
                .rows("crews.csv", "crew-2,north,8,60,60")
                .rows("crew_phases.csv", "crew-2,,")
                .rows(
                        "stops.csv",
                        "summer,Mon-Fri,crew-2,1,north,,07:00",
                        "summer,Mon-Fri,crew-2,2,heath,08:00,15:00",
                        "summer,Mon-Fri,crew-2,3,north,16:00,")
                .rows("work.csv", "summer,Mon-Fri,crew-2,2,trimmer,2");
        double both = Planned.of(two.without("crew_phases.csv")).proven().cost();
        double one = Planned.of(ScenarioText.tiny()).proven().cost() + 60 * ANNUITY;
        double none = 2 * 60 * ANNUITY;

        assertThat(Planned.of(two).proven().cost()).isCloseTo(Math.min(none, Math.min(one, both)), within(CENT));
    }
}
