package depot.optimizer.replay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import depot.optimizer.fixture.Planned;
import depot.optimizer.fixture.ScenarioText;
import depot.optimizer.plan.DayPlan;
import depot.optimizer.plan.SeasonDay;
import depot.optimizer.problem.DayKind;
import depot.optimizer.problem.Slice;
import java.time.DayOfWeek;
import java.util.Arrays;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** The watts of the base load, worked out by the problem and by the replay: what is left under a billed peak depends on them. */
class BaseLoadWattsTest {

    private static final Offset<Double> SAME = within(1e-9);
    private static final int INTERVAL = 60;

    private static ScenarioText billed(String powerFactor, String... loads) {
        return ScenarioText.tiny()
                .column("circuits.csv", "power_factor", powerFactor)
                .table("tariff_terms.csv", """
                        tariff,standing_per_day,demand_price_per_kw_month,demand_minutes
                        flat,0,10,%d
                        """.formatted(INTERVAL))
                .table("base_load.csv", "depot,circuit,days,from,to,amps\n")
                .rows("base_load.csv", loads);
    }

    /** The day starts within an interval, at 06:45, and loads on a circuit and on the supply differ from day to day. */
    private static ScenarioText uneven() {
        return billed(
                        "0.8",
                        "north,north-1,Mon-Fri,06:45,07:00,8",
                        "north,north-1,Sat,06:00,06:45,8",
                        "north,north-1,Mon-Thu,20:00,23:30,3",
                        "north,,Mon-Sun,18:00,22:00,1")
                .replace("stops.csv", "07:00", "06:45");
    }

    private static Yard yard(Planned planned) {
        DepotTables tables = DepotTables.of(planned.scenario(), planned.plan()).orElseThrow();
        return new Yard(tables, planned.plan());
    }

    private static double highestAverage(Yard yard) {
        return Arrays.stream(DayOfWeek.values())
                .mapToDouble(day -> DemandMeter.highestAverage(
                        yard.baseWatts(day), yard.tables().startMinute(), INTERVAL))
                .max()
                .orElseThrow();
    }

    @Test
    void theHighestAverageIsTheReplays() {
        Planned planned = Planned.of(uneven());

        // By hand: 8 A on Friday from 06:45 and at the end of that cycle until 06:45, 230 V, power factor 0.8.
        assertThat(planned.problem().tariff().basePeakKw()).isCloseTo(8 * 230 * 0.8 / 1000, SAME);
        assertThat(highestAverage(yard(planned)) / 1000)
                .isCloseTo(planned.problem().tariff().basePeakKw(), SAME);
    }

    @Test
    void everySliceHasTheReplaysWatts() {
        Planned planned = Planned.of(uneven());
        Yard yard = yard(planned);
        int start = yard.tables().startMinute();

        assertThat(planned.problem().startMinute()).isEqualTo(start).isEqualTo(6 * 60 + 45);
        for (DayKind kind : planned.problem().days()) {
            for (SeasonDay day : kind.occurrences()) {
                double[] watts = yard.baseWatts(day.day());
                for (Slice slice : kind.slices()) {
                    assertThat(Arrays.copyOfRange(watts, slice.fromMinute() - start, slice.toMinute() - start))
                            .as("%s from minute %d", day, slice.fromMinute())
                            .containsOnly(new double[] {slice.supplyBaseWatts()}, SAME);
                }
            }
        }
    }

    @Test
    void theSupplyStillCarriesVoltAmperes() {
        List<Slice> slices = Planned.of(uneven()).problem().days().get(0).slices();

        assertThat(slices.get(0).supplyBaseWatts()).isCloseTo(8 * 230 * 0.8, SAME);
        assertThat(slices.get(0).supplyBaseVa()).isCloseTo(8 * 230, SAME);
    }

    @Test
    void planAndReplayBillTheSameDemandBesideAPoorPowerFactor() {
        // 4 A of 230 V at noon are 920 VA, but only 460 W that are billed anyway.
        Planned planned = Planned.of(
                billed("0.5", "north,north-1,Mon-Sun,11:00,13:00,4").replace("tariff_terms.csv", ",60", ",15"));
        double planKw = highest(
                planned.plan().days().stream().mapToDouble(DayPlan::demandKw).toArray());
        double replayKw = highest(FleetReplay.runDepot(planned.scenario(), planned.plan()).days().stream()
                .mapToDouble(DayReplay::demandKw)
                .toArray());

        // One pack at a time: 400 Wh in 42 min.
        assertThat(planKw).isCloseTo(0.4 * 60 / 42 - 0.46, within(1e-4));
        assertThat(replayKw).isCloseTo(planKw, within(1e-4));
    }

    private static double highest(double[] values) {
        return Arrays.stream(values).max().orElse(0);
    }
}
