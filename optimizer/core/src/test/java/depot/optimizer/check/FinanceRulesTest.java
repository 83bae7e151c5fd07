package depot.optimizer.check;

import static depot.optimizer.fixture.ScenarioText.tiny;

import depot.optimizer.fixture.ScenarioText;
import org.junit.jupiter.api.Test;

/** Rules of depreciation schedules and of the settings of finance: each broken once and just kept. */
class FinanceRulesTest {

    private static ScenarioText schedule(String... rows) {
        return tiny().setting("finance", "{\"depreciation\": \"plan-a\"}")
                .table("depreciation.csv", "schedule,year,share\n" + String.join("\n", rows) + "\n");
    }

    @Test
    void sharesAddToOne() {
        Breach.in(schedule("plan-a,1,0.5", "plan-a,2,0.499")).isNone();
        Breach.in(schedule("plan-a,1,0.5", "plan-a,2,0.501")).isNone();
        Breach.in(schedule("plan-a,1,0.5", "plan-a,2,0.498"))
                .isOnlyError("depreciation.csv:3:share", "0.498", "the shares of schedule plan-a add to 0.998");
        Breach.in(schedule("plan-a,1,0.5", "plan-a,2,0.502"))
                .isOnlyError("depreciation.csv:3:share", "0.502", "add to 1.002");
    }

    // IRS Publication 946, table A-1, half-year convention, five and seven years, in per cent (seen).
    @Test
    void publishedSchedulesAreTaken() {
        Breach.in(schedule(
                        "plan-a,1,0.2",
                        "plan-a,2,0.32",
                        "plan-a,3,0.192",
                        "plan-a,4,0.1152",
                        "plan-a,5,0.1152",
                        "plan-a,6,0.0576"))
                .isNone();
        Breach.in(schedule(
                        "plan-a,1,0.1429",
                        "plan-a,2,0.2449",
                        "plan-a,3,0.1749",
                        "plan-a,4,0.1249",
                        "plan-a,5,0.0893",
                        "plan-a,6,0.0892",
                        "plan-a,7,0.0893",
                        "plan-a,8,0.0446"))
                .isNone();
    }

    @Test
    void yearsHaveNoGap() {
        Breach.in(schedule("plan-a,3,0.3", "plan-a,1,0.7", "plan-a,2,0")).isNone();
        Breach.in(schedule("plan-a,1,0.7", "plan-a,3,0.3"))
                .isOnlyError("depreciation.csv:3:year", "3", "schedule plan-a has no year 2");
        Breach.in(schedule("plan-a,2,1")).isOnlyError("depreciation.csv:2:year", "2", "has no year 1");
    }

    @Test
    void aYearIsThereOnce() {
        Breach.in(schedule("plan-a,1,0.5", "plan-a,1,0.5"))
                .isOnlyError("depreciation.csv:3:year", "1", "a row with the same schedule, year is on line 2");
    }

    @Test
    void sharesAndYearsHaveTheirRanges() {
        Breach.in(schedule("plan-a,1,1.1")).isOnlyError("depreciation.csv:2:share", "1.1", "out of range");
        Breach.in(schedule("plan-a,0,1")).isOnlyError("depreciation.csv:2:year", "0", "out of range");
    }

    @Test
    void theScheduleNamedIsThere() {
        Breach.in(tiny().setting("finance", "{\"depreciation\": \"plan-a\"}"))
                .isOnlyError("scenario.json:8:finance.depreciation", "plan-a", "no such schedule in depreciation.csv");
        Breach.in(schedule("plan-a,1,1").replace("scenario.json", "plan-a", "plan-aa"))
                .hasError("scenario.json:8:finance.depreciation", "plan-aa", "no such schedule")
                .count(2);
    }

    @Test
    void aScheduleThatNobodyNamesIsNoticed() {
        Breach.in(tiny().table("depreciation.csv", "schedule,year,share\nplan-a,1,1\n"))
                .isOnlyNotice("depreciation.csv:2:schedule", "plan-a", "does not name this schedule");
    }

    @Test
    void aPriceOfCarbonNeedsTheCarbonOfElectricity() {
        Breach.in(tiny().setting("finance", "{\"carbon_price_per_tonne\": 60}"))
                .isOnlyError(
                        "scenario.json:8:finance.carbon_price_per_tonne",
                        "60",
                        "a price of carbon without finance.grid_kg_co2_per_kwh");
        Breach.in(tiny().setting("finance", "{\"carbon_price_per_tonne\": 60, \"grid_kg_co2_per_kwh\": 0}"))
                .isNone();
    }
}
