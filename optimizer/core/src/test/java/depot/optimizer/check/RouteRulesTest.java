package depot.optimizer.check;

import static depot.optimizer.fixture.ScenarioText.tiny;

import depot.optimizer.fixture.ScenarioText;
import org.junit.jupiter.api.Test;

class RouteRulesTest {
    private static final String SOUTH = "south,South yard,flat,400,3,63,10";

    /** A Saturday of stops, beside the weekdays of the tiny scenario. */
    private static ScenarioText saturday(String... stops) {
        ScenarioText text = tiny();
        for (String stop : stops) {
            text = text.rows("stops.csv", "summer,Sat,crew-1," + stop);
        }
        return text;
    }

    @Test
    void aDayBeginsAndEndsAtTheCrewsDepot() {
        Breach.in(saturday("1,park,,07:00", "2,north,16:00,"))
                .isOnlyError("stops.csv:5:place", "park", "does not begin at its depot");
        Breach.in(saturday("1,north,,07:00", "2,park,16:00,"))
                .isOnlyError("stops.csv:6:place", "park", "does not end at its depot");
        Breach.in(saturday("1,north,,07:00")).isOnlyError("stops.csv:5:stop", "1", "one stop only");
    }

    @Test
    void onlyTheEndsOfADayHaveBlankTimes() {
        Breach.in(saturday("1,north,,07:00", "2,park,,15:00", "3,north,16:00,"))
                .isOnlyError("stops.csv:6:arrive", "", "the arrival is missing");
        Breach.in(saturday("1,north,,07:00", "2,park,15:00,", "3,north,16:00,"))
                .isOnlyError("stops.csv:6:leave", "", "the departure is missing");
        Breach.in(saturday("1,north,06:00,07:00", "2,park,08:00,15:00", "3,north,16:00,"))
                .isOnlyError("stops.csv:5:arrive", "06:00", "does not begin or end with a stay");
        Breach.in(saturday("1,north,07:00,07:00", "2,park,08:00,15:00", "3,north,16:00,16:00"))
                .isNone();
        Breach.in(saturday("1,north,,", "2,park,08:00,15:00", "3,north,16:00,"))
                .isOnlyError("stops.csv:5:leave", "", "the departure is missing");
    }

    @Test
    void timesRiseAlongADay() {
        Breach.in(saturday("1,north,,07:00", "2,park,07:00,16:00", "3,north,16:00,"))
                .isNone();
        Breach.in(saturday("1,north,,07:00", "2,park,06:59,15:00", "3,north,16:00,"))
                .isOnlyError("stops.csv:6:arrive", "06:59", "before it leaves stop 1 (line 5) at 07:00");
        Breach.in(saturday("1,north,,07:00", "2,park,08:00,07:30", "3,north,16:00,"))
                .isOnlyError("stops.csv:6:leave", "07:30", "leaves before it arrives");
    }

    @Test
    void aDayBeginsOnItsDate() {
        Breach.in(saturday("1,north,,24:00", "2,park,25:00,26:00", "3,north,26:30,"))
                .isOnlyError("stops.csv:5:leave", "24:00", "begins on the next day");
    }

    @Test
    void aTripGoesSomewhere() {
        Breach.in(saturday("1,north,,07:00", "2,north,07:30,08:00", "3,park,09:00,10:00", "4,north,11:00,"))
                .isOnlyError("stops.csv:6:place", "north", "the same depot");
        Breach.in(saturday(
                        "1,north,,07:00",
                        "2,park,08:00,10:00",
                        "3,north,11:00,12:00",
                        "4,park,13:00,14:00",
                        "5,north,15:00,"))
                .isNone();
    }

    /** The depot's earliest departure is at 07:00 on weekdays. */
    @Test
    void crewsAreBackBeforeTheNextDayBegins() {
        Breach.in(saturday("1,north,,20:00", "2,park,21:00,25:00", "3,north,30:00,"))
                .isNone();
        Breach.in(saturday("1,north,,05:59", "2,park,21:00,25:00", "3,north,29:45,"))
                .isNone();
        Breach.in(saturday("1,north,,05:59", "2,park,21:00,25:00", "3,north,29:46,"))
                .isOnlyError("stops.csv:7:arrive", "29:46", "after the next day has begun at depot north");
    }

