package depot.optimizer.check;

import static depot.optimizer.fixture.ScenarioText.tiny;

import depot.optimizer.fixture.ScenarioText;
import org.junit.jupiter.api.Test;

/** The tiny scenario has a horizon of ten years; its only crew is crew-1, its only depot north. */
class RolloutRulesTest {
    private static final String PHASES = "phase,year,budget\n";

    private static ScenarioText phases(String... rows) {
        return tiny().table("phases.csv", PHASES).rows("phases.csv", rows);
    }

    private static ScenarioText budgets(String... rows) {
        return phases("first,0,1000", "second,2,")
                .column("depots.csv", "region", "Upland")
                .table("region_budgets.csv", "phase,region,budget\n")
                .rows("region_budgets.csv", rows);
    }

    /** The crew's petrol costs 900 a year. */
    private static ScenarioText conversions(String... rows) {
        return phases("first,0,1000", "second,2,", "third,9,0")
                .column("crews.csv", "petrol_cost_per_year", "900")
                .table("crew_phases.csv", "crew,earliest_phase,latest_phase\n")
                .rows("crew_phases.csv", rows);
    }

    /** The crew's petrol costs nothing. */
    private static ScenarioText free(String row) {
        return conversions(row).replace("crews.csv", ",900", ",0");
    }

    @Test
    void phasesAreInOrderOfTime() {
        Breach.in(phases("first,0,1000", "second,1,")).isNone();
        Breach.in(phases("first,0,1000", "second,0,"))
                .isOnlyError("phases.csv:3:year", "0", "not later than phase first");
        Breach.in(phases("first,0,", "third,3,", "second,2,1000"))
                .isOnlyError("phases.csv:4:year", "2", "(line 3) in year 3");
    }

    @Test
    void theFirstPhaseBeginsNow() {
        Breach.in(phases("first,0,")).isNone();
        Breach.in(phases("first,1,", "second,2,")).isOnlyError("phases.csv:2:year", "1", "does not begin now");
    }

    @Test
    void aPhaseIsNamedOnce() {
        Breach.in(phases("first,0,", "first,1,")).isOnlyError("phases.csv:3:phase", "first", "same phase is on line 2");
    }

    @Test
    void phasesBeginWithinTheHorizon() {
        Breach.in(phases("first,0,", "last,9,")).isNone();
        Breach.in(phases("first,0,", "last,10,")).isOnlyError("phases.csv:3:year", "10", "horizon of 10 years");
        Breach.in(phases("first,-1,")).isOnlyError("phases.csv:2:year", "-1", "out of range");
        Breach.in(phases("first,0.5,")).isOnlyError("phases.csv:2:year", "0.5", "not a whole number");
    }

    @Test
    void aBudgetMayBeNothingButNotLess() {
        Breach.in(phases("first,0,0")).isNone();
        Breach.in(phases("first,0,-1")).isOnlyError("phases.csv:2:budget", "-1", "out of range");
    }

    @Test
    void aRegionalBudgetNamesPhaseAndRegion() {
        Breach.in(budgets("first,Upland,500", "second,Upland,700")).isNone();
        Breach.in(budgets("first,Uplands,500"))
                .isOnlyError("region_budgets.csv:2:region", "Uplands", "no depot in depots.csv");
        Breach.in(budgets("frist,Upland,500")).isOnlyError("region_budgets.csv:2:phase", "frist", "no such phase");
        Breach.in(budgets("first,Upland,500", "first,Upland,600"))
                .isOnlyError("region_budgets.csv:3:region", "Upland", "same phase, region is on line 2");
        Breach.in(budgets("first,Upland,")).isOnlyError("region_budgets.csv:2:budget", "", "missing");
    }

    @Test
    void aCrewsEarliestPhaseIsNotAfterItsLatest() {
        Breach.in(conversions("crew-1,second,second")).isNone();
        Breach.in(conversions("crew-1,,second")).isNone();
        Breach.in(conversions("crew-1,third,")).isNone();
        Breach.in(conversions("crew-1,third,second"))
                .isOnlyError("crew_phases.csv:2:earliest_phase", "third", "later than the latest phase, second");
    }

    @Test
    void aCrewsPhasesAreThere() {
        Breach.in(conversions("crew-1,forth,third"))
                .isOnlyError("crew_phases.csv:2:earliest_phase", "forth", "no such phase in phases.csv");
        Breach.in(conversions("crew-9,,")).isOnlyError("crew_phases.csv:2:crew", "crew-9", "no such crew");
        Breach.in(conversions("crew-1,,", "crew-1,first,first"))
                .isOnlyError("crew_phases.csv:3:crew", "crew-1", "same crew is on line 2");
        Breach.in(conversions("crew-1,first,").without("phases.csv"))
                .isOnlyError("crew_phases.csv:2:earliest_phase", "first", "no such phase in phases.csv");
    }

    @Test
    void stayingOnPetrolCosts() {
        Breach.in(free("crew-1,first,first")).isNone();
        Breach.in(free("crew-1,,first")).isNone();
        Breach.in(free("crew-1,first,second"))
                .isOnlyError("crew_phases.csv:2:crew", "crew-1", "costs nothing in crews.csv (line 2)");
        Breach.in(free("crew-1,first,")).isOnlyError("crew_phases.csv:2:crew", "crew-1", "may stay on petrol");
        Breach.in(free("crew-1,second,second").replace("crews.csv", ",0", ","))
                .isOnlyError("crew_phases.csv:2:crew", "crew-1", "may stay on petrol");
    }

    /** Without phases there is one, and a crew may still keep its petrol tools through it. */
    @Test
    void aCrewMayStayOnPetrolWithoutPhases() {
        Breach.in(conversions("crew-1,,").without("phases.csv")).isNone();
    }

    @Test
    void aBrokenPhaseSilencesWhatNeedsIt() {
        Breach.in(free("crew-1,,second").replace("phases.csv", "first,0", "first,soon"))
                .isOnlyError("phases.csv:2:year", "soon", "not a number");
    }
}
