package depot.optimizer.rerun;

import depot.optimizer.fleet.FleetPlanner;
import depot.optimizer.fleet.FleetPlanner.Method;
import depot.optimizer.fleet.NothingFitsException;
import depot.optimizer.fleet.ProgressListener;
import depot.optimizer.mip.Engine;
import depot.optimizer.plan.BoundProof;
import depot.optimizer.plan.Certificate;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.Plan;
import depot.optimizer.plan.PlanSettings;
import depot.optimizer.replay.FleetReplay;
import depot.optimizer.replay.ReplayReport;
import depot.optimizer.scenario.Depot;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.scenario.SolveSettings;
import depot.optimizer.sweep.FleetAssembly;
import depot.optimizer.sweep.change.SomeDepots;
import depot.optimizer.sweep.spec.Sharing;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Plans a fleet again whose depots share limits, or that has several phases. What earlier runs bought is owned; the plan pays for the rest.
 *
 * <p>Where nothing is shared, only depots that a change touches are planned. Where limits are, a change in one depot may be of use to all: the whole
 * fleet is planned for its bound and its plan. The plan nearest to the earlier one ({@link NearPlan}) is taken all the same where it costs no more, or
 * is within the gap asked for.
 */
public final class SharedRerun {

    /** Energy below this is rounding, over a year. */
    private static final double ROUNDING_WH = 10;

    private final EarlierRun earlier;
    private final Scenario asked;
    private final Standing unlisted;
    private final boolean unchanged;

    /** Of a changed scenario, from a run. */
    public SharedRerun(EarlierRun earlier, Scenario scenario) {
        this.earlier = earlier;
        asked = scenario;
        unlisted = earlier.standing().unlisted(scenario, earlier.scenario());
        unchanged = earlier.phasesCarriedOut().size() == 1 && new SharedComparison(earlier, tables(unlisted)).same();
    }

    /** Whether a scenario and a run are of this kind. */
    public static boolean concerns(EarlierRun earlier, Scenario scenario) {
        return earlier.standing().given() || Sharing.joined(scenario) || Sharing.joined(earlier.scenario());
    }

    /** Whether nothing has changed that a plan depends on, so that the earlier plan stays as it is. */
    public boolean unchanged() {
        return unchanged;
    }

    /** The tables that the run is planned for: those asked for, with what is there. */
    public Scenario tables() {
        return tables(standing());
    }

    private Scenario tables(Standing standing) {
        return StandingTables.of(asked, standing);
    }

    /** What is there beside what the tables asked for list. */
    public Standing standing() {
        return unchanged
                ? unlisted
                : Holdings.after(earlier, asked, unlisted).standing(Begun.of(earlier, asked, unlisted));
    }

    /**
     * Plans again.
     *
     * @param there {@link #tables()}, to be solved with the settings asked for
     * @param inputHashes of these tables; goes into the plan as it is
     * @param routineWeight as in {@link RerunPlanner#plan}, for the first phase
     * @throws depot.optimizer.solve.NoPlanException when a depot has no plan within the limits
     * @throws depot.optimizer.fleet.NothingFitsException when no plan keeps what the depots share
     */
    public RerunResult plan(
            Scenario there,
            SortedMap<String, String> inputHashes,
            double routineWeight,
            Method method,
            ProgressListener progress) {
        SharedDepotChanges changes = new SharedDepotChanges(earlier, asked, unlisted, there, routineWeight);
        if (unchanged) {
            Plan same = hashed(earlier.plan(), inputHashes);
            return changes.result(same, FleetReplay.run(there, same), true);
        }
        Plan found = found(there, inputHashes, method, progress, changes);
        Plan placed = changes.placed(found);
        return changes.result(placed, FleetReplay.run(there, placed), false);
    }

    private Plan found(
            Scenario there,
            SortedMap<String, String> inputHashes,
            Method method,
            ProgressListener progress,
            SharedDepotChanges changes) {
        FleetAssembly assembly = new FleetAssembly(there);
        Map<String, List<DepotPlan>> kept = changes.untouched(assembly);
        boolean alone = assembly.limits().isEmpty();
        List<String> touched =
                new ArrayList<>(there.depots().stream().map(Depot::id).toList());
        touched.removeAll(kept.keySet());
        Plan like = empty(there, inputHashes);
        if (alone && method == Method.APART) {
            Map<String, List<DepotPlan>> plans = new LinkedHashMap<>(kept);
            if (!touched.isEmpty()) {
                Scenario some = SomeDepots.of(there, new TreeSet<>(touched));
                plans.putAll(FleetAssembly.byDepot(
                        new FleetPlanner(progress).plan(some, inputHashes).plan()));
            }
            return assembly.plan(like, plans, bound(plans, kept));
        }
        try {
            Plan whole =
                    new FleetPlanner(progress).plan(there, inputHashes, method).plan();
            return NearPlan.of(there, assembly, kept, whole, whole.certificate().bound())
                    .filter(near -> good(there, near, whole))
                    .map(near -> withProof(near, whole.proof()))
                    .orElse(whole);
        } catch (NothingFitsException none) {
            // The search by prices may miss plans, above all where few pieces are left to buy.
            return near(there, assembly, kept, like, changes).orElseThrow(() -> none);
        }
    }