    /** Crew-2 leaves the depot south at 05:00; if it worked from north, crew-1 would have to be back there by then. */
    @Test
    void everyBaseOfACrewKeepsItsDaysApart() {
        ScenarioText late = saturday("1,north,,20:00", "2,park,21:00,25:00", "3,north,29:01,")
                .rows("depots.csv", SOUTH)
                .rows("circuits.csv", "south-1,south,230,1,16,4")
                .rows("crews.csv", "crew-2,south,8,60")
                .rows(
                        "stops.csv",
                        "summer,Mon,crew-2,1,south,,05:00",
                        "summer,Mon,crew-2,2,park,08:00,09:00",
                        "summer,Mon,crew-2,3,south,10:00,");
        Breach.in(late).isNone();
        ScenarioText both = late.table("crew_bases.csv", "crew,depot,cost_per_year\ncrew-2,north,10\n");
        Breach.in(both)
                .count(1)
                .hasError(
                        "stops.csv:7:arrive",
                        "29:01",
                        "at depot north, where the earliest departure of any day is 05:00");
        Breach.in(both.replace("stops.csv", "29:01", "29:00")).isNone();
    }

    @Test
    void aFaultOfSeveralDaysIsToldOnce() {
        Breach.in(tiny().replace("stops.csv", "3,north", "3,park"))
                .isOnlyError("stops.csv:4:place", "park", "crew-1 in summer on Mon-Fri");
    }

    @Test
    void aCrewWithABrokenStopIsNotCheckedFurther() {
        Breach.in(tiny().replace("stops.csv", "16:00", "4 pm")).isOnlyError("stops.csv:4:arrive", "4 pm", "not a time");
    }

    @Test
    void whatIsNotPlannedYetIsNoticed() {
        Breach.in(saturday("1,north,,07:00", "2,south,08:00,09:00", "3,north,16:00,")
                        .rows("depots.csv", SOUTH)
                        .rows("circuits.csv", "south-1,south,230,1,16,4")
                        .rows("crews.csv", "crew-2,south,8,60")
                        .rows("stops.csv", "summer,Mon,crew-2,1,south,,07:00", "summer,Mon,crew-2,2,south yard,,"))
                .hasError("stops.csv:9:arrive", "", "the arrival is missing");
        Breach.in(saturday("1,north,,07:00", "2,North,08:00,09:00", "3,north,16:00,"))
                .isOnlyNotice("stops.csv:6:place", "North", "taken as a site");
        Breach.in(tiny().rows("crews.csv", "crew-2,north,8,60")).isOnlyNotice("crews.csv:3:crew", "crew-2", "no stops");
        Breach.in(tiny().column("stops.csv", "site_watts", "1000")
                        .replace("stops.csv", ",07:00,1000", ",07:00,")
                        .replace("stops.csv", "16:00,,1000", "16:00,,5"))
                .isOnlyNotice("stops.csv:4:site_watts", "5", "not made use of");
    }

    @Test
    void stopsAtOtherDepotsAndOtherBasesAreAsTheyShouldBe() {
        ScenarioText two = tiny().rows("depots.csv", SOUTH)
                .rows("circuits.csv", "south-1,south,230,1,16,4")
                .rows("crews.csv", "crew-2,south,8,60")
                .rows(
                        "stops.csv",
                        "summer,Mon,crew-2,1,south,,07:00",
                        "summer,Mon,crew-2,2,park,08:00,09:00",
                        "summer,Mon,crew-2,3,south,10:00,");
        Breach.in(two).isNone();
        Breach.in(two.table("crew_bases.csv", "crew,depot,cost_per_year\ncrew-2,south,10\ncrew-2,north,20\n"))
                .isNone();
        Breach.in(two.replace("stops.csv", "crew-2,2,park", "crew-2,2,north")).isNone();
    }
}
