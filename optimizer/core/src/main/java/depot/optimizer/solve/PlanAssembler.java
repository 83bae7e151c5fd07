package depot.optimizer.solve;

import depot.optimizer.model.CapacityDecision;
import depot.optimizer.model.DayDecision;
import depot.optimizer.model.DayDecision.TripDecision;
import depot.optimizer.plan.ChargerLoad;
import depot.optimizer.plan.DayPlan;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.MovedPieces;
import depot.optimizer.plan.PackStock;
import depot.optimizer.plan.SolveStop;
import depot.optimizer.plan.TripPlan;
import depot.optimizer.plan.UnitFeed;
import depot.optimizer.plan.UnitPlacement;
import depot.optimizer.problem.DayKind;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.Slice;
import depot.optimizer.problem.Trip;
import depot.optimizer.scenario.Crew;
import depot.optimizer.scenario.PackType;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Makes a depot's plan from decisions: places, schedules, energy and cost. */
final class PlanAssembler {

    /** Below this a shortage is the solver's rounding, in Wh. */
    private static final double SHORTAGE_TOLERANCE_WH = 0.05;

    private final DepotProblem problem;
    private final CapacityDecision capacity;
    private final List<DayDecision> days;
    private final Placement placement;
    private final List<UnitPlacement> units;

    /**
     * @param days one decision for each kind of day
     */
    PlanAssembler(DepotProblem problem, CapacityDecision capacity, List<DayDecision> days) {
        this.problem = problem;
        this.capacity = capacity;
        this.days = days;
        placement = new Placement(problem, capacity);
        units = placement.units();
    }

    /** The plan of a single phase in which nothing is moved. */
    DepotPlan assemble(SolveStop stop) {
        return assemble(1, List.of(), Optional.empty(), stop);
    }

    /**
     * The plan of a phase.
     *
     * @param phase number of the phase, from 1
     * @param moves pieces that come or go when it begins
     * @param before plan of the phase before
     */
    DepotPlan assemble(int phase, List<MovedPieces> moves, Optional<DepotPlan> before, SolveStop stop) {
        List<DayPlan> dayPlans = new ArrayList<>();
        for (int d = 0; d < days.size(); d++) {
            dayPlans.add(day(problem.days().get(d), days.get(d)));
        }
        List<PackStock> packs = placement.packs(replacedPerYear());
        DepotPlan draft = new DepotPlan(
                problem.depot().id(),
                problem.phase(),
                stop,
                guests(),
                away(),
                onPetrol(),
                capacity.upgraded(),
                placement.circuitsBuilt(),
                units,
                placement.chargers(),
                placement.banks(),
                packs,
                placement.kits(),
                moves,
                List.copyOf(dayPlans),
                List.of());
        return draft.with(draft.days(), CostBook.of(problem, phase, draft, before));
    }

    private List<String> guests() {
        return problem.crews().stream()
                .map(Crew::id)
                .filter(crew -> problem.guest(crew) && withPacks(crew))
                .toList();
    }

    private List<String> away() {
        return problem.crews().stream()
                .map(Crew::id)
                .filter(crew -> problem.mustChange().contains(crew) && !withPacks(crew))
                .toList();
    }

    /** The depot's own crews without packs that may stay on petrol; whether one of them works from another depot is not known here. */
    private List<String> onPetrol() {
        return Stream.concat(problem.petrolOnly().stream(), problem.crews().stream())
                .map(Crew::id)
                .filter(crew -> !problem.guest(crew)
                        && !withPacks(crew)
                        && !problem.mustChange().contains(crew))
                .toList();
    }

    private boolean withPacks(String crew) {
        return IntStream.range(0, problem.crews().size())
                .anyMatch(w -> problem.crews().get(w).id().equals(crew)
                        && capacity.electric().get(w));
    }

    private List<Double> replacedPerYear() {
        List<Double> rates = new ArrayList<>();
        for (int p = 0; p < problem.packTypes().size(); p++) {
            int type = p;
            PackType pack = problem.packTypes().get(p);
            double cycles = 0;
            for (int d = 0; d < days.size(); d++) {
                cycles += days.get(d).cycles().get(p) * problem.days().get(d).daysPerYear();
            }
            int count =
                    capacity.packs().stream().mapToInt(pool -> pool.get(type)).sum();
            rates.add(Math.max(count / pack.calendarYears(), cycles / pack.cycleLife()));
        }
        return rates;
    }

    private DayPlan day(DayKind kind, DayDecision day) {
        List<ChargerLoad> loads = new DayScheduler(problem, placement.chargers()).schedule(day);
        return new DayPlan(
                kind.occurrences(),
                kind.daysPerYear(),
                problem.startMinute(),
                day.trips().stream()
                        .filter(trip -> withPacks(trip.trip().crew()))
                        .map(this::trip)
                        .toList(),
                loads,
                feeds(kind, day),
                new EnergyLedger(problem, kind, placement.chargers()).use(day, loads),
                day.demandKw());
    }

    private List<UnitFeed> feeds(DayKind kind, DayDecision day) {
        List<UnitFeed> feeds = new ArrayList<>();
        for (int k = 0; k < day.unitWh().size(); k++) {
            if (capacity.unit().get(k) >= 0) {
                for (int s = 0; s < kind.slices().size(); s++) {
                    Slice slice = kind.slices().get(s);
                    feeds.add(new UnitFeed(
                            problem.circuits().get(k).circuit().id(),
                            slice.fromMinute(),
                            slice.toMinute(),
                            day.unitWh().get(k).get(s)));
                }
            }
        }
        return List.copyOf(feeds);
    }

    private TripPlan trip(TripDecision decision) {
        Trip trip = decision.trip();
        List<TripPlan.Shortage> shortages = new ArrayList<>();
        for (int n = 0; n < trip.needs().size(); n++) {
            double wh = decision.shortWh().get(n);
            if (wh > SHORTAGE_TOLERANCE_WH) {
                shortages.add(new TripPlan.Shortage(trip.needs().get(n).family(), wh));
            }
        }
        return new TripPlan(
                trip.crew(),
                trip.number(),
                trip.leaveMinute(),
                trip.returnMinute(),
                decision.carried().stream()
                        .map(c -> new TripPlan.Carried(c.type().id(), c.full(), c.eighty()))
                        .toList(),
                decision.roads().stream()
                        .map(r -> new TripPlan.RoadCharge(
                                r.source(),
                                // On site and on a visit packs charge at the stop itself; its number names the place.
                                trip.stops()
                                        .get(r.source().atStop() ? r.emptiedBy() + 1 : r.emptiedBy())
                                        .stop(),
                                trip.stops().get(r.servesFrom()).stop(),
                                r.from(),
                                r.to(),
                                r.charger(),
                                r.fit().pack().id(),
                                r.packs()))
                        .toList(),
                List.copyOf(shortages));
    }
}
