package depot.optimizer.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import depot.optimizer.advice.AdviceSettings.Part;
import depot.optimizer.advice.Answer.Ending;
import depot.optimizer.advice.Loosening.Limit;
import depot.optimizer.advice.Piece.Kind;
import depot.optimizer.advice.thumb.ThumbSettings;
import depot.optimizer.check.ScenarioLoader;
import depot.optimizer.fleet.FleetPlanner;
import depot.optimizer.fleet.ProgressListener;
import depot.optimizer.plan.Plan;
import depot.optimizer.scenario.Scenario;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Questions about the plan that inputs/starter/README.md works out by hand. Expected costs are recomputed from the tables of that page. */
class StarterAdviceTest {

    private static final double CENT = 0.005;

    private static final Scenario STARTER = ScenarioLoader.load(Path.of("..", "..", "inputs", "starter"))
            .scenario()
            .orElseThrow();

    private static final Plan PLAN = new FleetPlanner(ProgressListener.SILENT)
            .plan(STARTER, new TreeMap<>())
            .plan();

    private static final DepotAdvice ADVICE = advice(EnumSet.allOf(Part.class));

    private static DepotAdvice advice(Set<Part> parts) {
        AdviceSettings settings = new AdviceSettings(parts, ThumbSettings.USUAL, AdviceSettings.USUAL_WITHIN);
        return AdviceRun.of(STARTER, PLAN, List.of("yard"), settings, AdviceProgress.SILENT)
                .depots()
                .get(0);
    }

    private static double found(Answer answer) {
        Difference difference = answer.difference().orElseThrow();
        // The starter is solved to a gap of 0.
        assertThat(difference.most() - difference.least()).isLessThan(CENT);
        return difference.found();
    }

    @Test
    void everyLineOfThePlanIsAskedAbout() {
        assertThat(ADVICE.reasons())
                .extracting(
                        reason -> reason.piece().kind(),
                        reason -> reason.piece().item(),
                        reason -> reason.piece().where(),
                        reason -> reason.piece().bought())
                .containsExactlyInAnyOrder(
                        tuple(Kind.PACK, "pack", "", 8),
                        tuple(Kind.CHARGER, "quick", "bench", 1),
                        tuple(Kind.CHARGER, "row-of-four", "bench", 1),
                        tuple(Kind.CHARGER, "quick", "wall", 1),
                        tuple(Kind.CHARGER, "row-of-four", "wall", 1));
    }

    @Test
    void eightPacksAreTheLeast() {
        Reason packs = ADVICE.reasons().get(0);

        assertThat(packs.without().ending()).isEqualTo(Ending.IMPOSSIBLE);
        assertThat(packs.without().shortKwhPerYear().orElseThrow()).isPositive();
        assertThat(packs.oneFewer().orElseThrow().ending()).isEqualTo(Ending.IMPOSSIBLE);
        assertThat(packs.without().difference()).isEmpty();
    }

    @Test
    void packsAreNeededWhileAllCrewsAreOutInTheAfternoon() {
        Binding binding = ADVICE.reasons().get(0).binding().orElseThrow();

        assertThat(binding.limit()).isEqualTo(Binding.Limit.PACKS_OUT);
        assertThat(binding.crews()).containsExactlyInAnyOrder("town", "east", "west");
        assertThat(List.of(binding.used(), binding.there())).containsExactly(8.0, 8.0);
    }

    @Test
    void withoutOneOfTheChargersNinePacksAndOneQuickAreNextBest() {
        // Each charger left out of its circuit leaves room for one quick and two rows elsewhere: 2,120 instead of
        // 2,040.
        for (Reason reason : ADVICE.reasons().subList(1, 5)) {
            assertThat(found(reason.without())).as(reason.piece().toString()).isCloseTo(80, within(CENT));
            assertThat(reason.without().plan().orElseThrow().proven()).isTrue();
            assertThat(reason.oneFewer()).isEmpty();
        }
    }

