package depot.optimizer.fleet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import depot.optimizer.fixture.Planned;
import depot.optimizer.fixture.TwoDepots;
import depot.optimizer.plan.Plan;
import depot.optimizer.replay.BoundCheck;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.solve.NoPlanException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.Test;

/** A run that is broken off goes on where it was, and ends as if nothing had happened. */
class BrokenOffRunTest {

    private static final Scenario SHARED = Planned.load(TwoDepots.inPhases("first,0,1000", "second,2,"));

    /** Keeps answers, and counts those that had to be worked out. */
    private static final class Kept implements AnswerStore {
        private final Map<String, Answer> answers = new LinkedHashMap<>();
        private int workedOut;

        @Override
        public synchronized Optional<Answer> find(String question) {
            return Optional.ofNullable(answers.get(question));
        }

        @Override
        public synchronized void keep(String question, Answer answer) {
            assertThat(answers.put(question, answer)).isNull();
            workedOut++;
        }
    }

    private static Plan plan(Scenario scenario, BooleanSupplier stop, AnswerStore answers) {
        return new FleetPlanner(ProgressListener.SILENT, new RunControl(stop, answers))
                .plan(scenario, new TreeMap<>())
                .plan();
    }

    @Test
    void goesOnAfterEveryNumberOfAnswers() {
        Kept unbroken = new Kept();
        Plan whole = plan(SHARED, () -> false, unbroken);
        assertThat(unbroken.workedOut).isGreaterThan(4);
        for (int had = 0; had <= unbroken.workedOut; had++) {
            Kept some = new Kept();
            unbroken.answers.entrySet().stream()
                    .limit(had)
                    .forEach(entry -> some.answers.put(entry.getKey(), entry.getValue()));

            assertThat(plan(SHARED, () -> false, some)).isEqualTo(whole);
            assertThat(some.workedOut).isEqualTo(unbroken.workedOut - had);
        }
    }

    @Test
    void stoppedBeforeThereIsAPlanItSaysSo() {
        Kept answers = new Kept();
        assertThatThrownBy(() -> plan(SHARED, () -> answers.workedOut >= 1, answers))
                .isInstanceOf(NoPlanException.class)
                .hasMessageContaining("stopped before the fleet had a plan");
        assertThat(answers.workedOut).isEqualTo(1);

        assertThat(plan(SHARED, () -> false, answers)).isEqualTo(plan(SHARED, () -> false, AnswerStore.NONE));
    }

    @Test
    void stoppedLaterItHasTheBestPlanSoFarWithItsGap() {
        Kept unbroken = new Kept();
        Plan whole = plan(SHARED, () -> false, unbroken);
        Kept answers = new Kept();
        Plan early = plan(SHARED, () -> answers.workedOut >= unbroken.workedOut - 1, answers);

        assertThat(early.certificate().cost())
                .isGreaterThanOrEqualTo(whole.certificate().cost());
        assertThat(early.certificate().bound())
                .isLessThanOrEqualTo(whole.certificate().cost());
        assertThat(BoundCheck.of(SHARED, early).faults()).isEmpty();
    }

    @Test
    void depotsThatShareNothingAreKeptAsWell() {
        Scenario apart = Planned.load(TwoDepots.free());
        Kept answers = new Kept();
        assertThatThrownBy(() -> plan(apart, () -> answers.workedOut >= 1, answers))
                .isInstanceOf(NoPlanException.class);
        int before = answers.workedOut;

        assertThat(plan(apart, () -> false, answers)).isEqualTo(plan(apart, () -> false, AnswerStore.NONE));
        assertThat(answers.workedOut).isEqualTo(2);
        assertThat(before).isEqualTo(1);
    }
}
