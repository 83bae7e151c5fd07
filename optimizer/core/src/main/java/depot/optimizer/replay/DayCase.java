package depot.optimizer.replay;

import depot.optimizer.plan.DayPlan;
import depot.optimizer.plan.SeasonDay;
import depot.optimizer.plan.TripPlan;
import depot.optimizer.scenario.Crew;
import depot.optimizer.scenario.Season;
import java.util.List;
import java.util.NavigableSet;

/**
 * A day of the plan on season days that are alike in all that matters: routes, needs, temperature, base load and prices.
 *
 * @param index of the day in the plan
 * @param daysPerYear how many days of a year those are
 * @param guests crews of other depots that come by
 */
record DayCase(
        int index,
        DayPlan plan,
        List<SeasonDay> occurrences,
        double daysPerYear,
        Season season,
        List<Trip> trips,
        List<GuestVisit> guests,
        NavigableSet<Integer> handovers,
        PriceLine prices) {

    /** A trip of the route, what it needs, and what the plan gives it (nothing at all when the plan forgot it). */
    record Trip(TripPlan plan, TripRoute route, Crew crew, List<Needs> needs) {
        String name() {
            return crew.id() + " trip " + route.trip();
        }
    }

    SeasonDay first() {
        return occurrences.get(0);
    }
}
