package depot.optimizer.model;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.fixture.Planned;
import depot.optimizer.fixture.ScenarioText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a crew takes along: whole packs of 450 Wh for every tool and for all the work, in its places and its payload. */
class CarryTest {

    private static ScenarioText hours(String hours) {
        return ScenarioText.tiny().replace("work.csv", "trimmer,2", "trimmer," + hours);
    }

    // 400 W x 1.125 h = 450 Wh.
    @ParameterizedTest
    @CsvSource({"0.01, 1", "1.125, 1", "1.126, 2", "2.25, 2", "2.26, 3"})
    void packsAreWhole(String hours, int packs) {
        assertThat(Planned.of(hours(hours)).proven().packs()).isEqualTo(packs);
    }

    @ParameterizedTest
    @CsvSource({"1, 1", "2, 2", "3, 3"})
    void everyToolThatRunsAtTheSameTimeHasAPack(String toolsAtOnce, int packs) {
        ScenarioText text = hours("0.1").column("work.csv", "tools_at_once", toolsAtOnce);

        assertThat(Planned.of(text).proven().packs()).isEqualTo(packs);
    }

    @Test
    void toolsOfOtherStopsShareTheirPacks() {
        ScenarioText twoStops = hours("0.1")
                .column("work.csv", "tools_at_once", "2")
                .replace("stops.csv", "park,08:00,15:00", "park,08:00,10:00\nsummer,Mon-Fri,crew-1,3,lane,11:00,15:00")
                .replace("stops.csv", "crew-1,3,north", "crew-1,4,north")
                .rows("work.csv", "summer,Mon-Fri,crew-1,3,trimmer,0.1,1");

        assertThat(Planned.of(twoStops).proven().packs()).isEqualTo(2);
    }

    @ParameterizedTest
    @CsvSource({"2, true", "1, false"})
    void packsFitTheirPlaces(String places, boolean fits) {
        ScenarioText text = ScenarioText.tiny().replace("crews.csv", "8,60", places + ",60");

        assertThat(Planned.of(text).replayed().covered()).isEqualTo(fits);
    }

    @ParameterizedTest
    @CsvSource({"5, true", "4.9, false"})
    void packsFitThePayload(String payloadKg, boolean fits) {
        ScenarioText text = ScenarioText.tiny().replace("crews.csv", "8,60", "8," + payloadKg);

        assertThat(Planned.of(text).replayed().covered()).isEqualTo(fits);
    }

    @ParameterizedTest
    @CsvSource({"1, 2", "0.9, 2", "0.88, 3"})
    void wornPacksHoldLess(String health, int packs) {
        // 800 Wh: two packs down to 400 Wh each, 89 % of their new energy.
        assertThat(Planned.of(ScenarioText.tiny().setting("pack_health", health))
                        .proven()
                        .packs())
                .isEqualTo(packs);
    }

    @ParameterizedTest
    @CsvSource({"1, 2", "0.9, 2", "0.88, 3"})
    void coldPacksHoldLess(String factor, int packs) {
        ScenarioText winter = ScenarioText.tiny().column("seasons.csv", "pack_capacity_factor", factor);

        assertThat(Planned.of(winter).proven().packs()).isEqualTo(packs);
    }

    @Test
    void theColdestSeasonDecides() {
        ScenarioText year = ScenarioText.tiny()
                .column("seasons.csv", "pack_capacity_factor", "1")
                .rows("seasons.csv", "winter,10,0.7")
                .rows(
                        "stops.csv",
                        "winter,Mon-Fri,crew-1,1,north,,07:00",
                        "winter,Mon-Fri,crew-1,2,park,08:00,15:00",
                        "winter,Mon-Fri,crew-1,3,north,16:00,")
                .rows("work.csv", "winter,Mon-Fri,crew-1,2,trimmer,2");

        assertThat(Planned.of(year).proven().packs()).isEqualTo(3);
    }

    @ParameterizedTest
    @CsvSource({"0.5, 1", "0.59, 1", "0.7, 2", "0.95, 2"})
    void theBadDayIsPlannedFor(String quantile, int packs) {
        // Mean 400 Wh, spread 0.5: lognormal with sigma^2 = ln 1.25, mu = ln 400 - sigma^2/2. 450 Wh is its 0.686
        // quantile (recomputed).
        ScenarioText text = hours("1").setting("demand_quantile", quantile).setting("demand_spread", "0.5");

        assertThat(Planned.of(text).proven().packs()).isEqualTo(packs);
    }

    @ParameterizedTest
    @CsvSource({"depot, 2", "crew, 4"})
    void pooledPacksServeOneCrewAfterTheOther(String sharing, int packs) {
        ScenarioText shifts = ScenarioText.tiny()
                .replace("scenario.json", "\"pack_sharing\": \"depot\"", "\"pack_sharing\": \"" + sharing + "\"")
                .replace("stops.csv", "08:00,15:00", "08:00,10:00")
                .replace("stops.csv", "north,16:00", "north,11:00")
                .rows("crews.csv", "crew-2,north,8,60")
                .rows(
                        "stops.csv",
                        "summer,Mon-Fri,crew-2,1,north,,14:00",
                        "summer,Mon-Fri,crew-2,2,park,15:00,17:00",
                        "summer,Mon-Fri,crew-2,3,north,18:00,")
                .rows("work.csv", "summer,Mon-Fri,crew-2,2,trimmer,2");

        assertThat(Planned.of(shifts).proven().packs()).isEqualTo(packs);
    }

    @Test
    void packsOfOneFamilyDoNotServeTheTools() {
        ScenarioText two = ScenarioText.tiny()
                .rows("pack_types.csv", "cheap,red,500,0.9,2.5,1,1000,8")
                .rows("charge_times.csv", "duo,cheap,42,60");
        Planned planned = Planned.of(two).proven();

        assertThat(planned.packs("cheap")).isZero();
        assertThat(planned.packs("pack-500")).isEqualTo(2);
    }
}
