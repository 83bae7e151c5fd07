package depot.optimizer.check;

import static depot.optimizer.fixture.ScenarioText.tiny;

import org.junit.jupiter.api.Test;

class WorkRulesTest {
    @Test
    void workIsDoneAtAStopThatIsMade() {
        Breach.in(tiny().replace("work.csv", "crew-1,2", "crew-1,4"))
                .isOnlyError("work.csv:2:stop", "4", "crew-1 makes no such stop in summer");
        Breach.in(tiny().replace("work.csv", "Mon-Fri", "Mon-Sat"))
                .isOnlyError("work.csv:2:days", "Mon-Sat", "not made on Sat");
    }

    @Test
    void noWorkIsDoneAtTheCrewsOwnDepot() {
        Breach.in(tiny().replace("work.csv", "crew-1,2", "crew-1,3"))
                .hasError("work.csv:2:stop", "3", "the crew's own depot");
    }

    @Test
    void aToolRunsNoLongerThanTheStopLasts() {
        Breach.in(tiny().replace("work.csv", "trimmer,2", "trimmer,7")).isNone();
        Breach.in(tiny().replace("work.csv", "trimmer,2", "trimmer,7.01"))
                .isOnlyError("work.csv:2:hours", "7.01", "longer than the stop (stops.csv line 3), 7.0 h");
    }

    @Test
    void toolsByTurnsRunNoLongerTogetherThanTheStopLasts() {
        Breach.in(tiny().rows("tools.csv", "saw,blue,900")
                        .column("work.csv", "tools_at_once", "0")
                        .rows("work.csv", "summer,Fri,crew-1,2,saw,5,0"))
                .isNone();
        Breach.in(tiny().rows("tools.csv", "saw,blue,900")
                        .column("work.csv", "tools_at_once", "0")
                        .rows("work.csv", "summer,Fri,crew-1,2,saw,5.1,0"))
                .isOnlyError("work.csv:3:hours", "5.1", "by turns");
    }
}