    @Test
    void chargersAreNeededInTheNight() {
        Binding binding = ADVICE.reasons().stream()
                .filter(reason -> reason.piece().item().equals("row-of-four"))
                .findFirst()
                .orElseThrow()
                .binding()
                .orElseThrow();

        assertThat(binding.limit()).isEqualTo(Binding.Limit.BAYS);
        assertThat(List.of(binding.fromMinute(), binding.toMinute())).containsExactly(16 * 60, (24 + 7) * 60);
        assertThat(List.of(binding.used(), binding.there())).containsExactly(4.0, 4.0);
    }

    private static LimitWorth worth(Limit limit, String subject) {
        return ADVICE.limits().stream()
                .filter(each -> each.loosening().limit() == limit
                        && each.loosening().subject().equals(subject))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aSecondBayInEachQuickSparesARow() {
        // Two quicks with two bays each are four bays for the night, so that one row-of-four for 100 is enough.
        assertThat(found(worth(Limit.BAYS, "quick").answer())).isCloseTo(-100, within(CENT));
    }

    @Test
    void noOtherLimitIsWorthAnything() {
        // The table of section 4 asks for no plug or ampere: nothing in it is cheaper than the plan.
        for (LimitWorth worth : ADVICE.limits()) {
            if (!worth.loosening().subject().equals("quick")) {
                assertThat(found(worth.answer()))
                        .as(
                                "%s of %s",
                                worth.loosening().limit(), worth.loosening().subject())
                        .isCloseTo(0, within(CENT));
            }
        }
        assertThat(ADVICE.limits())
                .extracting(each -> each.loosening().limit())
                .contains(Limit.values())
                .hasSize(2 * 2 + 2 + 2 + 1 + 1);
    }

    @Test
    void otherPlansAreThoseOfTheTable() {
        Map<String, Alternative> found = ADVICE.alternatives().stream()
                .collect(Collectors.toMap(each -> each.variation().words(), Function.identity()));

        assertThat(found(found.get("fewer chargers").answer())).isCloseTo(80, within(CENT));
        assertThat(found(found.get("one charger quick fewer").answer())).isCloseTo(80, within(CENT));
        assertThat(found(found.get("no chargers quick").answer())).isCloseTo(160, within(CENT));
        // One row and four quicks, two of them on the new circuit: 2,180 and 900.
        assertThat(found(found.get("one charger row-of-four fewer").answer())).isCloseTo(1040, within(CENT));
        assertThat(found.get("no chargers row-of-four").answer().ending()).isEqualTo(Ending.IMPOSSIBLE);
        assertThat(found.get("fewer packs").answer().ending()).isEqualTo(Ending.IMPOSSIBLE);
        assertThat(found).hasSize(6);
    }

    @Test
    void twoOfThemBuySomethingElseWithinATenth() {
        List<Alternative> next = ADVICE.alternatives().stream()
                .filter(each -> each.within() && each.sameAs().isEmpty())
                .toList();

        assertThat(next).hasSize(2);
        assertThat(Piece.byItem(next.get(0).pieces()))
                .isEqualTo(Map.of(
                        new Piece.Item(Kind.PACK, "pack"), 9,
                        new Piece.Item(Kind.CHARGER, "quick"), 1,
                        new Piece.Item(Kind.CHARGER, "row-of-four"), 2));
        assertThat(Piece.byItem(next.get(1).pieces()))
                .isEqualTo(
                        Map.of(new Piece.Item(Kind.PACK, "pack"), 10, new Piece.Item(Kind.CHARGER, "row-of-four"), 2));
    }

    @Test
    void onlyWhatIsAskedForIsAnswered() {
        DepotAdvice thumb = advice(Set.of(Part.THUMB));

        assertThat(thumb.thumb()).isPresent();
        assertThat(thumb.reasons()).isEmpty();
        assertThat(thumb.limits()).isEmpty();
        assertThat(thumb.alternatives()).isEmpty();
    }
}
