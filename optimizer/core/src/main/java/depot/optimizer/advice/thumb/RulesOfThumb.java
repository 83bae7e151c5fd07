package depot.optimizer.advice.thumb;

import depot.optimizer.fleet.DepotResult;
import depot.optimizer.plan.Certificate;
import depot.optimizer.plan.ChargerLoad;
import depot.optimizer.plan.ChargerPlacement;
import depot.optimizer.plan.DayPlan;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.SolveStop;
import depot.optimizer.plan.TripPlan;
import depot.optimizer.problem.ChargerOption;
import depot.optimizer.problem.DayKind;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.DepotProblems;
import depot.optimizer.problem.DepotRollout;
import depot.optimizer.problem.Trip;
import depot.optimizer.replay.DayReplay;
import depot.optimizer.replay.DepotDays;
import depot.optimizer.replay.FleetReplay;
import depot.optimizer.scenario.Crew;
import depot.optimizer.scenario.Depot;
import depot.optimizer.scenario.Owned;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.solve.MeasuredPlan;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * Plans a depot by rules of thumb:
 *
 * <ol>
 *   <li>One type of pack for each family, the biggest ({@link FamilyChoice}).
 *   <li>Each crew gets packs of its own: hours over runtime, rounded up, and spare ones ({@link CrewPacks}).
 *   <li>Each pack gets a bay: in the quickest charger for crews that are back at lunch, in the one cheapest per bay for all others.
 *   <li>Chargers are plugged in until the breakers are full ({@link Plugging}).
 *   <li>Crews put packs in when they come back ({@link ChargerDay}).
 * </ol>
 *
 * <p>Of what is there already it uses what is of these types. All crews change to packs as soon as they may. Places, plugs, payload and the supply are not looked at:
 * whether the plan works is for its replay to say.
 */
public final class RulesOfThumb {

    private final Scenario scenario;
    private final DepotProblem problem;
    private final int phase;
    private final Optional<DepotPlan> before;
    private final ThumbSettings settings;
    private final Map<String, FamilyChoice> families = new LinkedHashMap<>();
    private final Map<String, Map<String, Integer>> packs = new LinkedHashMap<>();
    private final List<FamilyCharger> chargers = new ArrayList<>();

    private RulesOfThumb(
            Scenario scenario, DepotProblem problem, int phase, Optional<DepotPlan> before, ThumbSettings settings) {
        this.scenario = scenario;
        this.problem = problem;
        this.phase = phase;
        this.before = before;
        this.settings = settings;
    }

    /** The plan with its costs, and its replay. It has no bound. */
    public static DepotResult plan(Scenario scenario, Depot depot, ThumbSettings settings) {
        DepotProblem problem = new DepotProblems(scenario).of(depot);
        DepotPlan plan = new RulesOfThumb(scenario, problem, 1, Optional.empty(), settings).plan();
        return new DepotResult(plan, FleetReplay.runDepot(scenario, plan));
    }

    /**
     * The plans of all phases with their costs: each crew changes in the first phase in which it may, and works from its own depot. Nothing is moved, and
     * nobody uses another depot's bays.
     */
    public static List<DepotPlan> plans(Scenario scenario, DepotRollout rollout, ThumbSettings settings) {
        List<DepotPlan> plans = new ArrayList<>();
        List<Owned> bought = new ArrayList<>();
        for (int f = 0; f < rollout.phases().size(); f++) {
            DepotProblem problem = rollout.phases().get(f).withMoreOwned(bought);
            Optional<DepotPlan> before = f == 0 ? Optional.empty() : Optional.of(plans.get(f - 1));
            DepotPlan plan = new RulesOfThumb(scenario, problem, f + 1, before, settings).plan();
            plans.add(plan);
            plan.packs().forEach(stock -> {
                Optional<String> owner =
                        stock.pool().equals(plan.depot()) ? Optional.empty() : Optional.of(stock.pool());
                bought.add(new Owned(
                        plan.depot(), Optional.empty(), owner, stock.packType(), stock.count() - stock.owned()));
            });
            plan.chargers().stream()
                    .filter(charger -> !charger.owned())
                    .forEach(charger -> bought.add(
                            new Owned(plan.depot(), Optional.empty(), Optional.empty(), charger.chargerType(), 1)));
        }
        return List.copyOf(plans);
    }

