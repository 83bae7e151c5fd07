package depot.optimizer.rerun;

import depot.optimizer.plan.CostLine;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.ExplainedShortage;
import depot.optimizer.plan.FleetCost;
import depot.optimizer.plan.Plan;
import depot.optimizer.problem.DepotRollout;
import depot.optimizer.replay.ReplayReport;
import depot.optimizer.rerun.DepotChange.Status;
import depot.optimizer.scenario.Circuit;
import depot.optimizer.scenario.Coupling;
import depot.optimizer.scenario.Depot;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.solve.ShortageCure;
import depot.optimizer.sweep.FleetAssembly;
import depot.optimizer.sweep.change.Couplings;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** What a rerun of a fleet that shares limits, or has several phases, does to each of its depots. */
final class SharedDepotChanges {

    private final EarlierRun earlier;
    private final Scenario asked;
    private final Standing unlisted;
    private final Scenario there;
    private final double routineWeight;
    private final Holdings holdings;
    private final SharedComparison comparison;
    private final Map<String, RoutineTrade> trades = new HashMap<>();

    /**
     * @param asked the changed tables
     * @param unlisted what runs before the earlier one left and the tables do not list
     * @param there the tables with all that is there
     */
    SharedDepotChanges(EarlierRun earlier, Scenario asked, Standing unlisted, Scenario there, double routineWeight) {
        this.earlier = earlier;
        this.asked = asked;
        this.unlisted = unlisted;
        this.there = there;
        this.routineWeight = routineWeight;
        holdings = Holdings.after(earlier, asked, unlisted);
        comparison =
                new SharedComparison(earlier, StandingTables.of(asked, unlisted).withSolve(there.solve()));
    }

    /** Whether quantity prices and phases are as they were, so that prices of an earlier certificate still say what they take off. */
    boolean sameTiers() {
        return comparison.sameTiers();
    }

    /** Depots whose own part of the tables is as it was, with what is left to do of their plans. */
    Map<String, List<DepotPlan>> untouched(FleetAssembly assembly) {
        Map<String, List<DepotPlan>> plans = new LinkedHashMap<>();
        for (Depot depot : there.depots()) {
            List<String> reasons = new ArrayList<>(comparison.reasons(depot.id()));
            reasons.remove(SharedComparison.LIMITS);
            if (reasons.isEmpty()) {
                plans.put(depot.id(), CarriedOut.of(earlier, assembly.rollout(depot.id())));
            }
        }
        return plans;
    }

    /** The plan with chargers named as before, and with the routine kept where that is asked for and worth it. */
    Plan placed(Plan found) {
        FleetAssembly assembly = new FleetAssembly(there);
        Map<String, List<DepotPlan>> plans = new LinkedHashMap<>();
        Map<String, List<DepotPlan>> untouched = untouched(assembly);
        Map<String, DepotPlan> changed = new LinkedHashMap<>();
        double before = found.certificate().cost();
        FleetAssembly.byDepot(found).forEach((depot, phases) -> {
            if (untouched.containsKey(depot) && same(untouched.get(depot), phases)) {
                plans.put(depot, phases);
                return;
            }
            List<DepotPlan> placed = new ArrayList<>();
            Optional<DepotPlan> model = earlier.depot(depot);
            for (DepotPlan phase : phases) {
                DepotPlan named =
                        model.map(like -> PlaceKeeper.keep(phase, like)).orElse(phase);
                placed.add(named);
                model = Optional.of(named);
            }
            plans.put(depot, placed);
            earlier.depot(depot).filter(then -> routineWeight > 0).ifPresent(then -> changed.put(depot, then));
        });
        if (!changed.isEmpty()) {
            new VisitRoutine(there, routineWeight, assembly, changed)
                    .keep(found, plans)
                    .forEach((depot, kept) -> {
                        trades.put(depot, kept.trade());
                        plans.get(depot).set(0, kept.plan());
                    });
        }
        List<DepotPlan> inOrder = found.depots().stream()
                .map(plan -> plans.get(plan.depot()).get(found.phases().indexOf(plan.phase())))
                .toList();
        Plan placed = trades.isEmpty()
                ? found
                : assembly.plan(found, plans, found.certificate().bound());
        return new Plan(
                found.formatVersion(),
                found.scenario(),
                found.currency(),
                found.inputHashes(),
                found.solver(),
                found.settings(),
                trades.isEmpty() || placed.certificate().cost() == before ? found.certificate() : placed.certificate(),
                found.fleetCosts(),
                found.proof(),
                trades.isEmpty() ? inOrder : placed.depots());
    }

