package depot.optimizer.check;

import static depot.optimizer.fixture.ScenarioText.tiny;

import depot.optimizer.fixture.ScenarioText;
import org.junit.jupiter.api.Test;

class DepotRulesTest {
    private static ScenarioText staffed(String from, String to, String swap) {
        return tiny().column("depots.csv", "staffed_from", from)
                .column("depots.csv", "staffed_to", to)
                .column("depots.csv", "swap_minutes", swap);
    }

    private static ScenarioText upgrade(String amps, String cost) {
        return tiny().column("depots.csv", "supply_upgrade_amps", amps)
                .column("depots.csv", "supply_upgrade_cost", cost);
    }

    private static ScenarioText baseLoads(String... rows) {
        return tiny().table("base_load.csv", "depot,circuit,days,from,to,amps\n")
                .rows("base_load.csv", rows);
    }

    @Test
    void staffedHoursBeginAndEnd() {
        Breach.in(staffed("08:00", "17:00", "")).isNone();
        Breach.in(staffed("08:00", "", "30")).isOnlyError("depots.csv:2:staffed_to", "", "given without it");
        Breach.in(staffed("", "17:00", "")).isOnlyError("depots.csv:2:staffed_from", "", "given without it");
        Breach.in(staffed("17:00", "17:00", "")).isOnlyError("depots.csv:2:staffed_to", "17:00", "before they begin");
        Breach.in(staffed("", "", "30")).isOnlyError("depots.csv:2:swap_minutes", "30", "nobody is there");
    }

    @Test
    void aBiggerSupplyIsBiggerAndHasAPrice() {
        Breach.in(upgrade("64", "0")).isNone();
        Breach.in(upgrade("63", "100")).isOnlyError("depots.csv:2:supply_upgrade_amps", "63", "not above");
        Breach.in(upgrade("100", "")).isOnlyError("depots.csv:2:supply_upgrade_cost", "", "given without it");
    }

    @Test
    void aPositionHasBothCoordinates() {
        Breach.in(tiny().column("depots.csv", "latitude", "52"))
                .isOnlyError("depots.csv:2:longitude", "", "given without it");
    }

    @Test
    void aDepotInUseHasACircuit() {
        String south = "south,South yard,flat,400,3,63,10";
        Breach.in(tiny().rows("depots.csv", south)).isOnlyNotice("depots.csv:3:depot", "south", "no crew");
        Breach.in(tiny().rows("depots.csv", south).replace("crews.csv", "north", "south"))
                .hasError("depots.csv:3:depot", "south", "no circuit");
    }

    @Test
    void aCircuitFitsItsSupply() {
        Breach.in(tiny().replace("depots.csv", "400,3,", "230,1,").replace("circuits.csv", "230,1,", "230,3,"))
                .isOnlyError("circuits.csv:2:phases", "3", "three phases");
        Breach.in(tiny().replace("circuits.csv", "230,1,", "401,1,"))
                .isOnlyError("circuits.csv:2:volts", "401", "above the supply");
    }

    @Test
    void baseLoadsLieInTheirSpansCircuitsAndRatings() {
        Breach.in(baseLoads("north,north-1,Mon-Sun,00:00,24:00,16"))
                .isOnlyNotice("base_load.csv:2:amps", "16", "leaves nothing");
        Breach.in(baseLoads("north,north-1,Mon-Sun,00:00,24:00,17"))
                .isOnlyError("base_load.csv:2:amps", "17", "more than the rating");
        Breach.in(baseLoads("north,,Mon-Sun,00:00,24:00,64"))
                .isOnlyError("base_load.csv:2:amps", "64", "more than the rating");
        Breach.in(baseLoads("north,,Mon-Sun,22:00,06:00,1"))
                .isOnlyError("base_load.csv:2:to", "06:00", "ends before it begins");
    }

    @Test
    void baseLoadsOfOneLineDoNotOverlap() {
        Breach.in(baseLoads(
                        "north,,Mon-Fri,06:00,12:00,1",
                        "north,,Mon-Fri,12:00,18:00,2",
                        "north,north-1,Mon,06:00,07:00,1"))
                .isNone();
        Breach.in(baseLoads("north,,Mon-Fri,06:00,12:00,1", "north,,Fri;Sat,11:59,18:00,2"))
                .isOnlyError("base_load.csv:3:from", "11:59", "overlaps that of line 2 on Fri");
    }

    @Test
    void aBaseLoadsCircuitIsInItsDepot() {
        Breach.in(tiny().rows("depots.csv", "south,South yard,flat,400,3,63,10")
                        .table("base_load.csv", "depot,circuit,days,from,to,amps\nsouth,north-1,Mon,06:00,07:00,1\n"))
                .hasError("base_load.csv:2:circuit", "north-1", "in depot north, not in south");
    }

    @Test
    void seasonsAreNoLongerThanAYear() {
        Breach.in(tiny().rows("seasons.csv", "winter,23")).isNone();
        Breach.in(tiny().rows("seasons.csv", "winter,23.1"))
                .isOnlyError("seasons.csv:3:weeks_per_year", "23.1", "longer than 53");
    }
}
