package depot.optimizer.replay;

import depot.optimizer.plan.DayPlan;
import depot.optimizer.plan.SeasonDay;
import depot.optimizer.plan.TripPlan;
import depot.optimizer.replay.DayCase.Trip;
import depot.optimizer.scenario.BaseLoad;
import depot.optimizer.scenario.RouteStop;
import depot.optimizer.scenario.Season;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Sorts the season days of each planned day into groups that run alike, so that each group is run once. */
final class DayCases {
    private final DepotTables tables;
    private final Needs.Quantile quantile;
    private final Map<List<SeasonDay>, Map<Alike, List<SeasonDay>>> groups = new HashMap<>();

    /** What makes two season days run alike. */
    private record Alike(
            List<TripRoute> routes,
            List<GuestVisit> guests,
            double capacityFactor,
            List<BaseLoad> today,
            List<BaseLoad> tomorrow,
            PriceLine prices) {}

    DayCases(DepotTables tables) {
        this.tables = tables;
        this.quantile = new Needs.Quantile(
                tables.scenario().demandQuantile(), tables.scenario().demandSpread());
    }

    /** Season days that the scenario does not have are left out. */
    List<DayCase> of(int index, DayPlan plan) {
        List<DayCase> cases = new ArrayList<>();
        groups.computeIfAbsent(plan.occurrences(), this::grouped)
                .forEach((alike, days) -> cases.add(dayCase(index, plan, alike, days)));
        return cases;
    }

    private Map<Alike, List<SeasonDay>> grouped(List<SeasonDay> days) {
        Map<Alike, List<SeasonDay>> grouped = new LinkedHashMap<>();
        for (SeasonDay day : days) {
            if (tables.seasons().containsKey(day.season())) {
                grouped.computeIfAbsent(alike(day), key -> new ArrayList<>()).add(day);
            }
        }
        return grouped;
    }

    private Alike alike(SeasonDay day) {
        int start = tables.startMinute();
        return new Alike(
                tables.routes().on(day).stream().map(DayCases::anyDay).toList(),
                tables.guests().on(day),
                tables.seasons().get(day.season()).packCapacityFactor(),
                tables.baseLoads().touching(day.day(), start, BaseLoads.DAY),
                tables.baseLoads().touching(day.day().plus(1), 0, start),
                PriceLine.of(tables, day));
    }

    /** The route without the names of its season and days, which differ between days that run alike. */
    private static TripRoute anyDay(TripRoute route) {
        return new TripRoute(
                route.crew(),
                route.trip(),
                route.leaveMinute(),
                route.returnMinute(),
                route.stops().stream()
                        .map(s -> new RouteStop(
                                "",
                                Set.of(),
                                s.crew(),
                                s.stop(),
                                s.place(),
                                s.arriveMinute(),
                                s.leaveMinute(),
                                s.siteWatts()))
                        .toList(),
                route.work());
    }

    private DayCase dayCase(int index, DayPlan plan, Alike alike, List<SeasonDay> days) {
        List<Trip> trips = new ArrayList<>();
        for (TripRoute route : alike.routes()) {
            // A crew on petrol needs no packs, but it is there to move them when it leaves and returns.
            if (tables.onPetrol().contains(route.crew())) {
                continue;
            }
            TripPlan planned = plan.trips().stream()
                    .filter(t -> t.crew().equals(route.crew()) && t.trip() == route.trip())
                    .findFirst()
                    .orElseGet(() -> new TripPlan(
                            route.crew(),
                            route.trip(),
                            route.leaveMinute(),
                            route.returnMinute(),
                            List.of(),
                            List.of(),
                            List.of()));
            trips.add(new Trip(planned, route, tables.crews().get(route.crew()), Needs.of(route, quantile)));
        }
        Season season = tables.seasons().get(days.get(0).season());
        double perYear = days.stream()
                .mapToDouble(d -> tables.seasons().get(d.season()).weeksPerYear())
                .sum();
        return new DayCase(
                index,
                plan,
                List.copyOf(days),
                perYear,
                season,
                List.copyOf(trips),
                alike.guests(),
                Handovers.of(tables, alike.routes()),
                alike.prices());
    }
}
