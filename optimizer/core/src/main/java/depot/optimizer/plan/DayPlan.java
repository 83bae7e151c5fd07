package depot.optimizer.plan;

import java.util.List;

/**
 * What happens on one kind of day, from the depot's earliest departure of any day to the same time a day later. Times are minutes
 * after the midnight that the day starts with, so that 1500 is one o'clock in the following night.
 *
 * @param occurrences the season days that are run like this
 * @param daysPerYear how many days of a year those are
 * @param startMinute earliest departure of any day, rounded down to a handover
 * @param trips in order of leaving
 * @param loads every loading of a charger at the depot, in order of time
 * @param feeds what each load-sharing unit may draw, slice by slice
 * @param energy energy drawn from the grid, slice by slice
 * @param demandKw highest average draw above what the base load alone would be billed, 0 without a demand charge
 */
public record DayPlan(
        List<SeasonDay> occurrences,
        double daysPerYear,
        int startMinute,
        List<TripPlan> trips,
        List<ChargerLoad> loads,
        List<UnitFeed> feeds,
        List<EnergyUse> energy,
        double demandKw) {

    /** The same day with other loadings. */
    public DayPlan withLoads(List<ChargerLoad> other) {
        return new DayPlan(occurrences, daysPerYear, startMinute, trips, List.copyOf(other), feeds, energy, demandKw);
    }

    /** The same day with other feeds of its load-sharing units. */
    public DayPlan withFeeds(List<UnitFeed> other) {
        return new DayPlan(occurrences, daysPerYear, startMinute, trips, loads, List.copyOf(other), energy, demandKw);
    }

    /** The same day with other demand paid for, in kW. */
    public DayPlan withDemand(double otherKw) {
        return new DayPlan(occurrences, daysPerYear, startMinute, trips, loads, feeds, energy, otherKw);
    }

    /** The same day with other energy. */
    public DayPlan withEnergy(List<EnergyUse> other) {
        return new DayPlan(occurrences, daysPerYear, startMinute, trips, loads, feeds, List.copyOf(other), demandKw);
    }
}
