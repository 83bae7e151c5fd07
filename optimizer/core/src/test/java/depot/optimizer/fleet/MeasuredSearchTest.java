package depot.optimizer.fleet;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.generate.FleetGenerator;
import depot.optimizer.generate.GeneratorSettings;
import depot.optimizer.plan.ChargerLoad;
import depot.optimizer.plan.ChargerPlacement;
import depot.optimizer.plan.DayPlan;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.DepotProblems;
import depot.optimizer.replay.DepotDays;
import depot.optimizer.replay.DepotReplay;
import depot.optimizer.replay.FleetReplay;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.solve.DepotSolver;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Other schedules for the same purchases, measured by the replay. */
class MeasuredSearchTest {

    private static Scenario scenario;
    private static DepotProblem problem;
    private static DepotPlan plan;
    private static DepotPlan improved;

    /** A generated depot with load-sharing units. */
    @BeforeAll
    static void solve() {
        scenario = FleetGenerator.generate(GeneratorSettings.DEFAULT.withDepots(1), 3);
        problem = new DepotProblems(scenario).of(scenario.depots().get(0));
        plan = new DepotSolver(problem).solve();
        improved = new MeasuredSearch(scenario, problem, 1, Optional.empty(), plan).improved();
    }

    @Test
    void schedulesFoundCostLessThanThoseOfTheModel() {
        assertThat(plan.units()).isNotEmpty();
        assertThat(MeasuredDays.of(DepotDays.of(scenario, plan).orElseThrow(), improved)
                        .lateWh())
                .isZero();
        assertThat(measuredCost(improved)).isLessThan(measuredCost(plan));
    }

    @Test
    void purchasesStayAsTheyAre() {
        assertThat(improved.chargers()).isEqualTo(plan.chargers());
        assertThat(improved.units()).isEqualTo(plan.units());
        assertThat(improved.packs()).isEqualTo(plan.packs());
    }

    @Test
    void whatIsFoundIsProven() {
        DepotReplay replay = FleetReplay.runDepot(scenario, improved);
        assertThat(ProvenDepot.asMeasured(scenario, problem, improved, replay)
                        .replay()
                        .proven())
                .isTrue();
    }

    @Test
    void searchRepeats() {
        assertThat(new MeasuredSearch(scenario, problem, 1, Optional.empty(), plan).improved())
                .isEqualTo(improved);
    }

    @Test
    void packsStayWithinTheirChargerTypeAndTime() {
        LoadDealing dealing = new LoadDealing(problem, plan.chargers());
        SplittableRandom random = new SplittableRandom(1);
        for (DayPlan day : plan.days()) {
            assertThat(dealing.groups(day)).isNotEmpty();
            assertThat(packs(dealing.evenly(day))).isEqualTo(packs(day));
            assertThat(packs(dealing.turnedRound(day, 1))).isEqualTo(packs(day));
            assertThat(packs(dealing.shuffled(day, random))).isEqualTo(packs(day));
            for (var group : dealing.groups(day)) {
                for (int to : group) {
                    if (to != group.get(0)) {
                        assertThat(packs(dealing.relieved(day, group.get(0), to)))
                                .isEqualTo(packs(day));
                    }
                }
            }
        }
    }

    @Test
    void evenDealingLeavesLittleBetweenTheChargersWithMostAndLeastWork() {
        LoadDealing dealing = new LoadDealing(problem, plan.chargers());
        Map<String, ChargerPlacement> chargers =
                plan.chargers().stream().collect(Collectors.toMap(ChargerPlacement::id, Function.identity()));
        for (DayPlan day : plan.days()) {
            DayPlan even = dealing.evenly(day);
            for (var group : dealing.groups(even)) {
                var held = group.stream()
                        .mapToInt(i -> even.loads().get(i).packs().stream()
                                .filter(packs -> packs.packType().startsWith("back"))
                                .mapToInt(ChargerLoad.Loaded::count)
                                .sum())
                        .summaryStatistics();
                assertThat(held.getMax() - held.getMin())
                        .as(chargers.get(even.loads().get(group.get(0)).charger())
                                .chargerType())
                        .isLessThanOrEqualTo(1);
            }
        }
    }

    private static double measuredCost(DepotPlan of) {
        DepotReplay replay = FleetReplay.runDepot(scenario, of);
        return ProvenDepot.asMeasured(scenario, problem, of, replay)
                .plan()
                .stop()
                .certificate()
                .cost();
    }

    /** Packs of a day by type of charger, time of loading and kind. */
    private static Map<String, Integer> packs(DayPlan day) {
        Map<String, String> types =
                plan.chargers().stream().collect(Collectors.toMap(ChargerPlacement::id, ChargerPlacement::chargerType));
        Map<String, Integer> packs = new TreeMap<>();
        for (ChargerLoad load : day.loads()) {
            for (ChargerLoad.Loaded some : load.packs()) {
                packs.merge(
                        types.get(load.charger()) + "@" + load.loadMinute() + " to " + load.collectMinute() + ": "
                                + some.packType() + " of " + some.pool() + " " + some.level(),
                        some.count(),
                        Integer::sum);
            }
        }
        return packs;
    }
}
