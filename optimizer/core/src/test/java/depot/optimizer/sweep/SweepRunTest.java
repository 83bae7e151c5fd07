package depot.optimizer.sweep;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.fixture.Planned;
import depot.optimizer.fixture.ScenarioText;
import depot.optimizer.fleet.SmallFleet;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.Plan;
import depot.optimizer.scenario.Scenario;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Relations between the cases of a sweep that hold whatever the scenario. */
class SweepRunTest {

    private static final double ROUNDING = 1e-5;

    static Stream<ScenarioText> fleets() {
        return Stream.of(SmallFleet.lunch(), SmallFleet.seasons());
    }

    private static void assertRising(List<CaseResult> cases) {
        for (int i = 1; i < cases.size(); i++) {
            double easier = cases.get(i - 1).cost();
            assertThat(cases.get(i).cost())
                    .as(cases.get(i).sweepCase().name())
                    .isGreaterThanOrEqualTo(easier * (1 - ROUNDING));
        }
    }

    @ParameterizedTest
    @MethodSource("fleets")
    void moreIsNeverCheaper(ScenarioText text) {
        Scenario scenario = Planned.load(text.setting("demand_spread", "0.3"));

        assertRising(SweepText.run(scenario, """
                "lines": [{"name": "q", "change": "demand_quantile", "values": [0.6, 0.9, 0.98]}]
                """).cases());
        assertRising(SweepText.run(scenario, """
                "lines": [{"name": "w", "change": "work_hours", "values": [0.7, 1, 1.2]}]
                """).cases());
    }

    @ParameterizedTest
    @MethodSource("fleets")
    void aWideGapDoesNotMakeAHarderCaseCheaper(ScenarioText text) {
        Scenario scenario = Planned.load(
                text.setting("demand_spread", "0.3").setting("solve", "{\"gap\": 0.3, \"nodes\": 1, \"threads\": 2}"));

        SweepResult sweep = SweepText.run(scenario, """
                "lines": [{"name": "q", "change": "demand_quantile", "values": [0.6, 0.7, 0.8, 0.9, 0.95]}]
                """);

        assertRising(sweep.cases());
        assertThat(sweep.cases()).allMatch(each -> each.fleet().orElseThrow().proven());
    }

    @ParameterizedTest
    @MethodSource("fleets")
    void moneyOfTwiceTheWorthIsTwiceTheCost(ScenarioText text) {
        SweepResult sweep = SweepText.run(Planned.load(text), """
                "cases": [{"name": "c", "changes": [{"change": "all_money", "value": 2}]}]
                """);

        double base = sweep.base().cost();
        assertThat(sweep.cases().get(0).cost()).isBetween(2 * base * (1 - ROUNDING), 2 * base * (1 + ROUNDING));
    }

    @ParameterizedTest
    @MethodSource("fleets")
    void keptPurchasesNeverCostLessThanNewOnes(ScenarioText text) {
        String changes = """
                [{"change": "item_price", "of": "swift", "value": 3}, {"change": "electricity_price", "value": 2}]
                """;
        SweepResult sweep = SweepText.run(Planned.load(text), """
                "cases": [{"name": "anew", "changes": %s}, {"name": "kept", "purchases": "kept", "changes": %s}]
                """.formatted(changes, changes));

        CaseResult anew = sweep.cases().get(0);
        CaseResult kept = sweep.cases().get(1);
        assertThat(kept.cost())
                .isGreaterThanOrEqualTo(anew.fleet().orElseThrow().bound() * (1 - ROUNDING));
        assertThat(anew.cost()).isLessThanOrEqualTo(kept.cost() * (1 + ROUNDING));
        assertThat(kept.fleet().orElseThrow().proven()).isTrue();
        assertThat(plan(kept).packs())
                .extracting(stock -> stock.count())
                .isEqualTo(sweep.base().depots().get(0).plan().packs().stream()
                        .map(stock -> stock.count())
                        .toList());
        assertThat(plan(kept).chargers())
                .isEqualTo(sweep.base().depots().get(0).plan().chargers());
    }

    private static DepotPlan plan(CaseResult result) {
        return result.depots().get(0).plan();
    }

    @Test
    void onlyDepotsThatAChangeTouchesArePlannedAgain() {
        Scenario scenario = Planned.load(SmallFleet.twice(SmallFleet.lunch()));
        Remembering store = new Remembering();

        SweepResult sweep =
                SweepRun.run(SweepText.of(scenario, """
                        "cases": [{"name": "c", "changes": [{"change": "circuit_amps", "of": "south-1", "value": -6}]}]
                        """), scenario, new TreeMap<>(), store, SweepProgress.SILENT);

        assertThat(sweep.cases().get(0).touched()).containsExactly("south");
        assertThat(sweep.cases().get(0).depots().get(0))
                .isSameAs(sweep.base().depots().get(0));
        assertThat(store.kept.values())
                .extracting(plan -> plan.depots().get(0).depot())
                .containsExactlyInAnyOrder("north", "south", "south");
    }

    @Test
    void equalCasesArePlannedOnceAndFinishedOnesNotAgain() {
        Scenario scenario = Planned.load(SmallFleet.lunch());
        String members = """
                "lines": [{"name": "l", "change": "pack_health", "values": [0.8, 0.9, 1]}],
                "cases": [{"name": "c", "changes": [{"change": "pack_health", "value": 0.8}]}],
                "losses": {"late_minutes": 15}
                """;
        Remembering store = new Remembering();
        SweepResult first =
                SweepRun.run(SweepText.of(scenario, members), scenario, new TreeMap<>(), store, SweepProgress.SILENT);
        int plans = store.kept.size();

        SweepResult second =
                SweepRun.run(SweepText.of(scenario, members), scenario, new TreeMap<>(), store, SweepProgress.SILENT);

        assertThat(first.cases().get(0).depots()).isEqualTo(first.cases().get(3).depots());
        assertThat(first.cases().get(2).touched()).isEmpty();
        assertThat(plans).isBetween(4, 5);
        assertThat(store.keeps).isEqualTo(plans);
        assertThat(second.cases()).isEqualTo(first.cases());
        assertThat(second.losses()).isEqualTo(first.losses());
    }

    @Test
    void progressCountsUpToTheTotal() {
        List<String> told = new ArrayList<>();
        Scenario scenario = Planned.load(SmallFleet.lunch());

        SweepRun.run(
                SweepText.of(scenario, "\"losses\": {\"charger_out\": \"yes\", \"late_minutes\": 15}"),
                scenario,
                new TreeMap<>(),
                CaseStore.NONE,
                (what, done, total) -> told.add(done + "/" + total));

        assertThat(told).first().isEqualTo("1/1");
        String[] last = told.get(told.size() - 1).split("/", -1);
        assertThat(last[0]).isEqualTo(last[1]);
        assertThat(told).hasSize(Integer.parseInt(last[1]));
    }

    /** Keeps plans in memory. */
    private static final class Remembering implements CaseStore {
        private final Map<String, Plan> kept = new HashMap<>();
        private int keeps;

        @Override
        public synchronized Optional<Plan> find(String key) {
            return Optional.ofNullable(kept.get(key));
        }

        @Override
        public synchronized void keep(String key, Plan plan) {
            keeps++;
            kept.put(key, plan);
        }
    }
}
