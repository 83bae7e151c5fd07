package depot.optimizer.sweep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import depot.optimizer.plan.DepotPlan;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** A sweep around the plan that inputs/starter/README.md works out by hand. Expected costs are recomputed from the tables of that page. */
class StarterSweepTest {

    private static final double BASE = 4020.50;
    private static final double CENT = 0.005;

    private static final SweepResult SWEEP = SweepText.run(SweepText.starter(), """
            "cases": [
              {"name": "packs twice", "changes": [{"change": "item_price", "of": "pack", "value": 2}]},
              {"name": "quick half", "changes": [{"change": "item_price", "of": "quick", "value": 0.5}]},
              {"name": "energy twice", "changes": [{"change": "electricity_price", "value": 2}]},
              {"name": "all twice", "changes": [{"change": "all_money", "value": 2}]},
              {"name": "petrol", "changes": [{"change": "petrol_price", "value": 2}]},
              {"name": "longer lunch", "changes": [{"change": "lunch_minutes", "value": 30}]},
              {"name": "packs twice kept", "purchases": "kept", "changes": [{"change": "item_price", "of": "pack", "value": 2}]},
              {"name": "quick dear", "changes": [{"change": "item_price", "of": "quick", "value": 5}]},
              {"name": "quick dear kept", "purchases": "kept", "changes": [{"change": "item_price", "of": "quick", "value": 5}]},
              {"name": "old packs kept", "purchases": "kept", "changes": [{"change": "pack_health", "value": 0.9}]}
            ],
            "losses": {"charger_out": "yes", "one_pack_in": 10, "late_minutes": 60}
            """);

    private static final Map<String, CaseResult> CASES = SWEEP.cases().stream()
            .collect(Collectors.toMap(each -> each.sweepCase().name(), Function.identity()));

    private static void assertCost(String name, double cost) {
        assertThat(CASES.get(name).cost()).as(name).isCloseTo(cost, within(CENT));
    }

    @Test
    void theBasePlanIsTheOneWorkedOutByHand() {
        assertThat(SWEEP.base().cost()).isCloseTo(BASE, within(CENT));
    }

    @Test
    void costsFollowThePrices() {
        // Eight packs cost 1,600 over the horizon, two quicks 200 without mounting, energy 1,250.
        assertCost("packs twice", BASE + 1600);
        assertCost("quick half", BASE - 100);
        assertCost("energy twice", BASE + 1250);
        assertCost("all twice", 2 * BASE);
    }

    @Test
    void dearQuickChargersAreNotBought() {
        // At 500 a quick costs 520: ten packs and two rows-of-four, 2,200, instead of 1,600 + 1,040 + 200.
        assertCost("quick dear", BASE - 2040 + 2200);
        assertCost("quick dear kept", BASE + 800);
        assertThat(plan("quick dear").chargers())
                .extracting(charger -> charger.chargerType())
                .containsOnly("row-of-four");
        assertThat(plan("quick dear kept").chargers())
                .isEqualTo(SWEEP.base().depots().get(0).plan().chargers());
    }

    private static DepotPlan plan(String name) {
        return CASES.get(name).depots().get(0).plan();
    }

    @Test
    void petrolTouchesNoPlan() {
        assertThat(CASES.get("petrol").touched()).isEmpty();
        assertThat(CASES.get("petrol").depots()).isEqualTo(SWEEP.base().depots());
    }

    @Test
    void aLongerLunchNeverCostsMore() {
        assertThat(CASES.get("longer lunch").cost()).isLessThanOrEqualTo(BASE + CENT);
    }

    @Test
    void keepingWhatIsStillBestCostsTheSame() {
        assertCost("packs twice kept", BASE + 1600);
        assertThat(CASES.get("packs twice kept").depots().get(0).proven()).isTrue();
    }

    @Test
    void weakPacksLeaveWorkUncovered() {
        // A full pack gives 360 Wh. The packs of the base plan, 2 for the town's trips and 3 for the others, give 720
        // of 760 and 1,080 of 1,140 Wh.
        DepotOutcome outcome = CASES.get("old packs kept").depots().get(0);

        assertThat(outcome.proven()).isTrue();
        assertThat(outcome.daysShort()).isEqualTo(250);
        assertThat(outcome.shortKwh()).isCloseTo(250 * (40 + 40 + 60 + 60) / 1000.0, within(0.01));
    }

    private static LossResult loss(String words) {
        return SWEEP.losses().stream()
                .filter(each -> each.loss().lost().equals(words))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void everyKindOfChargerOnEveryCircuitIsLostInTurn() {
        assertThat(SWEEP.losses())
                .extracting(each -> each.loss().lost())
                .containsExactlyInAnyOrder(
                        "1 row-of-four on circuit bench",
                        "1 quick on circuit bench",
                        "1 row-of-four on circuit wall",
                        "1 quick on circuit wall",
                        "1 pack in 10: 1 pack",
                        "all crews back 60 min late");
    }

    @Test
    void eachBayIsNeededSoThatALostChargerIsBoughtAgain() {
        for (String circuit : List.of("bench", "wall")) {
            assertCure("1 row-of-four on circuit " + circuit, "row-of-four", 100);
            assertCure("1 quick on circuit " + circuit, "quick", 120);
        }
    }

    private static void assertCure(String lost, String bought, double cost) {
        LossResult result = loss(lost);
        assertThat(result.holds()).as(lost).isFalse();
        DepotPlan cured = result.cured().orElseThrow().plan();
        assertThat(cured.chargers().stream().filter(charger -> !charger.owned()))
                .singleElement()
                .extracting(charger -> charger.chargerType())
                .isEqualTo(bought);
        assertThat(cured.packs().stream()
                        .mapToInt(stock -> stock.count() - stock.owned())
                        .sum())
                .isZero();
        assertThat(result.curedCost()).isCloseTo(cost, within(CENT));
        assertThat(result.cured().orElseThrow().proven()).isTrue();
    }

    @Test
    void aLostPackIsBoughtAgainAtNoCostWithoutDiscount() {
        // It is worth its price at the end of the horizon, and no more packs wear out than before.
        LossResult result = loss("1 pack in 10: 1 pack");

        assertThat(result.holds()).isFalse();
        assertThat(result.cured().orElseThrow().plan().packs())
                .extracting(stock -> stock.count() - stock.owned())
                .containsExactly(1);
        assertThat(result.curedCost()).isCloseTo(0, within(CENT));
    }

    @Test
    void anHourLateStillLeavesTheNightForChargingInTurn() {
        // Four packs of 180 minutes from 17:00 are ready at 05:00.
        assertThat(loss("all crews back 60 min late").holds()).isTrue();
        assertThat(loss("all crews back 60 min late").cured()).isEmpty();
    }
}
