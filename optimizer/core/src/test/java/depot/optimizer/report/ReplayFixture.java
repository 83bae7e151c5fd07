package depot.optimizer.report;

import depot.optimizer.plan.CostLine.Category;
import depot.optimizer.plan.DayPlan;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.Plan;
import depot.optimizer.plan.SeasonDay;
import depot.optimizer.replay.CostCheck;
import depot.optimizer.replay.DayReplay;
import depot.optimizer.replay.DayReplay.CircuitLoad;
import depot.optimizer.replay.DayReplay.EnergySpan;
import depot.optimizer.replay.DayReplay.FullPacks;
import depot.optimizer.replay.DayReplay.Outcome;
import depot.optimizer.replay.DayReplay.Peak;
import depot.optimizer.replay.DayReplay.TripMargin;
import depot.optimizer.replay.DepotReplay;
import depot.optimizer.replay.LoadTiming;
import depot.optimizer.replay.ReplayReport;
import depot.optimizer.replay.SeriesFixture;
import depot.optimizer.replay.Violation;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/** A made-up replay of {@link PlanFixture}: the yard's weekdays are met, its Saturday fails, the hill is short as planned. */
final class ReplayFixture {

    private ReplayFixture() {}

    static ReplayReport of(Plan plan) {
        DepotPlan yard = plan.depots().get(0);
        DepotPlan hill = plan.depots().get(1);
        return new ReplayReport(List.of(
                new DepotReplay(
                        "yard",
                        "now",
                        List.of(
                                day(yard, 0, Outcome.MET, List.of(bench(405), wall(405)), List.of()),
                                day(yard, 1, Outcome.FAILED, List.of(wall(405)), List.of(late()))),
                        List.of(),
                        costs(9000)),
                new DepotReplay(
                        "hill",
                        "now",
                        List.of(day(hill, 0, Outcome.SHORT, List.of(shed(450)), List.of())),
                        List.of(),
                        costs(3000))));
    }

    private static DayReplay day(
            DepotPlan depot, int index, Outcome outcome, List<CircuitLoad> loads, List<Violation> violations) {
        DayPlan day = depot.days().get(index);
        int start = day.startMinute();
        String crew = day.trips().get(0).crew();
        return new DayReplay(
                index,
                day.occurrences(),
                day.daysPerYear(),
                outcome,
                outcome == Outcome.SHORT ? 212.4 : 0,
                Optional.of(new TripMargin(crew, 1, "bar", 2, outcome == Outcome.SHORT ? -212.4 : 84.6)),
                List.of(
                        new LoadTiming("wall-01", "wall", 735, 885, 945, 2),
                        new LoadTiming(
                                "wall-02", "wall", 960, outcome == Outcome.FAILED ? LoadTiming.NEVER : 1800, 1845, 4)),
                new TreeMap<>(),
                new TreeSet<>(),
                loads.stream().map(ReplayFixture::peak).toList(),
                loads,
                List.of(
                        new FullPacks(depot.depot(), "B10", SeriesFixture.of(start, minute -> packs(minute, 14))),
                        new FullPacks(depot.depot(), "B5", SeriesFixture.of(start, minute -> packs(minute, 4)))),
                day.energy().stream()
                        .map(use -> new EnergySpan(use.fromMinute(), use.toMinute(), use.pricePerKwh(), use.kwh()))
                        .toList(),
                new BigDecimal("1.3745"),
                day.demandKw(),
                violations);
    }

    private static Peak peak(CircuitLoad load) {
        int highest = IntStream.range(0, load.watts().size())
                .boxed()
                .max((a, b) -> Double.compare(load.watts().at(a), load.watts().at(b)))
                .orElse(0);
        return new Peak(
                load.circuit(),
                load.watts().minuteOf(highest),
                load.watts().at(highest) / 218.5,
                load.limitWatts().at(highest) / 218.5);
    }

    private static CircuitLoad bench(int start) {
        return load("bench", start, minute -> minute >= 945 && minute < 1180 ? 480 : 0, minute -> 2359);
    }

    private static CircuitLoad wall(int start) {
        return load(
                "wall",
                start,
                minute -> minute >= 735 && minute < 885 ? 420 : minute >= 1440 && minute < 1700 ? 870 : 0,
                minute -> minute >= 1020 && minute < 1320 ? 900 : 2185);
    }

    private static CircuitLoad shed(int start) {
        return load("shed", start, minute -> minute >= 885 && minute < 1140 ? 480 : 0, minute -> 2797);
    }

    private static CircuitLoad load(String circuit, int start, IntToDoubleFunction watts, IntToDoubleFunction limit) {
        return new CircuitLoad(circuit, SeriesFixture.of(start, watts), SeriesFixture.of(start, limit));
    }

    private static int packs(int minute, int all) {
        if (minute < 420) {
            return all / 2;
        }
        if (minute < 945) {
            return minute < 885 ? 0 : 2;
        }
        return Math.min(all, (minute - 945) / 60);
    }

    private static Violation late() {
        return new Violation(
                Violation.Kind.LATE,
                "yard",
                1,
                Optional.of(new SeasonDay("winter", DayOfWeek.SATURDAY)),
                "wall-02",
                1845,
                3,
                4,
                "3 of 4 packs are full when wall-02 is collected at 06:45 +1");
    }

    private static CostCheck costs(int total) {
        BigDecimal sum = BigDecimal.valueOf(total);
        return new CostCheck(
                List.of(new CostCheck.CategoryCost(Category.PACKS, sum, sum)),
                sum,
                sum,
                BigDecimal.TEN,
                BigDecimal.TEN,
                List.of());
    }
}
