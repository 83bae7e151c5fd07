package depot.optimizer.check;

import static depot.optimizer.fixture.ScenarioText.tiny;

import org.junit.jupiter.api.Test;

class TableRulesTest {
    @Test
    void aRequiredTableHasRows() {
        Breach.in(tiny().table("work.csv", "season,days,crew,stop,tool,hours\n"))
                .isOnlyError("work.csv:0:", "", "no rows");
    }

    @Test
    void aReferenceNamesARowThatIsThere() {
        Breach.in(tiny().replace("circuits.csv", "north,230", "nroth,230"))
                .hasError("circuits.csv:2:depot", "nroth", "no such depot in depots.csv");
        Breach.in(tiny().replace("depots.csv", ",flat,", ",steep,"))
                .hasError("depots.csv:2:tariff", "steep", "no such tariff in tariffs.csv");
        Breach.in(tiny().replace("work.csv", "trimmer", "Trimer"))
                .isOnlyError("work.csv:2:tool", "Trimer", "no such tool in tools.csv");
        Breach.in(tiny().rows("stops.csv", "summer,Sat,crew-9,1,north,,07:00"))
                .isOnlyError("stops.csv:5:crew", "crew-9", "no such crew in crews.csv");
        Breach.in(tiny().rows("stops.csv", "winter,Sat,crew-1,1,north,,07:00", "winter,Sat,crew-1,2,north,09:00,"))
                .hasError("stops.csv:5:season", "winter", "no such season in seasons.csv");
    }

    @Test
    void aReferenceToATableThatCannotBeReadIsNotReported() {
        Breach.in(tiny().replace("depots.csv", ",63,10", ",63"))
                .isOnlyError("depots.csv:2:", "", "the row has 6 cells, the header has 7");
    }

    @Test
    void keysAreUnique() {
        Breach.in(tiny().rows("seasons.csv", "summer,10"))
                .isOnlyError("seasons.csv:3:season", "summer", "a row with the same season is on line 2");
        Breach.in(tiny().rows("charge_times.csv", "duo,pack-500,50,70"))
                .isOnlyError("charge_times.csv:3:pack_type", "pack-500", "same charger_type, pack_type is on line 2");
    }

    @Test
    void keysWithDaysAreUniqueOnEachDay() {
        Breach.in(tiny().rows("work.csv", "summer,Fri-Sat,crew-1,2,trimmer,1"))
                .hasError("work.csv:3:tool", "trimmer", "is on line 2 on Fri");
        Breach.in(tiny().rows(
                                "stops.csv",
                                "summer,Sat,crew-1,1,north,,07:00",
                                "summer,Sat,crew-1,2,park,08:00,15:00",
                                "summer,Sat,crew-1,3,north,16:00,"))
                .isNone();
    }

    @Test
    void unknownAndMissingColumnsAreReported() {
        Breach.in(tiny().column("depots.csv", "Region ", "x"))
                .isOnlyError("depots.csv:1:Region", "Region", "no column of this table");
        Breach.in(tiny().replace("tools.csv", "average_watts", "watts"))
                .hasError("tools.csv:1:watts", "watts", "no column of this table")
                .hasError("tools.csv:1:average_watts", "", "the column is missing")
                .count(2);
    }

    @Test
    void unknownTablesAreNoticed() {
        Breach.in(tiny().table("weather.csv", "day,rain\n1,4\n")).isOnlyNotice("weather.csv:0:", "", "not used");
        Breach.in(tiny().table("Owned.CSV", "")).isOnlyNotice("Owned.CSV:0:", "", "not used");
    }

    @Test
    void columnsMayComeInAnyOrder() {
        Breach.in(tiny().table("tools.csv", "average_watts,tool,family\n400,trimmer,blue\n"))
                .isNone();
    }
}
