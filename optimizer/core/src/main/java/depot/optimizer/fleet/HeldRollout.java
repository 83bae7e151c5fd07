package depot.optimizer.fleet;

import depot.optimizer.model.Tightening;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.PackStock;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.DepotRollout;
import depot.optimizer.replay.DepotReplay;
import depot.optimizer.replay.FleetReplay;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.solve.HeldPurchases;
import depot.optimizer.solve.MeasuredPlan;
import depot.optimizer.solve.RepricedPlan;
import depot.optimizer.solve.VisitUse;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Plans the days of a depot in all phases with what earlier plans bought in each, and replays them: {@link HeldPlanner} for several phases. What is
 * bought when, who works from where and what is moved stays; how many packs wear out follows from the days. Visits are for as many packs as is settled.
 */
public final class HeldRollout {

    private final Scenario scenario;
    private final DepotRollout rollout;
    private final List<DepotPlan> bought;
    private final List<Map<String, Integer>> visits;

    private HeldRollout(
            Scenario scenario, DepotRollout rollout, List<DepotPlan> bought, List<Map<String, Integer>> visits) {
        this.scenario = scenario;
        this.rollout = rollout;
        this.bought = bought;
        this.visits = visits;
    }

    /**
     * The plans, phase by phase. They have costs and no bound.
     *
     * @param bought plans of the depot for all phases, made for this or another scenario
     * @param visits in each phase, packs that the depot's crews may count on elsewhere and that it has to charge for guests, by
     *     {@link depot.optimizer.problem.Visit.Service#key()}; none where it has no entry
     * @throws depot.optimizer.solve.NoPlanException when a day has no plan within the limits
     */
    public static List<DepotPlan> replan(
            Scenario scenario, DepotRollout rollout, List<DepotPlan> bought, List<Map<String, Integer>> visits) {
        return new HeldRollout(scenario, rollout, bought, visits).plans();
    }

    private List<DepotPlan> plans() {
        List<DepotPlan> plans = new ArrayList<>();
        for (int f = 0; f < bought.size(); f++) {
            plans.add(phase(f, List.copyOf(plans)));
        }
        return List.copyOf(plans);
    }

    private DepotPlan phase(int f, List<DepotPlan> earlier) {
        DepotProblem problem = rollout.phases().get(f);
        HeldPurchases held = new HeldPurchases(problem, bought.get(f), visits.get(f));
        List<Tightening> tightenings =
                new ArrayList<>(Collections.nCopies(problem.days().size(), Tightening.NONE));
        for (int tightened = 0; ; tightened++) {
            DepotPlan plan = priced(f, withDays(bought.get(f), held.plan(List.copyOf(tightenings))), earlier);
            DepotReplay replay = replay(plan, earlier);
            if (replay.failedDays().stream().noneMatch(LateDays::curable)
                    || tightened == ProvenDepot.MOST_TIGHTENINGS) {
                return better(f, measured(f, plan, replay, earlier), earlier);
            }
            LateDays.tighten(tightenings, 0, problem, plan, replay);
        }
    }

    /** The days of one plan with what another one buys. */
    private static DepotPlan withDays(DepotPlan bought, DepotPlan days) {
        List<PackStock> packs = bought.packs().stream()
                .map(stock -> new PackStock(
                        stock.pool(),
                        stock.packType(),
                        stock.count(),
                        stock.owned(),
                        days.packs().stream()
                                .filter(other -> other.pool().equals(stock.pool())
                                        && other.packType().equals(stock.packType()))
                                .mapToDouble(PackStock::replacedPerYear)
                                .sum()))
                .toList();
        return new DepotPlan(
                bought.depot(),
                bought.phase(),
                days.stop(),
                bought.guests(),
                bought.away(),
                bought.onPetrol(),
                bought.supplyUpgraded(),
                bought.circuitsBuilt(),
                bought.units(),
                bought.chargers(),
                bought.banks(),
                packs,
                bought.kits(),
                bought.moves(),
                days.days(),
                List.of());
    }

    private DepotPlan priced(int f, DepotPlan plan, List<DepotPlan> earlier) {
        return MeasuredPlan.of(rollout.phases().get(f), f + 1, plan, before(earlier), Map.of());
    }

    private static Optional<DepotPlan> before(List<DepotPlan> earlier) {
        return earlier.isEmpty() ? Optional.empty() : Optional.of(earlier.get(earlier.size() - 1));
    }

    private DepotReplay replay(DepotPlan plan, List<DepotPlan> earlier) {
        List<DepotPlan> all = new ArrayList<>(earlier);
        all.add(plan);
        return FleetReplay.runPhases(scenario, all).get(earlier.size());
    }

    /** With the energy that the replay measured behind units. */
    private DepotPlan measured(int f, DepotPlan plan, DepotReplay replay, List<DepotPlan> earlier) {
        if (plan.units().isEmpty() || !replay.proven()) {
            return plan;
        }
        return MeasuredPlan.of(
                rollout.phases().get(f), f + 1, plan, before(earlier), ProvenDepot.measuredEnergy(plan, replay));
    }

    /** The days that came with the purchases, where they still fit and are better than those found: a day's search stops within a gap. */
    private DepotPlan better(int f, DepotPlan found, List<DepotPlan> earlier) {
        if (!VisitUse.keeps(rollout.phases().get(f), bought.get(f), visits.get(f))) {
            return found;
        }
        DepotPlan asBought = RepricedPlan.of(rollout.phases().get(f), f + 1, bought.get(f), before(earlier));
        if (asBought.stop().certificate().cost() >= found.stop().certificate().cost()) {
            return found;
        }
        DepotReplay replay = replay(asBought, earlier);
        return replay.proven() && HeldPlanner.shortWh(replay) <= HeldPlanner.shortWh(replay(found, earlier))
                ? asBought
                : found;
    }
}
