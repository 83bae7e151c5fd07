package depot.optimizer.problem;

import depot.optimizer.plan.SeasonDay;
import depot.optimizer.scenario.BaseLoad;
import depot.optimizer.scenario.Circuit;
import depot.optimizer.scenario.Depot;
import depot.optimizer.scenario.PriceBand;
import depot.optimizer.scenario.Scenario;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;

/** Prices and base loads of one depot at any minute of a day and of the night that follows it. */
final class GridDay {

    private static final int DAY = 1440;

    private final Depot depot;
    private final List<Circuit> circuits;
    private final List<PriceBand> bands;
    private final List<BaseLoad> loads;

    GridDay(Scenario scenario, Depot depot, List<Circuit> circuits) {
        this.depot = depot;
        this.circuits = circuits;
        bands = scenario.priceBands().stream()
                .filter(band -> band.tariff().equals(depot.tariff()))
                .toList();
        loads = scenario.baseLoads().stream()
                .filter(load -> load.depot().equals(depot.id()))
                .toList();
    }

    /** Highest current that a circuit feeds already, at any time of any week. */
    double peakBaseAmps(Circuit circuit) {
        double peak = 0;
        for (DayOfWeek day : DayOfWeek.values()) {
            for (BaseLoad load : loads) {
                if (on(load, circuit)) {
                    peak = Math.max(peak, amps(circuit, day, load.fromMinute()));
                }
            }
        }
        return peak;
    }

    /**
     * Highest average of the base load over the tariff's demand interval, in kW, on any weekday. A day is a cycle here as everywhere: where it
     * starts within an interval, its last minutes complete that interval.
     */
    double peakBaseKw(int startMinute, int demandMinutes) {
        double peak = 0;
        for (DayOfWeek day : DayOfWeek.values()) {
            double[] sums = new double[DAY / demandMinutes];
            for (int at = startMinute; at < startMinute + DAY; at++) {
                sums[at % DAY / demandMinutes] += baseWatts(day.plus(at / DAY), at % DAY);
            }
            for (double sum : sums) {
                peak = Math.max(peak, sum / demandMinutes / 1000);
            }
        }
        return peak;
    }

    /** The cycle that starts at a minute of a day, cut at the given handovers and wherever a price or a base load changes. */
    List<Slice> slices(SeasonDay day, List<Integer> handovers) {
        int start = handovers.get(0);
        int end = handovers.get(handovers.size() - 1);
        SortedSet<Integer> cuts = new TreeSet<>(handovers);
        for (int midnight = 0; midnight <= 2 * DAY; midnight += DAY) {
            DayOfWeek weekday = day.day().plus(midnight / DAY);
            for (PriceBand band : bands) {
                if (applies(band, day.season(), weekday)) {
                    cuts.add(midnight + band.fromMinute());
                }
            }
            for (BaseLoad load : loads) {
                if (load.days().contains(weekday)) {
                    cuts.add(midnight + load.fromMinute());
                    cuts.add(midnight + load.toMinute());
                }
            }
        }
        List<Slice> slices = new ArrayList<>();
        List<Integer> times = List.copyOf(cuts.subSet(start, end + 1));
        for (int i = 0; i + 1 < times.size(); i++) {
            Slice slice = slice(day, times.get(i), times.get(i + 1));
            if (!slices.isEmpty()
                    && !handovers.contains(slice.fromMinute())
                    && alike(slices.get(slices.size() - 1), slice)) {
                Slice before = slices.remove(slices.size() - 1);
                slice = slice(day, before.fromMinute(), slice.toMinute());
            }
            slices.add(slice);
        }
        return List.copyOf(slices);
    }

    private static boolean alike(Slice a, Slice b) {
        return a.pricePerKwh().compareTo(b.pricePerKwh()) == 0
                && a.supplyBaseVa() == b.supplyBaseVa()
                && a.circuitBaseAmps().equals(b.circuitBaseAmps());
    }

    private Slice slice(SeasonDay day, int from, int to) {
        DayOfWeek weekday = day.day().plus(from / DAY);
        int minute = from % DAY;
        List<Double> amps = circuits.stream().map(c -> amps(c, weekday, minute)).toList();
        return new Slice(
                from,
                to,
                price(day.season(), weekday, minute),
                baseVa(weekday, minute),
                baseWatts(weekday, minute),
                amps);
    }

    private double baseVa(DayOfWeek day, int minute) {
        double va =
                sum(Optional.empty(), day, minute) * Electricity.vaPerAmp(depot.supplyVolts(), depot.supplyPhases());
        for (Circuit circuit : circuits) {
            va += amps(circuit, day, minute) * Electricity.vaPerAmp(circuit.volts(), circuit.phases());
        }
        return va;
    }

    /** What a circuit feeds has the circuit's power factor; of what sits on the supply itself none is known, and it counts with 1. */
    private double baseWatts(DayOfWeek day, int minute) {
        double watts =
                sum(Optional.empty(), day, minute) * Electricity.vaPerAmp(depot.supplyVolts(), depot.supplyPhases());
        for (Circuit circuit : circuits) {
            watts += amps(circuit, day, minute)
                    * Electricity.vaPerAmp(circuit.volts(), circuit.phases())
                    * circuit.powerFactor();
        }
        return watts;
    }

    private BigDecimal price(String season, DayOfWeek day, int minute) {
        return bands.stream()
                .filter(band -> applies(band, season, day) && band.fromMinute() <= minute && minute < band.toMinute())
                .findFirst()
                .map(PriceBand::pricePerKwh)
                .orElseThrow(() -> new IllegalStateException("tariff " + depot.tariff() + " has no price in season "
                        + season + " on " + day + " at minute " + minute + "; the checker should have refused it"));
    }

    private static boolean applies(PriceBand band, String season, DayOfWeek day) {
        return band.days().contains(day) && band.season().map(season::equals).orElse(true);
    }

    private double amps(Circuit circuit, DayOfWeek day, int minute) {
        return sum(Optional.of(circuit.id()), day, minute);
    }

    private static boolean on(BaseLoad load, Circuit circuit) {
        return load.circuit().map(circuit.id()::equals).orElse(false);
    }

    private double sum(Optional<String> circuit, DayOfWeek day, int minute) {
        double amps = 0;
        for (BaseLoad load : loads) {
            if (load.circuit().equals(circuit)
                    && load.days().contains(day)
                    && load.fromMinute() <= minute
                    && minute < load.toMinute()) {
                amps += load.amps();
            }
        }
        return amps;
    }
}
