package depot.optimizer.advice.thumb;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import depot.optimizer.advice.thumb.ChargerDay.Stay;
import depot.optimizer.check.ScenarioLoader;
import depot.optimizer.plan.ChargerLoad;
import depot.optimizer.plan.ChargerPlacement;
import depot.optimizer.problem.ChargeLevel;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.DepotProblems;
import depot.optimizer.scenario.Scenario;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** One quick of the starter, which fills a pack in 60 minutes and to 80 % in 40, over one day. */
class ChargerDayTest {

    private static final int SEVEN_AGAIN = (24 + 7) * 60;

    private static final Scenario STARTER = ScenarioLoader.load(Path.of("..", "..", "inputs", "starter"))
            .scenario()
            .orElseThrow();

    private static final DepotProblem PROBLEM =
            new DepotProblems(STARTER).of(STARTER.depots().get(0));

    private static final FamilyChoice CHOICE = FamilyChoice.of(PROBLEM, "tool").orElseThrow();

    private static ChargerDay oneQuick() {
        FamilyCharger quick = new FamilyCharger(
                new ChargerPlacement("wall-01", "wall", "quick", 1, false, false, false),
                CHOICE.lunch().orElseThrow(),
                "tool");
        return new ChargerDay(List.of(quick), SEVEN_AGAIN);
    }

    @Test
    void theQuickestChargerIsForLunchAndTheCheapestBayForTheNight() {
        assertThat(CHOICE.lunch().orElseThrow().type().id()).isEqualTo("quick");
        assertThat(CHOICE.night().orElseThrow().type().id()).isEqualTo("row-of-four");
    }

    @Test
    void onlyWhatIsDoneInTimeAndFindsABayIsChargedAtLunch() {
        assertThat(oneQuick().atLunch("tool", CHOICE, "yard", 2, new Stay(720, 780), ChargeLevel.FULL))
                .isEqualTo(1);
        assertThat(oneQuick().atLunch("tool", CHOICE, "yard", 2, new Stay(720, 779), ChargeLevel.FULL))
                .isZero();
        assertThat(oneQuick().atLunch("tool", CHOICE, "yard", 2, new Stay(720, 760), ChargeLevel.EIGHTY))
                .isEqualTo(1);
    }

    @Test
    void aChargerThatIsTakenIsNotLoadedAgain() {
        ChargerDay day = oneQuick();

        assertThat(day.atLunch("tool", CHOICE, "yard", 1, new Stay(720, 780), ChargeLevel.FULL))
                .isEqualTo(1);
        assertThat(day.atLunch("tool", CHOICE, "yard", 1, new Stay(750, 810), ChargeLevel.FULL))
                .isZero();
        assertThat(day.atLunch("tool", CHOICE, "yard", 1, new Stay(780, 840), ChargeLevel.FULL))
                .isEqualTo(1);
    }

    @Test
    void whatFoundNoBayAtLunchGetsItForTheNight() {
        ChargerDay day = oneQuick();
        day.atLunch("tool", CHOICE, "yard", 1, new Stay(720, 780), ChargeLevel.FULL);
        day.overnight("tool", 720, "yard", 1);

        assertThat(day.loads(List.of("tool"), List.of(CHOICE)))
                .extracting(ChargerLoad::loadMinute, ChargerLoad::collectMinute)
                .containsExactly(tuple(720, 780), tuple(780, SEVEN_AGAIN));
    }
}
