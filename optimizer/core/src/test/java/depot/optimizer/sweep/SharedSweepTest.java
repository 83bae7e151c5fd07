package depot.optimizer.sweep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import depot.optimizer.fixture.Planned;
import depot.optimizer.fixture.ScenarioText;
import depot.optimizer.fixture.TwoDepots;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.PackStock;
import depot.optimizer.plan.Plan;
import depot.optimizer.scenario.Scenario;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Sweeps around plans whose depots share something: relations that hold whatever it is. */
class SharedSweepTest {

    private static final double GAP = 0.002;
    private static final double ROUNDING = 1e-6;

    static Stream<ScenarioText> fleets() {
        return Stream.of(
                TwoDepots.inPhases("first,0,1000", "second,2,"),
                TwoDepots.inPhases("first,0,", "second,3,"),
                TwoDepots.free().table("price_tiers.csv", "item,from_count,price\npack-500,4,250\n"),
                TwoDepots.everything());
    }

    @ParameterizedTest
    @MethodSource("fleets")
    void moneyOfTwiceTheWorthIsTwiceTheCost(ScenarioText text) {
        SweepResult sweep = SweepText.run(Planned.load(text), """
                "cases": [{"name": "c", "changes": [{"change": "all_money", "value": 2}]}]
                """);

        double twice = 2 * sweep.base().cost();
        assertThat(sweep.cases().get(0).cost()).isCloseTo(twice, within(GAP * twice));
        assertThat(sweep.cases().get(0).fleet().orElseThrow().proven()).isTrue();
    }

    @ParameterizedTest
    @MethodSource("fleets")
    void keptPurchasesNeverCostLessThanNewOnes(ScenarioText text) {
        String changes = """
                [{"change": "electricity_price", "value": 4}, {"change": "pack_life", "value": 0.7}]
                """;
        SweepResult sweep = SweepText.run(Planned.load(text), """
                "cases": [{"name": "anew", "changes": %s}, {"name": "kept", "purchases": "kept", "changes": %s}]
                """.formatted(changes, changes));

        FleetOutcome anew = sweep.cases().get(0).fleet().orElseThrow();
        FleetOutcome kept = sweep.cases().get(1).fleet().orElseThrow();
        assertThat(kept.troubles()).isEmpty();
        assertThat(kept.proven()).isTrue();
        assertThat(kept.cost()).isGreaterThanOrEqualTo(anew.bound() * (1 - ROUNDING));
        assertThat(kept.cost()).isGreaterThan(sweep.base().cost());
        assertThat(bought(kept)).isEqualTo(bought(sweep.base()));
        assertThat(kept.plan().depots())
                .usingRecursiveFieldByFieldElementComparatorIgnoringFields("stop", "packs", "days", "costs")
                .isEqualTo(sweep.base().plan().depots());
    }

    private static List<List<Integer>> bought(FleetOutcome fleet) {
        return fleet.plan().depots().stream()
                .map(depot -> depot.packs().stream()
                        .flatMap((PackStock stock) -> Stream.of(stock.count(), stock.owned()))
                        .toList())
                .toList();
    }

    @ParameterizedTest
    @MethodSource("fleets")
    void keepingEverythingAtTheSamePricesCostsTheSame(ScenarioText text) {
        Scenario scenario = Planned.load(text);
        SweepResult sweep = SweepText.run(scenario, """
                "cases": [{"name": "c", "purchases": "kept", "changes": [{"change": "circuit_amps", "of": "north-1", "value": 0.001}]}]
                """);

        FleetOutcome kept = sweep.cases().get(0).fleet().orElseThrow();
        assertThat(sweep.cases().get(0).touched()).containsExactly("north");
        assertThat(kept.cost()).isCloseTo(sweep.base().cost(), within(GAP * kept.cost()));
        assertThat(kept.proven()).isTrue();
    }

    @Test
    void moreWorkThanThePacksCarryFallsShortInThePhaseThatHasThem() {
        SweepResult sweep = SweepText.run(
                Planned.load(TwoDepots.inPhases("first,0,1000", "second,2,").setting("shortage_cost_per_kwh", "40")),
                """
                "cases": [{"name": "c", "purchases": "kept", "changes": [{"change": "work_hours", "value": 2.2}]}]
                """);

        FleetOutcome kept = sweep.cases().get(0).fleet().orElseThrow();
        assertThat(kept.proven()).isTrue();
        for (int d = 0; d < kept.depots().size(); d++) {
            DepotPlan plan = kept.plan().depots().get(d);
            assertThat(kept.depots().get(d).shortKwh() > 0)
                    .as("%s in %s", plan.depot(), plan.phase())
                    .isEqualTo(plan.onPetrol().isEmpty());
        }
    }

