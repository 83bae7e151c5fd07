package depot.optimizer.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import depot.optimizer.fixture.Planned;
import depot.optimizer.fixture.ScenarioText;
import depot.optimizer.fixture.TwoDepots;
import depot.optimizer.problem.SharedLimit;
import depot.optimizer.problem.SharedLimits;
import depot.optimizer.scenario.Scenario;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One limit has more room, by a piece or a hundredth of the money; all else is the same. */
class SharedRoomTest {

    private static final ScenarioText TEXT = TwoDepots.inPhases("first,0,1401", "second,2,20")
            .column("depots.csv", "region", "west")
            .table("region_budgets.csv", "region,phase,budget\nwest,first,700\nwest,second,900\n")
            .table("delivery_limits.csv", "item,phase,count\npack-500,first,5\nduo,first,0\npack-500,second,7\n")
            .table("price_tiers.csv", "item,from_count,price\npack-500,3,250\n");

    @ParameterizedTest
    @CsvSource({
        "budget first, 15, phases.csv, 'first,0,1401', 'first,0,1416'",
        "budget second, 1, phases.csv, 'second,2,20', 'second,2,21'",
        "region budget first west, 7, region_budgets.csv, 'west,first,700', 'west,first,707'",
        "delivery first duo, 1, delivery_limits.csv, 'duo,first,0', 'duo,first,1'",
        "delivery second pack-500, 1, delivery_limits.csv, 'second,7', 'second,8'"
    })
    void oneLimitHasMoreRoom(String limit, int step, String file, String before, String after) {
        Scenario scenario = Planned.load(TEXT);
        SharedRoom room = SharedRoom.more(scenario, limit(scenario, limit));

        assertThat(room.step()).isEqualByComparingTo(String.valueOf(step));
        assertThat(SharedLimits.of(room.scenario()))
                .isEqualTo(SharedLimits.of(Planned.load(TEXT.replace(file, before, after))));
        assertThat(room.scenario().depots()).isEqualTo(scenario.depots());
    }

    @Test
    void aQuantityPriceHasNoAmount() {
        Scenario scenario = Planned.load(TEXT);
        SharedLimit quantity = limit(scenario, "quantity first pack-500");

        assertThatThrownBy(() -> SharedRoom.more(scenario, quantity))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("quantity first pack-500");
    }

    private static SharedLimit limit(Scenario scenario, String name) {
        return SharedLimits.of(scenario).stream()
                .filter(limit -> limit.name().equals(name))
                .findFirst()
                .orElseThrow();
    }
}
