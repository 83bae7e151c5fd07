package depot.optimizer.model;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.check.ScenarioLoader;
import depot.optimizer.fixture.ScenarioText;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.DepotProblem.CircuitSite;
import depot.optimizer.problem.DepotProblems;
import depot.optimizer.scenario.Scenario;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Types of charger behind a unit together, and what it can feed then. */
class UnitMixTest {

    @TempDir
    private Path folder;

    /** A charger of 571 W, one of 1,200 W, and a unit of 16 A on a circuit of 16 A, of which 12.8 A may flow for hours: 2,944 W. */
    private static ScenarioText twoTypes() {
        return ScenarioText.tiny()
                .rows("charger_types.csv", "swift,1,1,1300,0.9,1,no,300,10")
                .rows("charge_times.csv", "swift,pack-500,20,30")
                .table(
                        "sharing_units.csv",
                        "unit_type,outlets,amps,priority_outlets,price,life_years\nunit,12,16,2,500,10\n");
    }

    private DepotProblem problem(ScenarioText text) {
        Scenario scenario = ScenarioLoader.load(text.write(folder)).scenario().orElseThrow();
        return new DepotProblems(scenario).of(scenario.depots().get(0));
    }

    // Five chargers of 571.43 W, or two of 1,200 W; both types feed what the worse of them does.
    @Test
    void theTypeThatFillsAUnitWorstSaysWhatItFeeds() {
        DepotProblem problem = problem(twoTypes());
        List<UnitMix> mixes = UnitMix.of(problem, 0, 0);

        assertThat(mixes).extracting(UnitMix::chargers).containsExactly(types(0), types(0, 1));
        assertThat(mixes.get(0).fedWatts(problem, 2944)).isCloseTo(5 * 571.43, Offset.offset(0.05));
        assertThat(mixes.get(1).fedWatts(problem, 2944)).isCloseTo(2 * 1200, Offset.offset(0.05));
    }

    // Beside 2 A of other load 2,484 W are left: four of 571 W or two of 1,200 W, so that now the faster type fills the
    // unit better.
    @Test
    void whereBaseLoadsChangeWhichTypeIsWorseEachHasAMixOfItsOwn() {
        ScenarioText text = twoTypes()
                .table("base_load.csv", "depot,circuit,days,from,to,amps\nnorth,north-1,Mon-Sun,20:00,22:00,2\n");

        assertThat(UnitMix.of(problem(text), 0, 0))
                .extracting(UnitMix::chargers)
                .containsExactlyInAnyOrder(types(0), types(1), types(0, 1));
    }

    @Test
    void typesThatDrawAlikeAreOneMix() {
        ScenarioText text = twoTypes().replace("charge_times.csv", "swift,pack-500,20,30", "swift,pack-500,42,60");

        assertThat(UnitMix.of(problem(text), 0, 0))
                .extracting(UnitMix::chargers)
                .containsExactly(types(0, 1));
    }

    /** What the mixes are for: whatever is behind a unit, one of them holds it and feeds exactly as much, in every slice. */
    @Test
    void everyChoiceOfTypesHasAMixThatFeedsAsMuch() {
        Scenario scenario =
                ScenarioLoader.load(Path.of("../../inputs/fennmoor")).scenario().orElseThrow();
        DepotProblems problems = new DepotProblems(scenario);
        int looked = 0;
        for (var depot : scenario.depots()) {
            DepotProblem problem = problems.of(depot);
            for (int k = 0; k < problem.circuits().size(); k++) {
                for (int u = 0; u < problem.unitTypes().size(); u++) {
                    List<UnitMix> mixes = UnitMix.of(problem, k, u);
                    double[] watts = watts(problem, k, u);
                    for (UnitMix choice : choices(problem, k)) {
                        looked++;
                        assertThat(mixes)
                                .anyMatch(mix -> contains(mix, choice)
                                        && IntStream.range(0, watts.length)
                                                .allMatch(s -> mix.fedWatts(problem, watts[s])
                                                        >= choice.fedWatts(problem, watts[s]) - 1e-9));
                    }
                }
            }
        }
        assertThat(looked).isGreaterThan(100);
    }

    private static boolean contains(UnitMix mix, UnitMix choice) {
        return choice.chargers().stream().allMatch(mix::has);
    }

    private static double[] watts(DepotProblem problem, int circuit, int unit) {
        CircuitSite site = problem.circuits().get(circuit);
        return problem.days().stream()
                .flatMap(day -> day.slices().stream())
                .mapToDouble(slice -> SharedEnergy.unitWatts(
                        site,
                        problem.unitTypes().get(unit).amps(),
                        slice.circuitBaseAmps().get(circuit)))
                .toArray();
    }

    private static List<UnitMix> choices(DepotProblem problem, int circuit) {
        int[] fitting = IntStream.range(0, problem.chargers().size())
                .filter(c -> UnitMix.fits(problem, problem.circuits().get(circuit), c))
                .toArray();
        List<UnitMix> choices = new ArrayList<>();
        for (int bits = 1; bits < 1 << fitting.length; bits++) {
            BitSet types = new BitSet();
            for (int i = 0; i < fitting.length; i++) {
                types.set(fitting[i], (bits >> i & 1) == 1);
            }
            choices.add(new UnitMix(types));
        }
        return choices;
    }

    private static BitSet types(int... places) {
        BitSet types = new BitSet();
        IntStream.of(places).forEach(types::set);
        return types;
    }
}
