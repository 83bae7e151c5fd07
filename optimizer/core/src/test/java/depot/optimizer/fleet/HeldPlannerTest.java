package depot.optimizer.fleet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import depot.optimizer.fixture.Planned;
import depot.optimizer.fixture.ScenarioText;
import depot.optimizer.fixture.TinyScenarios;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.replay.DayReplay.Outcome;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Days planned anew with what a plan has bought. */
class HeldPlannerTest {

    private static final double ROUNDING = 1e-5;

    private static DepotResult kept(Planned base, Planned now) {
        return HeldPlanner.replan(now.scenario(), now.problem().depot(), base.plan());
    }

    private static double cost(DepotPlan plan) {
        return plan.stop().certificate().cost();
    }

    private static void assertSamePieces(DepotPlan kept, DepotPlan bought) {
        assertThat(kept.chargers()).isEqualTo(bought.chargers());
        assertThat(kept.units()).isEqualTo(bought.units());
        assertThat(kept.banks()).isEqualTo(bought.banks());
        assertThat(kept.kits()).isEqualTo(bought.kits());
        assertThat(kept.circuitsBuilt()).isEqualTo(bought.circuitsBuilt());
        assertThat(kept.supplyUpgraded()).isEqualTo(bought.supplyUpgraded());
        assertThat(kept.packs())
                .extracting(stock -> List.of(stock.pool(), stock.packType(), stock.count(), stock.owned()))
                .isEqualTo(bought.packs().stream()
                        .map(stock -> List.of(stock.pool(), stock.packType(), stock.count(), stock.owned()))
                        .toList());
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void theBestPurchasesKeptBuyTheSameAndCostNoLessThanTheBestPlan(long seed) {
        Planned base = Planned.of(TinyScenarios.random(seed));

        DepotResult kept = kept(base, base);

        assertSamePieces(kept.plan(), base.plan());
        assertThat(kept.replay().allViolations()).isEmpty();
        assertThat(kept.replay().proven()).isTrue();
        assertThat(cost(kept.plan()))
                .isGreaterThanOrEqualTo(base.plan().stop().certificate().bound() * (1 - ROUNDING));
    }

    static List<ScenarioText> fleets() {
        return List.of(SmallFleet.lunch(), SmallFleet.seasons());
    }

    @ParameterizedTest
    @MethodSource("fleets")
    void whereNothingChangesTheDaysComeOutAsGood(ScenarioText text) {
        Planned base = Planned.of(text);

        DepotResult kept = kept(base, base);

        assertSamePieces(kept.plan(), base.plan());
        assertThat(kept.replay().proven()).isTrue();
        assertThat(cost(kept.plan())).isCloseTo(base.cost(), within(0.01 * base.cost()));
    }

    @Test
    void aDemandChargeIsPaidForWhatTheDaysNeed() {
        Planned base = Planned.of(SmallFleet.seasons());
        Planned dear = Planned.of(SmallFleet.seasons().replace("tariff_terms.csv", "flat,0,6,15", "flat,0,60,15"));

        DepotResult kept = kept(base, dear);

        assertThat(kept.replay().proven()).isTrue();
        assertThat(cost(kept.plan())).isGreaterThanOrEqualTo(dear.cost() * (1 - ROUNDING));
    }

    @Test
    void whatIsNotEnoughIsShortAndSaid() {
        Planned base = Planned.of(SmallFleet.lunch());
        Planned more = Planned.of(SmallFleet.lunch().replace("work.csv", "2,trimmer,2", "2,trimmer,5"));

        DepotResult kept = kept(base, more);

        assertSamePieces(kept.plan(), base.plan());
        assertThat(kept.replay().proven()).isTrue();
        assertThat(kept.replay().days()).allMatch(day -> day.outcome() == Outcome.SHORT);
        assertThat(cost(kept.plan())).isGreaterThan(more.cost());
    }

    @ParameterizedTest
    @MethodSource("fleets")
    void aWideGapHidesNoShortageWhereItIsForbidden(ScenarioText text) {
        ScenarioText forbidding = text.replace(
                        "scenario.json", "\"shortage_cost_per_kwh\": 40", "\"shortage_cost_per_kwh\": \"forbid\"")
                .setting("solve", "{\"gap\": 0.5, \"threads\": 1}");
        Planned base = Planned.of(forbidding);

        DepotResult kept = kept(base, base);

        assertThat(base.covered()).isTrue();
        assertThat(kept.replay().proven()).isTrue();
        assertThat(kept.replay().days()).allMatch(day -> day.outcome() == Outcome.MET);
        assertThat(cost(kept.plan())).isLessThanOrEqualTo(base.cost() * (1 + ROUNDING));
    }
}
