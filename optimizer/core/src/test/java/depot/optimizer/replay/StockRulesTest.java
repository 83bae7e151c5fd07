package depot.optimizer.replay;

import static depot.optimizer.replay.Replays.PLAN;
import static depot.optimizer.replay.Replays.SCENARIO;
import static depot.optimizer.replay.Replays.broken;
import static depot.optimizer.replay.Replays.change;
import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.replay.Violation.Kind;
import org.junit.jupiter.api.Test;

/** What is owned, what is portable, which days there are, and plans that are tried against changed tables. */
class StockRulesTest {
    @Test
    void noMoreCountsAsOwnedThanIsOwned() {
        String owned = SCENARIO + "owned P count=3\nowned Q count=1\n";
        String plan = change(change(PLAN, "stock D P 4", "stock D P 4 owned=3"), "C Q\n", "C Q owned\n");

        assertThat(broken(owned, plan)).isEmpty();
        assertThat(broken(owned, change(plan, "owned=3", "owned=4"))).containsExactly(Kind.OWNED);
        assertThat(broken(SCENARIO, plan)).containsExactly(Kind.OWNED);
        assertThat(broken(SCENARIO + "owned P count=9\n", change(PLAN, "P 4\n", "P 4 owned=5\n")))
                .containsExactly(Kind.OWNED);
    }

    @Test
    void crewsCarryOnlyWhatIsPortable() {
        String more = change(SCENARIO, "payload=4", "payload=9");

        assertThat(broken(more, "kit A Q 1\n" + PLAN)).containsExactly(Kind.PORTABLE);
        assertThat(broken(change(more, "charger Q", "charger Q portable"), "kit A Q 1\n" + PLAN))
                .isEmpty();
    }

    @Test
    void everySeasonDayWithWorkIsPlannedOnce() {
        String week = "day Mon-Fri\n" + change(PLAN, "stock D P 4\ncharger Q-1 C Q\n", "");
        String end = week.replace("Mon-Fri", "%s");
        String equipment = "stock D P 4\ncharger Q-1 C Q\n";

        assertThat(broken(SCENARIO, equipment + week + end.formatted("Sat-Sun")))
                .isEmpty();
        assertThat(broken(SCENARIO, equipment + week + end.formatted("Fri-Sun")))
                .containsExactly(Kind.CALENDAR);
        assertThat(broken(SCENARIO, equipment + week + end.formatted("Sun"))).containsExactly(Kind.CALENDAR);
        assertThat(broken(SCENARIO, equipment + week.replace("Mon-Fri", "Mon-Sun per_year=365")))
                .containsExactly(Kind.CALENDAR);
    }

    @Test
    void theCycleStartsWithTheEarliestDepartureOfAnyDay() {
        String early = SCENARIO.replace("stop A 1 D 08:00", "stop A 1 D 08:00 days=Mon-Sat\nstop A 1 D 07:10 days=Sun");
        String days = "stock D P 4\ncharger Q-1 C Q\nday Mon-Sat start=07:00\n%sday Sun start=07:00\n%s";
        String day = "trip A 1 %s 12:30 P:4\nload Q-1 12:30 31:00 P:4\nenergy 07:00 31:00 kwh=0.4\n";
        String plan = days.formatted(day.formatted("08:00"), day.formatted("07:10"));

        assertThat(broken(early, plan)).isEmpty();
        assertThat(broken(early, plan.replace("Sun start=07:00", "Sun start=07:10")))
                .containsExactly(Kind.CYCLE);
    }

    @Test
    void changedTablesGiveViolationsNotExceptions() {
        assertThat(broken(SCENARIO.replace("depot D", "depot E"), PLAN)).containsExactly(Kind.MISSING_ITEM);
        assertThat(broken(SCENARIO.replace("circuit C", "circuit K"), PLAN)).contains(Kind.MISSING_ITEM);
        assertThat(broken(SCENARIO.replace("charger Q", "charger K"), PLAN)).contains(Kind.MISSING_ITEM);
        assertThat(broken(SCENARIO.replace("pack P", "pack K"), PLAN)).contains(Kind.MISSING_ITEM);
        assertThat(broken(SCENARIO.replace(" A", " B"), PLAN)).contains(Kind.TRIP);
        assertThat(broken("season other\n" + SCENARIO, PLAN)).contains(Kind.MISSING_ITEM);
        assertThat(broken(SCENARIO, PLAN + "bank A B K\nunit K U\nkit Z Y 1\nbuilt K\nload Z 12:30 32:00 Y:1\n"))
                .contains(Kind.MISSING_ITEM);
        assertThat(broken("", PLAN)).contains(Kind.MISSING_ITEM);
    }

    @Test
    void fewerAmperesThanPlannedAreFound() {
        assertThat(broken(change(SCENARIO, "breaker=10", "breaker=0.4"), PLAN)).containsExactly(Kind.CIRCUIT_CURRENT);
    }
}