    /** Everything together. */
    RerunResult result(Plan plan, ReplayReport replay, boolean kept) {
        Scenario carried = Couplings.of(
                StandingTables.of(asked, holdings.standing(Begun.of(earlier, asked, unlisted))),
                asked.coupling(),
                asked.horizonYears());
        Scenario then = before();
        FleetAssembly old = new FleetAssembly(then);
        Map<String, List<DepotPlan>> left = new LinkedHashMap<>();
        for (Depot depot : earlier.scenario().depots()) {
            if (earlier.depot(depot.id()).isPresent()) {
                left.put(depot.id(), CarriedOut.of(earlier, old.rollout(depot.id())));
            }
        }
        Map<String, List<DepotPlan>> now = FleetAssembly.byDepot(plan);
        List<DepotChange> changes = new ArrayList<>();
        for (Depot depot : there.depots()) {
            List<DepotPlan> phases =
                    kept ? CarriedOut.of(earlier, new FleetAssembly(carried).rollout(depot.id())) : now.get(depot.id());
            changes.add(change(depot.id(), Optional.ofNullable(left.get(depot.id())), phases));
        }
        left.forEach((depot, phases) -> {
            if (!now.containsKey(depot)) {
                changes.add(gone(depot, phases));
            }
        });
        double fleetBefore = fleetCost(old.plan(plan, left, 0).fleetCosts());
        return new RerunResult(
                earlier,
                there,
                plan,
                replay,
                shortages(now),
                List.copyOf(changes),
                Optional.of(new SharedChanges(
                        kept ? unlisted : holdings.standing(Begun.of(earlier, asked, unlisted)),
                        kept ? List.of() : FleetChanges.between(then, left, there, now),
                        fleetBefore,
                        kept ? fleetBefore : fleetCost(plan.fleetCosts()),
                        kept)));
    }

    /** The earlier tables with the phases and the horizon of today, and with what is there. */
    private Scenario before() {
        Scenario then = earlier.scenario();
        Standing bought = Holdings.after(earlier, then, Standing.NONE).standing(new TreeMap<>());
        Scenario owning = StandingTables.of(then, bought);
        return Couplings.of(
                owning,
                new Coupling(
                        asked.coupling().phases(),
                        List.of(),
                        then.coupling().conversions(),
                        then.coupling().priceTiers(),
                        List.of(),
                        List.of()),
                asked.horizonYears());
    }

    private static double fleetCost(List<FleetCost> costs) {
        return costs.stream().mapToDouble(FleetCost::presentCost).sum();
    }

    private static double cost(List<DepotPlan> plans) {
        return plans.stream()
                .flatMap(plan -> plan.costs().stream())
                .mapToDouble(CostLine::presentCost)
                .sum();
    }

    private DepotChange change(String depot, Optional<List<DepotPlan>> before, List<DepotPlan> after) {
        Status status = before.map(plans -> same(plans, after) ? Status.KEPT : Status.PLANNED_AGAIN)
                .orElse(Status.NEW);
        List<String> own = comparison.reasons(depot);
        List<String> reasons = own.isEmpty() ? List.of(SharedComparison.LIMITS) : own;
        return new DepotChange(
                depot,
                status,
                status == Status.KEPT ? List.of() : reasons,
                earlier.depot(depot),
                Optional.of(inUse(after.get(0))),
                holdings.held(depot),
                built(depot),
                holdings.suppliesUpgraded().contains(depot),
                Store.idle(depot, holdings.bought(depot), holdings.held(depot), after),
                before.map(SharedDepotChanges::cost).orElse(0.0),
                cost(after),
                Optional.ofNullable(trades.get(depot)));
    }

    private DepotChange gone(String depot, List<DepotPlan> before) {
        return new DepotChange(
                depot,
                Status.GONE,
                List.of("depot"),
                earlier.depot(depot),
                Optional.empty(),
                holdings.held(depot),
                List.of(),
                false,
                Store.idle(depot, holdings.bought(depot), holdings.held(depot), List.of()),
                cost(before),
                0,
                Optional.empty());
    }

    /** With what was built before, as it stands. */
    private DepotPlan inUse(DepotPlan plan) {
        PlanParts parts = new PlanParts(plan);
        List<String> circuits = new ArrayList<>(plan.circuitsBuilt());
        built(plan.depot()).stream()
                .filter(circuit -> !circuits.contains(circuit))
                .forEach(circuits::add);
        parts.circuitsBuilt = circuits;
        parts.supplyUpgraded =
                plan.supplyUpgraded() || holdings.suppliesUpgraded().contains(plan.depot());
        return parts.plan();
    }

    private List<String> built(String depot) {
        return asked.circuits().stream()
                .filter(circuit -> circuit.depot().equals(depot))
                .map(Circuit::id)
                .filter(holdings.circuitsBuilt()::contains)
                .toList();
    }

    /** Whether plans do the same with the same equipment, whatever it costs and however it was found. */
    private static boolean same(List<DepotPlan> one, List<DepotPlan> other) {
        return one.stream()
                .map(SharedDepotChanges::bare)
                .toList()
                .equals(other.stream().map(SharedDepotChanges::bare).toList());
    }

    private static List<Object> bare(DepotPlan plan) {
        return List.of(
                plan.guests(),
                plan.away(),
                plan.onPetrol(),
                plan.units(),
                plan.chargers(),
                plan.banks(),
                plan.packs(),
                plan.kits(),
                plan.days());
    }

    private List<ExplainedShortage> shortages(Map<String, List<DepotPlan>> plans) {
        FleetAssembly assembly = new FleetAssembly(there);
        List<ExplainedShortage> all = new ArrayList<>();
        plans.forEach((depot, phases) -> {
            DepotRollout rollout = assembly.rollout(depot);
            for (int f = 0; f < phases.size(); f++) {
                all.addAll(ShortageCure.explain(rollout.phases().get(f), phases.get(f)));
            }
        });
        return List.copyOf(all);
    }
}