    private List<Crew> crews() {
        return problem.crews().stream()
                .filter(crew -> !problem.guest(crew.id()))
                .toList();
    }

    private DepotPlan plan() {
        problem.days().stream()
                .flatMap(day -> day.trips().stream())
                .flatMap(trip -> trip.needs().stream())
                .map(Trip.FamilyNeed::family)
                .collect(Collectors.toCollection(TreeSet::new))
                .forEach(family -> FamilyChoice.of(problem, family).ifPresent(choice -> families.put(family, choice)));
        CrewPacks crewPacks = new CrewPacks(scenario, problem, settings, families);
        crews().forEach(crew -> packs.put(crew.id(), crewPacks.of(crew)));
        Plugging plugging = new Plugging(problem, settings.breaker());
        families.forEach((family, choice) -> {
            int atLunch = packs(family, crewPacks::backAtLunch);
            int others = packs(family, crew -> !crewPacks.backAtLunch(crew));
            buy(plugging, family, choice.lunch(), atLunch);
            buy(plugging, family, choice.night(), others);
        });
        return priced(plan(
                plugging.circuitsBuilt(), problem.days().stream().map(this::day).toList()));
    }

    private int packs(String family, Predicate<Crew> which) {
        return crews().stream()
                .filter(which)
                .mapToInt(crew -> packs.get(crew.id()).getOrDefault(family, 0))
                .sum();
    }

    /** A bay for each pack. */
    private void buy(Plugging plugging, String family, Optional<ChargerOption> choice, int bays) {
        choice.ifPresent(option -> {
            for (int left = bays; left > 0; left -= option.type().bays()) {
                Optional<ChargerPlacement> placed = plugging.plugIn(option.type());
                placed.ifPresent(charger -> chargers.add(new FamilyCharger(charger, option, family)));
            }
        });
    }

    private DayPlan day(DayKind kind) {
        ChargerDay day = new ChargerDay(chargers, problem.endMinute());
        List<TripPlan> trips = new ArrayList<>();
        for (Crew crew : crews()) {
            trips.addAll(new CrewDay(problem, kind, crew, packs.get(crew.id()), families, day).trips());
        }
        trips.sort(Comparator.comparingInt(TripPlan::leaveMinute));
        List<ChargerLoad> loads = day.loads(List.copyOf(families.keySet()), List.copyOf(families.values()));
        return new DayPlan(
                kind.occurrences(),
                kind.daysPerYear(),
                problem.startMinute(),
                List.copyOf(trips),
                loads,
                List.of(),
                LoadEnergy.of(kind, chargers, loads),
                0);
    }

    private DepotPlan plan(List<String> circuitsBuilt, List<DayPlan> days) {
        return new DepotPlan(
                problem.depot().id(),
                problem.phase(),
                new SolveStop(
                        "rules of thumb",
                        Certificate.of(0, 0, problem.settings().relativeGap()),
                        0,
                        0,
                        days.size(),
                        0,
                        0,
                        0,
                        0),
                List.of(),
                List.of(),
                problem.petrolOnly().stream().map(Crew::id).toList(),
                false,
                circuitsBuilt,
                List.of(),
                chargers.stream().map(FamilyCharger::placement).toList(),
                List.of(),
                new ThumbStock(problem, packs, families).stocks(days),
                List.of(),
                List.of(),
                days,
                List.of());
    }

    /** With the demand that the replay measures, which is what will be billed, and with all costs. */
    private DepotPlan priced(DepotPlan draft) {
        Map<Integer, Double> demand = new TreeMap<>();
        for (DayReplay run : DepotDays.of(scenario, draft).orElseThrow().run(draft)) {
            demand.merge(run.day(), run.demandKw(), Math::max);
        }
        List<DayPlan> days = new ArrayList<>();
        for (int d = 0; d < draft.days().size(); d++) {
            days.add(billed(draft.days().get(d), demand.getOrDefault(d, 0.0)));
        }
        return MeasuredPlan.of(problem, phase, draft.with(days, List.of()), before, Map.of());
    }

    private DayPlan billed(DayPlan day, double demandKw) {
        return new DayPlan(
                day.occurrences(),
                day.daysPerYear(),
                day.startMinute(),
                day.trips(),
                day.loads(),
                day.feeds(),
                day.energy(),
                problem.tariff().billsDemand() ? demandKw : 0);
    }
}
