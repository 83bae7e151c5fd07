package depot.optimizer.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import depot.optimizer.fixture.Planned;
import depot.optimizer.fixture.ScenarioText;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

/**
 * Published problems in the clothes of a depot, through the real tables: each load is a charger of its own type, which alone takes the packs of its own
 * family, which one tool needs once a day. Currents on a circuit of 230 V are the sizes of the loads.
 */
class OutsideValuesTest {

    private static final double WATT_HOUR = 0.1;
    private static final int WH_PER_PROFIT = 10;

    /** Loads of some sizes, in amperes, that each give some energy; only circuits cost. */
    private static ScenarioText loads(int[] amps, int[] wattHours) {
        ScenarioText text = ScenarioText.tiny()
                .replace("scenario.json", "\"discount_rate\": 0.05", "\"discount_rate\": 0")
                .replace("depots.csv", "3,63,10", "3,400,100")
                .replace("crews.csv", "8,60", "100,1000")
                .replace("tariffs.csv", "0.30", "0")
                .table(
                        "pack_types.csv",
                        "pack_type,family,capacity_wh,usable_share,weight_kg,price,cycle_life,calendar_years\n")
                .table(
                        "charger_types.csv",
                        "charger_type,bays,charging_at_once,plate_watts,efficiency,places,portable,price,life_years\n")
                .table("charge_times.csv", "charger_type,pack_type,minutes_to_80,minutes_to_full\n")
                .table("tools.csv", "tool,family,average_watts\n")
                .table("work.csv", "season,days,crew,stop,tool,hours\n");
        for (int i = 0; i < amps.length; i++) {
            text = text.rows("pack_types.csv", "p%1$d,f%1$d,1000,1,1,0,1000,8".formatted(i))
                    .rows("charger_types.csv", "c%d,1,1,%d,1,1,no,0,10".formatted(i, amps[i] * 230))
                    .rows("charge_times.csv", "c%1$d,p%1$d,300,400".formatted(i))
                    .rows("tools.csv", "t%1$d,f%1$d,%2$d".formatted(i, wattHours[i]))
                    .rows("work.csv", "summer,Mon-Fri,crew-1,2,t%d,1".formatted(i));
        }
        return text;
    }

    // Martello & Toth, Knapsack Problems (1990) (seen, recomputed): 107 of 188. A circuit of 62.5 A carries 50 A for
    // hours.
    @Test
    void oneCircuitFeedsWhatAKnapsackHolds() {
        int[] profits = {70, 20, 39, 37, 7, 5, 10};
        int[] wattHours = new int[profits.length];
        for (int i = 0; i < profits.length; i++) {
            wattHours[i] = profits[i] * WH_PER_PROFIT;
        }
        ScenarioText text = loads(new int[] {31, 10, 20, 19, 4, 3, 6}, wattHours)
                .replace("circuits.csv", "1,16,4", "1,62.5,20")
                .setting("shortage_cost_per_kwh", "40");
        Planned planned = Planned.of(text).replayed();

        assertThat(planned.shortWh()).isCloseTo((188 - 107) * WH_PER_PROFIT, within(WATT_HOUR));
        assertThat(planned.chargers("c0")).isEqualTo(1);
        assertThat(planned.chargers("c3")).isEqualTo(1);
        assertThat(planned.chargers()).isEqualTo(2);
    }

    // OR-Tools documentation, bin packing page (seen, recomputed): 4 bins. Circuits of 125 A carry 100 A for hours.
    @Test
    void loadsNeedAsManyCircuitsAsBins() {
        int[] sizes = {48, 30, 19, 36, 36, 27, 42, 42, 36, 24, 30};
        int[] wattHours = new int[sizes.length];
        Arrays.fill(wattHours, 500);
        ScenarioText text = loads(sizes, wattHours)
                .table("circuits.csv", "circuit,depot,volts,phases,breaker_amps,outlets,install_cost\n");
        for (int k = 1; k <= 6; k++) {
            text = text.rows("circuits.csv", "k%d,north,230,1,125,20,1000".formatted(k));
        }
        Planned planned = Planned.of(text).proven();

        assertThat(planned.plan().circuitsBuilt()).hasSize(4);
        assertThat(planned.cost()).isCloseTo(4000, within(WATT_HOUR));
    }
}
