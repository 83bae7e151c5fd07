package depot.optimizer.fleet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import depot.optimizer.fixture.Planned;
import depot.optimizer.fleet.OpenDepots.Aim;
import depot.optimizer.generate.FleetGenerator;
import depot.optimizer.generate.GeneratorSettings;
import depot.optimizer.plan.Certificate;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.problem.DepotProblems;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.scenario.SolveSettings;
import depot.optimizer.solve.Effort;
import java.util.List;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Which depots are worked on where only the sum of their gaps counts. */
class OpenDepotsTest {

    /** One node leaves every first look open. */
    private static Scenario hasty(double gap) {
        return FleetGenerator.generate(new GeneratorSettings(1, 4, 3, 2, 2, 2, 1), 1)
                .withSolve(new SolveSettings(gap, 1, 120, 1, 1, 15));
    }

    private static OpenDepot first(Scenario scenario) {
        OpenDepot depot = OpenDepot.alone(
                scenario, new DepotProblems(scenario).rollout(scenario.depots().get(0)), AnswerStore.NONE);
        depot.further();
        return depot;
    }

    private static double share() {
        OpenDepot depot = first(hasty(1e-6));
        assertThat(depot.open()).isPositive();
        return depot.open() / depot.cost();
    }

    @Test
    void aDepotIsLeftOpenWhereTheSumIsSmallEnough() {
        OpenDepot depot = first(hasty(0.7 * share()));

        assertThat(depot.done()).isFalse();
        assertThat(OpenDepots.next(List.of(depot), 0, Aim.EACH)).isEmpty();
        assertThat(OpenDepots.next(List.of(depot), 1, Aim.SUM)).containsExactly(depot);
        assertThat(depot.result().plan().stop().reason()).isEqualTo("the fleet's gap needed no more");
    }

    @Test
    void noDepotThatIsAskedAboutIsLeftMoreThanTwiceAsFarOpenAsAsked() {
        OpenDepot depot = first(hasty(0.4 * share()));

        assertThat(OpenDepots.next(List.of(depot), 0, Aim.SUM)).isEmpty();
        assertThat(OpenDepots.next(List.of(depot), 0, Aim.EACH)).containsExactly(depot);
        for (int effort = depot.efforts(); effort < Effort.values().length; effort++) {
            depot.further();
        }
        assertThat(OpenDepots.next(List.of(depot), 0, Aim.EACH)).isEmpty();
    }

    @Test
    void theLeastWorkedOnComesFirst() {
        Scenario scenario = hasty(1e-6);
        OpenDepot fresh = first(scenario);
        OpenDepot worked = first(scenario);
        worked.further();
        assertThat(worked.done()).isFalse();

        assertThat(OpenDepots.next(List.of(worked, fresh), 1, Aim.SUM)).containsExactly(fresh, worked);
    }

    @Test
    void aDepotBesideOthersHasTheGapThatTheyLeave() {
        Scenario scenario = hasty(0.7 * share());
        Certificate closed = Certificate.of(1e9, 1e9, 0);
        Certificate open = Certificate.of(1e9, 0, 0);

        DepotPlan left = beside(closed, scenario);
        DepotPlan closedAlone = new FleetPlanner(ProgressListener.SILENT)
                .plan(scenario, new TreeMap<>())
                .plan()
                .depots()
                .get(0);

        assertThat(left.stop().reason()).isEqualTo("the fleet's gap needed no more");
        assertThat(beside(open, scenario)).isEqualTo(closedAlone);
        assertThat(closedAlone.stop().certificate().gap())
                .isLessThanOrEqualTo(left.stop().certificate().gap());
    }

    private static DepotPlan beside(Certificate others, Scenario scenario) {
        return new FleetPlanner(ProgressListener.SILENT)
                .planBeside(others, scenario, new TreeMap<>())
                .plan()
                .depots()
                .get(0);
    }

    @Test
    void aKnownPlanThatIsWithinTheGapIsNotSearched() {
        Scenario scenario = Planned.load(SmallFleet.lunch().setting("solve", "{\"gap\": 0.05, \"threads\": 1}"));
        OpenDepot found = first(scenario);
        DepotResult result = found.result();

        OpenDepot known = OpenDepot.known(
                scenario,
                new DepotProblems(scenario).rollout(scenario.depots().get(0)),
                AnswerStore.NONE,
                result,
                0.96 * found.cost());

        assertThat(known.done()).isTrue();
        assertThat(known.searched()).isFalse();
        assertThat(known.cost()).isEqualTo(found.cost());
        assertThat(known.open()).isCloseTo(0.04 * found.cost(), within(1e-6));
    }
}
