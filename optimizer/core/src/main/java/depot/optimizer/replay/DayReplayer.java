package depot.optimizer.replay;

import depot.optimizer.plan.EnergyUse;
import depot.optimizer.replay.DayReplay.CircuitLoad;
import depot.optimizer.replay.DayReplay.EnergySpan;
import depot.optimizer.replay.DayReplay.FullPacks;
import depot.optimizer.replay.DayReplay.Outcome;
import depot.optimizer.replay.DayReplay.Peak;
import depot.optimizer.replay.Violation.Kind;
import depot.optimizer.scenario.Circuit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** Runs a day as planned and measures it. */
final class DayReplayer {
    /** Step of the series for charts. */
    static final int SERIES_MINUTES = 15;

    /** Billed demand that the rounding to whole minutes may add, in kW. */
    private static final double DEMAND_KW = 0.005;

    private final Yard yard;
    private final DepotTables tables;
    private final SupplyWatch supply;
    private final DemandCeiling ceiling;

    DayReplayer(Yard yard) {
        this.yard = yard;
        this.tables = yard.tables();
        this.supply = new SupplyWatch(yard);
        this.ceiling = new DemandCeiling(yard);
    }

    /** Violations found so far on the same day are kept in front. */
    DayReplay replay(DayCase day, Violations violations) {
        DaySetup setup = DaySetup.of(yard, ceiling, day);
        PlannedDay run = new PlannedDay(
                violations, yard.circuits().size(), yard.room().shelves().size());
        new DaySimulation(yard, setup, Draw.PLANNED, run).run();
        double[] gridWatts = gridWatts(setup, run.watts());
        addBanks(run.watts(), setup.bankWatts());
        double[] va = supply.carried(setup, run.watts());
        List<Peak> peaks = peaks(setup, run.watts(), va, violations);
        List<EnergySpan> energy = energy(day.prices(), gridWatts);
        double demandKw = demandKw(setup, gridWatts, violations);
        return new DayReplay(
                day.index(),
                day.occurrences(),
                day.daysPerYear(),
                violations.none() ? planned(day) : Outcome.FAILED,
                run.shortWh(),
                Optional.ofNullable(run.lowest()),
                List.copyOf(run.loads()),
                Collections.unmodifiableSortedMap(run.missingWh()),
                Collections.unmodifiableSortedSet(run.crewsLacking()),
                peaks,
                circuitLoads(setup, run.watts(), va),
                fullPacks(run.full()),
                energy,
                plannedCost(day),
                demandKw,
                violations.list());
    }

    private static Outcome planned(DayCase day) {
        boolean declared = day.trips().stream()
                .flatMap(trip -> trip.plan().shortages().stream())
                .anyMatch(s -> s.wattHours() > Tolerance.ENERGY_WH);
        return declared ? Outcome.SHORT : Outcome.MET;
    }

    /** What charging draws from the grid by minute; a bank draws what was taken out of it, spread over its recharge. */
    private static double[] gridWatts(DaySetup setup, double[][] watts) {
        double[] total = new double[BaseLoads.DAY];
        for (double[] circuit : watts) {
            for (int i = 0; i < total.length; i++) {
                total[i] += circuit[i];
            }
        }
        int start = setup.day().handovers().first();
        for (BankRecharge bank : setup.banks()) {
            int from = bank.fromMinute() - start;
            for (int i = Math.max(0, from); i < Math.min(total.length, from + bank.minutes()); i++) {
                total[i] += bank.gridWh() * 60 / bank.minutes();
            }
        }
        return total;
    }

    private static void addBanks(double[][] watts, double[][] bankWatts) {
        for (int c = 0; c < watts.length; c++) {
            for (int i = 0; i < BaseLoads.DAY; i++) {
                watts[c][i] += bankWatts[c][i];
            }
        }
    }

    private List<Peak> peaks(DaySetup setup, double[][] watts, double[] va, Violations violations) {
        List<Peak> peaks = new ArrayList<>();
        for (int c = 0; c < watts.length; c++) {
            Circuit circuit = yard.circuits().get(c);
            int at = highest(watts[c], setup.limitWatts()[c]);
            if (watts[c][at] > 0) {
                Line line = Line.of(circuit);
                Peak peak = new Peak(
                        circuit.id(),
                        tables.startMinute() + at,
                        line.amps(watts[c][at]),
                        line.amps(setup.limitWatts()[c][at]));
                peaks.add(peak);
                check(peak, Kind.CIRCUIT_CURRENT, "circuit " + circuit.id(), violations);
            }
        }
        double limit = SupplyWatch.limitVa(tables, yard.plan());
        double[] limits = new double[va.length];
        Arrays.fill(limits, limit);
        int at = highest(va, limits);
        Line line = Line.of(tables.depot());
        Peak peak = new Peak(DayReplay.SUPPLY, tables.startMinute() + at, line.ampsOf(va[at]), line.ampsOf(limit));
        peaks.add(peak);
        check(peak, Kind.SUPPLY_CURRENT, "the supply", violations);
        return List.copyOf(peaks);
    }

