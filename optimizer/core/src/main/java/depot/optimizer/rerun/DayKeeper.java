package depot.optimizer.rerun;

import depot.optimizer.plan.ChargerLoad;
import depot.optimizer.plan.ChargerPlacement;
import depot.optimizer.plan.DayPlan;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.PackStock;
import depot.optimizer.plan.TripPlan;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.replay.DayReplay;
import depot.optimizer.replay.DepotReplay;
import depot.optimizer.replay.FleetReplay;
import depot.optimizer.rerun.RoutineChange.What;
import depot.optimizer.scenario.PackType;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.solve.RepricedPlan;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Puts days of an earlier plan into a new one where they are worth it: where the energy that they cost more is less than what the lines that they save
 * are weighed with. A day stays only if the replay lets it pass.
 */
final class DayKeeper {

    private final Scenario scenario;
    private final DepotProblem problem;
    private final DepotPlan earlier;
    /** Present cost of one changed line of the routine. */
    private final double perLine;

    private final Fit fit;

    /** Which days may be put into a plan. */
    interface Fit {
        /** Whether an old day may take the place of one of the plan's. */
        boolean fits(DepotPlan plan, DayPlan day, DayPlan then);
    }

    /**
     * @param scenario with the depot in it
     */
    DayKeeper(Scenario scenario, DepotProblem problem, DepotPlan earlier, double perLine, Fit fit) {
        this.scenario = scenario;
        this.problem = problem;
        this.earlier = earlier;
        this.perLine = perLine;
        this.fit = fit;
    }

    /** The plan with those days; the plan itself where none of them passes. */
    DepotPlan keep(DepotPlan plan) {
        Map<Integer, DayPlan> kept = new TreeMap<>();
        for (int d = 0; d < plan.days().size(); d++) {
            DayPlan day = plan.days().get(d);
            int index = d;
            old(day).map(then -> on(day, then))
                    .filter(then -> !then.equals(day) && worth(plan, day, then))
                    .ifPresent(then -> kept.put(index, then));
        }
        while (!kept.isEmpty()) {
            DepotPlan tried = with(plan, kept);
            DepotReplay replay = FleetReplay.runDepot(scenario, tried);
            if (replay.proven()) {
                return tried;
            }
            Set<Integer> failed =
                    replay.failedDays().stream().map(DayReplay::day).collect(Collectors.toCollection(TreeSet::new));
            if (!kept.keySet().removeAll(failed)) {
                return plan;
            }
        }
        return plan;
    }

    /** The earlier plan's day for the same season days. */
    private Optional<DayPlan> old(DayPlan day) {
        return earlier.days().stream()
                .filter(then -> then.occurrences().containsAll(day.occurrences()))
                .filter(then -> then.startMinute() == day.startMinute())
                .findFirst();
    }

    /** What the earlier day did, on the days that the new one stands for. */
    private static DayPlan on(DayPlan day, DayPlan then) {
        return new DayPlan(
                day.occurrences(),
                day.daysPerYear(),
                day.startMinute(),
                then.trips(),
                then.loads(),
                then.feeds(),
                then.energy(),
                then.demandKw());
    }

    private boolean worth(DepotPlan plan, DayPlan day, DayPlan then) {
        Set<String> chargers =
                plan.chargers().stream().map(ChargerPlacement::id).collect(Collectors.toSet());
        boolean possible = then.loads().stream().map(ChargerLoad::charger).allMatch(chargers::contains)
                && trips(then).equals(trips(day))
                && fit.fits(plan, day, then)
                && shortWh(then) <= shortWh(day);
        if (!possible) {
            return false;
        }
        double more = (energyCost(then) - energyCost(day))
                * day.daysPerYear()
                * problem.money().electricityAnnuity();
        List<RoutineChange> saved = Routine.changes(
                Optional.of(plan.with(List.of(then), List.of())), Optional.of(plan.with(List.of(day), List.of())));
        return more < perLine * (Routine.count(saved, What.LOAD) + Routine.count(saved, What.KIT));
    }

    private static List<String> trips(DayPlan day) {
        return day.trips().stream()
                .map(trip -> "%s/%d/%d/%d".formatted(trip.crew(), trip.trip(), trip.leaveMinute(), trip.returnMinute()))
                .sorted()
                .toList();
    }

    private static double shortWh(DayPlan day) {
        return day.trips().stream()
                .flatMap(trip -> trip.shortages().stream())
                .mapToDouble(TripPlan.Shortage::wattHours)
                .sum();
    }

    private static double energyCost(DayPlan day) {
        return day.energy().stream()
                .mapToDouble(use -> use.kwh() * use.pricePerKwh().doubleValue())
                .sum();
    }

    private DepotPlan with(DepotPlan plan, Map<Integer, DayPlan> kept) {
        List<DayPlan> days = new ArrayList<>(plan.days());
        kept.forEach(days::set);
        PlanParts parts = new PlanParts(plan.with(days, List.of()));
        parts.packs =
                plan.packs().stream().map(stock -> worn(plan, days, stock)).toList();
        return RepricedPlan.of(problem, parts.plan());
    }

    /** Packs wear by age and by use, whichever is faster, over all pools of a type. */
    private PackStock worn(DepotPlan plan, List<DayPlan> days, PackStock stock) {
        PackType type = problem.packTypes().stream()
                .filter(each -> each.id().equals(stock.packType()))
                .findFirst()
                .orElseThrow();
        int all = plan.packs().stream()
                .filter(other -> other.packType().equals(type.id()))
                .mapToInt(PackStock::count)
                .sum();
        double loads = days.stream()
                .mapToDouble(day -> day.daysPerYear() * loads(day, type.id()))
                .sum();
        double replaced = Math.max(all / type.calendarYears(), loads / type.cycleLife());
        return new PackStock(
                stock.pool(), stock.packType(), stock.count(), stock.owned(), replaced * stock.count() / all);
    }

    private static double loads(DayPlan day, String packType) {
        int atDepot = day.loads().stream()
                .flatMap(load -> load.packs().stream())
                .filter(loaded -> loaded.packType().equals(packType))
                .mapToInt(ChargerLoad.Loaded::count)
                .sum();
        int onTheWay = day.trips().stream()
                .flatMap(trip -> trip.roadCharges().stream())
                .filter(charge -> charge.packType().equals(packType))
                .mapToInt(TripPlan.RoadCharge::packs)
                .sum();
        return atDepot + onTheWay;
    }
}
