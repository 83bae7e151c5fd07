package depot.optimizer.replay;

import depot.optimizer.plan.SeasonDay;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;

/**
 * How a planned day went on the season days that run alike. A day of the plan whose season days do not run alike has several of these.
 *
 * @param day index in {@code DepotPlan.days}
 * @param occurrences season days that this stands for
 * @param daysPerYear how many days of a year those are
 * @param outcome met, short as the plan declares, or failed
 * @param shortWh energy that was not covered, declared or not
 * @param lowestMargin stop after which the least energy was left on board, empty: no work
 * @param loads every loading, in order of collection
 * @param missingWhByCircuit watt-hours that loads still needed when they were collected, by circuit; empty: all in time
 * @param crewsLacking crews that lacked energy or could not recharge as planned on the way
 * @param peaks highest current on each circuit in use and on the supply
 * @param circuitLoads watts by circuit in use, for charts
 * @param fullPacks full packs in the depot by pool and type, for charts
 * @param energy drawn for charging by span of one price
 * @param plannedEnergyCost what the plan reckons for the same energy
 * @param demandKw highest average above the highest average of the base load alone on the same day
 * @param violations rules broken on the day
 */
public record DayReplay(
        int day,
        List<SeasonDay> occurrences,
        double daysPerYear,
        Outcome outcome,
        double shortWh,
        Optional<TripMargin> lowestMargin,
        List<LoadTiming> loads,
        SortedMap<String, Double> missingWhByCircuit,
        SortedSet<String> crewsLacking,
        List<Peak> peaks,
        List<CircuitLoad> circuitLoads,
        List<FullPacks> fullPacks,
        List<EnergySpan> energy,
        BigDecimal plannedEnergyCost,
        double demandKw,
        List<Violation> violations) {

    /** How a day ends. */
    public enum Outcome {
        /** All work done, all packs full, no rule broken. */
        MET,
        /** As planned, but the plan itself declares a shortage. */
        SHORT,
        /** A rule is broken. */
        FAILED
    }

    /** Name of the supply among the peaks. */
    public static final String SUPPLY = "supply";

    /**
     * Energy left on board after a stop.
     *
     * @param wattHours below 0: lacking
     */
    public record TripMargin(String crew, int trip, String family, int stop, double wattHours) {}

    /**
     * Highest current of the day.
     *
     * @param circuit or {@link #SUPPLY}
     * @param amps base load left out on a circuit, counted in on the supply; the supply counts plain chargers with their plate
     * @param limitAmps what was allowed at that minute
     */
    public record Peak(String circuit, int minute, double amps, double limitAmps) {}

    /** Watts by circuit: highest of each step, and the lowest limit of each step. The supply is in volt-amperes. */
    public record CircuitLoad(String circuit, Series watts, Series limitWatts) {}

    /** Full packs in the depot: lowest of each step. */
    public record FullPacks(String pool, String packType, Series packs) {}

    /** Energy drawn from the grid for charging in a span of one price. */
    public record EnergySpan(int fromMinute, int toMinute, BigDecimal pricePerKwh, double kwh) {
        public BigDecimal cost() {
            return pricePerKwh.multiply(BigDecimal.valueOf(kwh));
        }
    }

    /** Cost of the energy that the run drew. */
    public BigDecimal energyCost() {
        return energy.stream().map(EnergySpan::cost).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** The load with the fewest minutes between being ready and being collected, empty: no load. */
    public Optional<LoadTiming> tightestLoad() {
        return loads.stream().min((a, b) -> Integer.compare(a.marginMinutes(), b.marginMinutes()));
    }
}
