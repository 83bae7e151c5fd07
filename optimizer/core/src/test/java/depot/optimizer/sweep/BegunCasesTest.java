package depot.optimizer.sweep;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.fixture.Planned;
import depot.optimizer.fixture.ScenarioText;
import depot.optimizer.fixture.TwoDepots;
import depot.optimizer.fleet.FleetPlanner;
import depot.optimizer.fleet.FleetPlanner.Method;
import depot.optimizer.fleet.LeftBehind.Touched;
import depot.optimizer.fleet.ProgressListener;
import depot.optimizer.plan.Certificate;
import depot.optimizer.plan.Plan;
import depot.optimizer.replay.BoundCheck;
import depot.optimizer.report.PlanJson;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.sweep.FleetJob.Beginning;
import depot.optimizer.sweep.change.Changes;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Cases of fleets that share something begin with what the base plan's search has left behind, in whatever order and however often they are run. */
class BegunCasesTest {

    private static final double ROUNDING = 1e-9;

    private static final List<String> CASES = List.of(
            "{\"name\": \"tight\", \"changes\": [{\"change\": \"all_budgets\", \"value\": 0.8}]}",
            "{\"name\": \"dear\", \"changes\": [{\"change\": \"electricity_price\", \"value\": 3}]}",
            "{\"name\": \"busy\", \"changes\": [{\"change\": \"work_hours\", \"of\": \"crew-1\", \"value\": 1.2}]}");

    static Stream<ScenarioText> fleets() {
        return Stream.of(TwoDepots.inPhases("first,0,1000", "second,2,"), TwoDepots.everything());
    }

    private static String members(List<String> cases) {
        return "\"cases\": [" + String.join(", ", cases) + "]";
    }

    /** Keeps plans as files hold them. */
    private static final class Texts implements CaseStore {
        private final Map<String, String> kept = new LinkedHashMap<>();
        private int keeps;

        @Override
        public synchronized Optional<Plan> find(String key) {
            return Optional.ofNullable(kept.get(key)).map(Texts::read);
        }

        private static Plan read(String text) {
            try {
                Path file = Files.createTempFile("plan", ".json");
                Files.writeString(file, text);
                Plan plan = PlanJson.read(file);
                Files.delete(file);
                return plan;
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }

        @Override
        public synchronized void keep(String key, Plan plan) {
            keeps++;
            kept.put(key, PlanJson.write(plan));
        }
    }

    private static SweepResult run(Scenario scenario, List<String> cases, CaseStore store) {
        return SweepRun.run(
                SweepText.of(scenario, members(cases)), scenario, new TreeMap<>(), store, SweepProgress.SILENT);
    }

    private static List<String> plans(SweepResult sweep) {
        return sweep.cases().stream()
                .map(found -> found.sweepCase().name() + " "
                        + found.fleet()
                                .map(FleetOutcome::plan)
                                .map(PlanJson::write)
                                .orElse(found.noPlan()))
                .sorted()
                .toList();
    }

    @ParameterizedTest
    @MethodSource("fleets")
    void aSweepThatWasBrokenOffAnywhereEndsWithTheSameBytes(ScenarioText text) {
        Scenario scenario = Planned.load(text);
        Texts unbroken = new Texts();
        List<String> whole = plans(run(scenario, CASES, unbroken));
        assertThat(unbroken.kept).hasSize(2 + CASES.size());

        for (int had = 0; had < unbroken.kept.size(); had++) {
            Texts some = new Texts();
            unbroken.kept.entrySet().stream()
                    .limit(had)
                    .forEach(entry -> some.kept.put(entry.getKey(), entry.getValue()));

            assertThat(plans(run(scenario, CASES, some))).isEqualTo(whole);
            // What the base plan left is kept before the plan, and is made again with it.
            assertThat(some.keeps).isEqualTo(unbroken.kept.size() - (had == 1 ? 0 : had));
            assertThat(some.kept).isEqualTo(unbroken.kept);
        }
    }

    @ParameterizedTest
    @MethodSource("fleets")
    void neitherOrderNorThreadsMatter(ScenarioText text) {
        List<String> backwards = new ArrayList<>(CASES);
        Collections.reverse(backwards);

        List<String> whole = plans(run(Planned.load(text), CASES, CaseStore.NONE));

        assertThat(plans(run(Planned.load(text), backwards, CaseStore.NONE))).isEqualTo(whole);
        assertThat(plans(run(
                        Planned.load(text.replace("scenario.json", "\"threads\": 1", "\"threads\": 2")),
                        CASES,
                        CaseStore.NONE)))
                .isEqualTo(whole);
    }

    /** Each case by itself, before any takes over what another has found. */
    @Test
    void certificatesOfCasesHoldAlongABudget() {
        Scenario scenario = Planned.load(TwoDepots.inPhases("first,0,1000", "second,2,"));
        FleetJob base = FleetJob.of(scenario);
        Texts store = new Texts();
        base.runLeaving(store, 1);
        Optional<Beginning> beginning = base.left(store).map(left -> new Beginning(base.key(), left, Touched.REPRICED));
        assertThat(beginning).isPresent();

        List<Certificate> found = new ArrayList<>();
        for (String factor : List.of("0", "0.7", "0.9", "1.1", "1.6", "3")) {
            Scenario changed = Changes.apply(
                    scenario,
                    SweepText.of(scenario, members(List.of("""
                            {"name": "c", "changes": [{"change": "all_budgets", "value": %s}]}
                            """.formatted(factor))))
                            .cases()
                            .get(0)
                            .changes());
            Plan plan =
                    FleetJob.of(changed).from(beginning).run(CaseStore.NONE, 1).plan();
            double whole = new FleetPlanner(ProgressListener.SILENT)
                    .plan(changed, new TreeMap<>(), Method.WHOLE)
                    .plan()
                    .certificate()
                    .cost();
            assertThat(BoundCheck.of(changed, plan).faults()).isEmpty();
            assertThat(plan.certificate().bound()).isLessThanOrEqualTo(whole * (1 + ROUNDING));
            found.add(plan.certificate());
        }
        for (int i = 0; i < found.size(); i++) {
            for (int larger = i; larger < found.size(); larger++) {
                assertThat(found.get(larger).bound())
                        .isLessThanOrEqualTo(found.get(i).cost() * (1 + ROUNDING));
            }
        }
    }

    @Test
    void aCaseFromAnotherBeginningIsAnotherJob() {
        Scenario scenario = Planned.load(TwoDepots.inPhases("first,0,1000", "second,2,"));
        FleetJob base = FleetJob.of(scenario);
        Texts store = new Texts();
        base.runLeaving(store, 1);
        Optional<Beginning> beginning = base.left(store).map(left -> new Beginning(base.key(), left, Touched.REPRICED));

        assertThat(base.from(beginning).key()).isNotEqualTo(base.key());
        assertThat(FleetJob.of(scenario).key()).isEqualTo(base.key());
        assertThat(store.kept).hasSize(2).containsKey(base.key());
    }
}
