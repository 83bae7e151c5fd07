package depot.optimizer.advice;

import depot.optimizer.advice.AdviceRun.Desk;
import depot.optimizer.advice.AdviceSettings.Part;
import depot.optimizer.advice.FleetAdvice.LimitUse;
import depot.optimizer.advice.FleetAdvice.Measure;
import depot.optimizer.advice.FleetAdvice.More;
import depot.optimizer.advice.thumb.RulesOfThumb;
import depot.optimizer.plan.BoundProof.PricedLimit;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.Plan;
import depot.optimizer.problem.SharedLimit;
import depot.optimizer.problem.SharedLimit.Kind;
import depot.optimizer.replay.FleetReplay;
import depot.optimizer.scenario.Depot;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.sweep.FleetAssembly;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Future;

/** Questions about a fleet whose depots share limits, or that has several phases. */
final class FleetQuestions {

    private final Scenario scenario;
    private final Plan plan;
    private final AdviceSettings settings;
    private final FleetAssembly assembly;
    private final Map<SharedLimit, Future<More>> more = new LinkedHashMap<>();

    FleetQuestions(Scenario scenario, Plan plan, AdviceSettings settings) {
        this.scenario = scenario;
        this.plan = plan;
        this.settings = settings;
        assembly = new FleetAssembly(scenario);
    }

    /** Hands in what belongs to a part and is about no single depot: what more of each limit is worth, where the plan has no prices that bound it. */
    void ask(Part part, Desk desk) {
        if (part == Part.WORTH && settings.asks(part) && FleetAnew.asks(scenario, plan)) {
            for (SharedLimit limit : amounts()) {
                more.put(limit, desk.submit("fleet, more of " + limit.name(), () -> worth(limit)));
            }
        }
    }

    private More worth(SharedLimit limit) {
        SharedRoom room = SharedRoom.more(scenario, limit);
        boolean forbidden = scenario.shortageCostPerKwh().isEmpty();
        return new More(room.step().doubleValue(), FleetAnew.worth(plan, room.scenario(), forbidden));
    }

    /** Limits that have an amount of money or pieces; those of moves, crews and visits have none that could be more. */
    private List<SharedLimit> amounts() {
        return assembly.limits().stream()
                .filter(limit -> limit.kind() == Kind.BUDGET
                        || limit.kind() == Kind.REGION_BUDGET
                        || limit.kind() == Kind.DELIVERY)
                .toList();
    }

    /** Those about one of its depots. */
    DepotQuestions questions(Depot depot, Desk desk) {
        return new DepotQuestions(
                new SharedResolver(scenario, plan, depot.id(), assembly), () -> byRulesOfThumb(depot), settings, desk);
    }

    private ReplayedPlan byRulesOfThumb(Depot depot) {
        List<DepotPlan> phases = RulesOfThumb.plans(scenario, assembly.rollout(depot.id()), settings.thumb());
        return new ReplayedPlan(phases, FleetReplay.runPhases(scenario, phases), Optional.empty(), List.of());
    }

    /**
     * What there is to say about the fleet.
     *
     * @param answers about its depots
     */
    FleetAdvice advice(List<DepotAdvice> answers) {
        Map<String, List<DepotPlan>> thumbs = new LinkedHashMap<>();
        answers.forEach(depot -> depot.thumb().ifPresent(found -> thumbs.put(depot.depot(), found.plans())));
        Optional<Plan> thumb = thumbs.isEmpty() ? Optional.empty() : Optional.of(withThumbs(thumbs));
        return new FleetAdvice(
                plan.certificate(),
                limits(),
                thumb,
                thumb.map(whole -> FleetReplay.runFleet(scenario, whole)).orElse(List.of()),
                settings.asks(Part.WORTH) && FleetAnew.asks(scenario, plan));
    }

    private Plan withThumbs(Map<String, List<DepotPlan>> thumbs) {
        Map<String, List<DepotPlan>> depots = new LinkedHashMap<>(FleetAssembly.byDepot(plan));
        depots.putAll(thumbs);
        return assembly.plan(plan, depots, 0);
    }

    private List<LimitUse> limits() {
        Map<SharedLimit, Double> used = assembly.use(FleetAssembly.byDepot(plan));
        List<LimitUse> limits = new ArrayList<>();
        for (SharedLimit limit : amounts()) {
            Optional<Double> price = plan.proof().limits().stream()
                    .filter(priced -> priced.limit().equals(limit.name()))
                    .map(PricedLimit::price)
                    .findFirst();
            limits.add(new LimitUse(
                    limit.name(),
                    limit.kind() == Kind.DELIVERY ? Measure.PIECES : Measure.MONEY,
                    limit.most(),
                    used.get(limit) + FleetAssembly.ofFleet(limit, plan.fleetCosts()),
                    price,
                    Optional.ofNullable(more.get(limit)).map(AdviceRun::await)));
        }
        return limits;
    }
}