    /** The plan nearest to the earlier one, with the bound at the prices of its certificate where these still hold. */
    private Optional<Plan> near(
            Scenario there,
            FleetAssembly assembly,
            Map<String, List<DepotPlan>> kept,
            Plan like,
            SharedDepotChanges changes) {
        Optional<Plan> near =
                NearPlan.of(there, assembly, kept, like, 0).filter(plan -> serves(there, FleetReplay.run(there, plan)));
        Optional<BoundProof> proof = near.filter(plan -> changes.sameTiers())
                .flatMap(plan ->
                        EarlierPrices.proof(there, assembly, earlier.plan().proof()));
        return near.map(plan -> proof.map(
                        found -> withProof(assembly.plan(plan, FleetAssembly.byDepot(plan), found.bound()), found))
                .orElse(plan));
    }

    /** Where shortage is forbidden, energy that is not covered is no plan to go on with. */
    private static boolean serves(Scenario there, ReplayReport replay) {
        return replay.proven() && (there.shortageCostPerKwh().isPresent() || shortWh(replay) < ROUNDING_WH);
    }

    /**
     * Bounds of depots that share nothing add up. What a plan left open it leaves open when a part of it has been carried out: whatever another plan
     * saves by using what is there, this one saves as well.
     */
    private double bound(Map<String, List<DepotPlan>> plans, Map<String, List<DepotPlan>> kept) {
        double bound = 0;
        for (Map.Entry<String, List<DepotPlan>> depot : plans.entrySet()) {
            for (DepotPlan plan : depot.getValue()) {
                bound += kept.containsKey(depot.getKey())
                        ? plan.stop().certificate().cost()
                        : plan.stop().certificate().bound();
            }
        }
        for (DepotPlan plan : earlier.plan().depots()) {
            Certificate then = plan.stop().certificate();
            bound -= kept.containsKey(plan.depot()) ? then.cost() - then.bound() : 0;
        }
        return bound;
    }

    private static boolean good(Scenario there, Plan near, Plan whole) {
        double cost = near.certificate().cost();
        double open = (cost - whole.certificate().bound()) / Math.abs(cost);
        boolean cheap =
                cost <= whole.certificate().cost() || open <= there.solve().relativeGap();
        if (!cheap) {
            return false;
        }
        ReplayReport replay = FleetReplay.run(there, near);
        return replay.proven() && shortWh(replay) <= shortWh(FleetReplay.run(there, whole));
    }

    private static double shortWh(ReplayReport replay) {
        return replay.depots().stream()
                .flatMap(depot -> depot.days().stream())
                .mapToDouble(day -> day.shortWh() * day.daysPerYear())
                .sum();
    }

    private static Plan withProof(Plan near, BoundProof proof) {
        return new Plan(
                near.formatVersion(),
                near.scenario(),
                near.currency(),
                near.inputHashes(),
                near.solver(),
                near.settings(),
                near.certificate(),
                near.fleetCosts(),
                proof,
                near.depots());
    }

    private static Plan hashed(Plan plan, SortedMap<String, String> inputHashes) {
        return new Plan(
                plan.formatVersion(),
                plan.scenario(),
                plan.currency(),
                inputHashes,
                plan.solver(),
                plan.settings(),
                plan.certificate(),
                plan.fleetCosts(),
                plan.proof(),
                plan.depots());
    }

    private static Plan empty(Scenario scenario, SortedMap<String, String> inputHashes) {
        SolveSettings solve = scenario.solve();
        return new Plan(
                Plan.FORMAT_VERSION,
                scenario.name(),
                scenario.currency().getCurrencyCode(),
                new TreeMap<>(inputHashes),
                Engine.libraryVersion(),
                new PlanSettings(
                        solve.relativeGap(), solve.nodeLimit(), solve.threads(), solve.seed(), solve.handoverMinutes()),
                Certificate.of(0, 0, solve.relativeGap()),
                List.of());
    }
}