    @Test
    void aRiseOfPricesThatTheBudgetDoesNotBearIsAnAnswer() {
        SweepResult sweep = SweepText.run(
                Planned.load(TwoDepots.free().table("phases.csv", "phase,year,budget\nfirst,0,2100\n")), """
                "cases": [{"name": "kept", "purchases": "kept", "changes": [{"change": "item_price", "value": 1.1}]},
                          {"name": "anew", "changes": [{"change": "item_price", "value": 1.1}]}]
                """);

        assertThat(sweep.cases().get(0).fleet().orElseThrow().troubles())
                .containsExactly("the budget of first is 2100, the plan spends 2310.0");
        assertThat(sweep.cases().get(1).noPlan()).contains("budget first is 2100 EUR");
    }

    @Test
    void aPlanOfTheSameRulesIsNeverDearerThanTheBasePlanAtNewPrices() {
        ScenarioText text = TwoDepots.inPhases("first,0,1000", "second,2,")
                .replace("scenario.json", "0.002, \"threads\"", "0.5, \"nodes\": 1, \"threads\"");
        SweepResult sweep = SweepText.run(Planned.load(text), """
                "cases": [{"name": "anew", "changes": [{"change": "electricity_price", "value": 3}]},
                          {"name": "kept", "purchases": "kept", "changes": [{"change": "electricity_price", "value": 3}]}]
                """);

        assertThat(sweep.cases().get(0).cost())
                .isLessThanOrEqualTo(sweep.cases().get(1).cost() * (1 + ROUNDING));
    }

    @Test
    void whatTouchesNothingIsNotPlannedAndEqualCasesOnce() {
        Scenario scenario = Planned.load(TwoDepots.inPhases("first,0,1000", "second,2,"));
        Map<String, Plan> kept = new HashMap<>();
        CaseStore store = new CaseStore() {
            @Override
            public synchronized Optional<Plan> find(String key) {
                return Optional.ofNullable(kept.get(key));
            }

            @Override
            public synchronized void keep(String key, Plan plan) {
                assertThat(kept).doesNotContainKey(key);
                kept.put(key, plan);
            }
        };
        String members = """
                "frontiers": [{"name": "f", "change": "budget", "of": "first", "values": [900, 1000]}],
                "cases": [{"name": "same", "changes": [{"change": "budget", "of": "first", "value": 900}]}]
                """;

        SweepResult first =
                SweepRun.run(SweepText.of(scenario, members), scenario, new TreeMap<>(), store, SweepProgress.SILENT);
        SweepResult second =
                SweepRun.run(SweepText.of(scenario, members), scenario, new TreeMap<>(), store, SweepProgress.SILENT);

        assertThat(kept).hasSize(3);
        assertThat(first.cases().get(0).touched()).containsExactly("north", "south");
        assertThat(first.cases().get(1).touched()).isEmpty();
        assertThat(first.cases().get(2).fleet()).isEqualTo(first.cases().get(0).fleet());
        assertThat(second.cases()).isEqualTo(first.cases());
    }

    /**
     * By hand: north has two packs and a charger of two bays from the first phase on, south three packs and two chargers from the second. Every piece is
     * needed, but for the second bay of south's second charger. North is not asked again in the second phase, where it has what it had.
     */
    @Test
    void whatFailsIsAskedOfEachDepotInTheFirstPhaseThatHasIt() {
        SweepResult sweep = SweepText.run(Planned.load(TwoDepots.inPhases("first,0,1000", "second,2,")), """
                "losses": {"charger_out": "yes", "one_pack_in": 10, "late_minutes": 30}
                """);

        assertThat(sweep.losses())
                .extracting(
                        loss -> loss.loss().words(),
                        loss -> loss.loss().depot(),
                        LossResult::holds,
                        loss -> loss.cured().map(DepotOutcome::proven).orElse(false))
                .containsExactly(
                        tuple("1 duo on circuit north-1 in first", "north", false, true),
                        tuple("1 pack in 10: 1 pack-500 in first", "north", false, true),
                        tuple("all crews back 30 min late in first", "north", true, false),
                        tuple("1 duo on circuit south-1 in second", "south", false, true),
                        tuple("1 pack in 10: 1 pack-500 in second", "south", false, true),
                        tuple("all crews back 30 min late in second", "south", true, false));
        // A charger is 200, and lasts the ten years of the horizon; in the second phase eight of them are left, and a
        // fifth of its worth.
        assertThat(sweep.losses().get(0).curedCost()).isCloseTo(200, within(0.01));
        assertThat(sweep.losses().get(3).curedCost()).isCloseTo(200 - 40 / Math.pow(1.05, 8), within(0.01));
    }

    @ParameterizedTest
    @MethodSource("fleets")
    void aCureOfALossIsProven(ScenarioText text) {
        SweepResult sweep = SweepText.run(Planned.load(text), """
                "losses": {"charger_out": "yes", "one_pack_in": 3}
                """);

        assertThat(sweep.losses()).isNotEmpty();
        for (LossResult loss : sweep.losses()) {
            assertThat(loss.held().orElseThrow().proven())
                    .as(loss.held().toString())
                    .isTrue();
            assertThat(loss.holds() || loss.cured().orElseThrow().proven())
                    .as(loss.loss().words())
                    .isTrue();
        }
    }
}
