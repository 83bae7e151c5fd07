package depot.optimizer.report.table;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.advice.Advice;
import depot.optimizer.advice.AdviceSettings;
import depot.optimizer.advice.AdviceSettings.Part;
import depot.optimizer.advice.Answer;
import depot.optimizer.advice.DepotAdvice;
import depot.optimizer.advice.Difference;
import depot.optimizer.advice.LimitWorth;
import depot.optimizer.advice.Loosening;
import depot.optimizer.advice.ReplayedPlan;
import depot.optimizer.advice.thumb.ThumbSettings;
import depot.optimizer.fixture.Planned;
import depot.optimizer.fixture.ScenarioText;
import depot.optimizer.fleet.FleetPlanner;
import depot.optimizer.fleet.FleetResult;
import depot.optimizer.fleet.ProgressListener;
import depot.optimizer.scenario.Scenario;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Tables of answers: what is not known is blank. */
class AdviceTablesTest {

    private static String worth(Difference difference) {
        Scenario scenario = Planned.load(ScenarioText.tiny());
        FleetResult found = new FleetPlanner(ProgressListener.SILENT).plan(scenario, new TreeMap<>());
        ReplayedPlan plan = new ReplayedPlan(
                found.plan().depots().get(0), found.replay().depots().get(0));
        LimitWorth worth = new LimitWorth(
                new Loosening(Loosening.Limit.PLACES, "north", 1, scenario),
                new Answer(Answer.Ending.MET, Optional.of(plan), Optional.of(difference), ""));
        DepotAdvice depot =
                new DepotAdvice("north", plan, List.of(), Optional.empty(), List.of(), List.of(worth), List.of());
        AdviceSettings settings =
                new AdviceSettings(EnumSet.of(Part.WORTH), ThumbSettings.USUAL, AdviceSettings.USUAL_WITHIN);
        Advice advice = new Advice(scenario, found.plan(), settings, List.of(depot), Optional.empty());
        return AdviceTables.of(AdviceFigures.of(advice)).stream()
                .filter(table -> table.fileName().equals("worth.csv"))
                .findFirst()
                .orElseThrow()
                .content();
    }

    @Test
    void aSavingHasItsSpan() {
        assertThat(worth(new Difference(-5, -7, -4))).contains(",1,place,met,5.00,4.00,7.00,");
    }

    @Test
    void theMostOfASavingWithoutABoundIsBlank() {
        assertThat(worth(new Difference(-5, Double.NEGATIVE_INFINITY, -4))).contains(",1,place,met,5.00,4.00,,");
    }
}