    private static void check(Peak peak, Kind kind, String subject, Violations violations) {
        if (Tolerance.above(peak.amps(), peak.limitAmps())) {
            violations.add(
                    kind,
                    peak.circuit(),
                    peak.minute(),
                    peak.amps(),
                    peak.limitAmps(),
                    subject + " carries " + Violations.number(peak.amps()) + " A at " + Violations.clock(peak.minute())
                            + ", more than the " + Violations.number(peak.limitAmps()) + " A allowed then");
        }
    }

    /** The first minute that is furthest above its limit, else the first with the highest value. */
    private static int highest(double[] values, double[] limits) {
        int worst = 0;
        int highest = 0;
        for (int i = 1; i < values.length; i++) {
            if (values[i] - limits[i] > values[worst] - limits[worst]) {
                worst = i;
            }
            if (values[i] > values[highest]) {
                highest = i;
            }
        }
        return Tolerance.above(values[worst], limits[worst]) ? worst : highest;
    }

    private List<CircuitLoad> circuitLoads(DaySetup setup, double[][] watts, double[] va) {
        List<CircuitLoad> loads = new ArrayList<>();
        int start = tables.startMinute();
        for (int c = 0; c < watts.length; c++) {
            String id = yard.circuits().get(c).id();
            boolean used = yard.plan().chargers().stream()
                            .anyMatch(p -> p.circuit().equals(id))
                    || yard.plan().banks().stream().anyMatch(b -> b.circuit().equals(id));
            if (used) {
                loads.add(new CircuitLoad(
                        id,
                        Series.highest(start, SERIES_MINUTES, watts[c]),
                        Series.lowest(start, SERIES_MINUTES, setup.limitWatts()[c])));
            }
        }
        double[] limit = new double[va.length];
        Arrays.fill(limit, SupplyWatch.limitVa(tables, yard.plan()));
        loads.add(new CircuitLoad(
                DayReplay.SUPPLY,
                Series.highest(start, SERIES_MINUTES, va),
                Series.lowest(start, SERIES_MINUTES, limit)));
        return List.copyOf(loads);
    }

    private List<FullPacks> fullPacks(int[][] full) {
        List<FullPacks> packs = new ArrayList<>();
        int s = 0;
        for (PackShelf shelf : yard.room().shelves()) {
            double[] counts = Arrays.stream(full[s++]).asDoubleStream().toArray();
            packs.add(new FullPacks(
                    shelf.pool(), shelf.type().id(), Series.lowest(tables.startMinute(), SERIES_MINUTES, counts)));
        }
        return List.copyOf(packs);
    }

    private List<EnergySpan> energy(PriceLine prices, double[] gridWatts) {
        return prices.spans().stream()
                .map(span -> {
                    double wattMinutes = 0;
                    for (int t = span.fromMinute(); t < span.toMinute(); t++) {
                        wattMinutes += gridWatts[t - tables.startMinute()];
                    }
                    return new EnergySpan(span.fromMinute(), span.toMinute(), span.pricePerKwh(), wattMinutes / 60_000);
                })
                .toList();
    }

    private static BigDecimal plannedCost(DayCase day) {
        return day.plan().energy().stream()
                .map((EnergyUse use) -> use.pricePerKwh().multiply(BigDecimal.valueOf(use.kwh())))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** Billed demand above that of the base load alone. */
    private double demandKw(DaySetup setup, double[] gridWatts, Violations violations) {
        if (!ceiling.billed()) {
            return 0;
        }
        double[] all = setup.baseWatts(yard);
        for (int i = 0; i < all.length; i++) {
            all[i] += gridWatts[i];
        }
        double kw = ceiling.aboveBaseKw(all);
        double paid = ceiling.paidKw(setup.day());
        if (Tolerance.above(kw, paid + DEMAND_KW)) {
            violations.add(
                    Kind.DEMAND,
                    DayReplay.SUPPLY,
                    kw,
                    paid,
                    "charging adds " + Violations.number(kw) + " kW to the billed demand, but the plan pays for "
                            + Violations.number(paid) + " kW");
        }
        return kw;
    }
}
