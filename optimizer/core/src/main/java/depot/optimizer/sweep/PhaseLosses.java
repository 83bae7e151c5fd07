package depot.optimizer.sweep;

import depot.optimizer.plan.Certificate;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.SolveStop;
import depot.optimizer.replay.FleetReplay;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.sweep.change.Ownership;
import depot.optimizer.sweep.change.StandingPhase;
import depot.optimizer.sweep.spec.Sweep.Losses;
import java.util.ArrayList;
import java.util.List;

/**
 * Lists what may fail in a fleet whose depots share something, or that has several phases: depot by depot, and phase by phase. Each phase stands by
 * itself, with the crews that work with packs in it, and of all that is shared only visits are left. A depot that has no part in any of them is asked by
 * itself. A phase in which nothing is as it was not in the phase before it is not asked again.
 */
final class PhaseLosses {

    /** In place of every account of a solve, so that plans can be compared. */
    private static final SolveStop ANY = new SolveStop("", Certificate.of(0, 0, 0), 0, 0, 0, 0, 0, 0, 0);

    private final Losses asked;
    private final Scenario scenario;
    private final FleetOutcome base;
    private final List<StandingFleet> fleets = new ArrayList<>();

    PhaseLosses(Losses asked, Scenario scenario, FleetOutcome base) {
        this.asked = asked;
        this.scenario = scenario;
        this.base = base;
        if (!scenario.visits().isEmpty()) {
            List<DepotPlan> firsts = plans(base.plan().phases().get(0));
            base.plan().phases().forEach(phase -> fleets.add(StandingFleet.of(scenario, plans(phase), firsts)));
        }
    }

    private List<DepotPlan> plans(String phase) {
        return base.plan().depots().stream()
                .filter(plan -> plan.phase().equals(phase))
                .toList();
    }

    List<LossWork> all() {
        List<LossWork> works = new ArrayList<>();
        scenario.depots().forEach(depot -> add(works, base.of(depot.id())));
        return works;
    }

    private void add(List<LossWork> works, List<DepotPlan> phases) {
        List<DepotPlan> last = List.of();
        for (int f = 0; f < phases.size(); f++) {
            DepotPlan phase = phases.get(f);
            String name = phases.size() == 1 ? "" : phase.phase();
            boolean visits = !fleets.isEmpty() && fleets.get(f).visits(phase.depot());
            List<DepotPlan> stands = visits ? fleets.get(f).around(phase.depot()) : List.of(standing(phase));
            if (!stands.equals(last)) {
                works.addAll(visits ? visiting(fleets.get(f), phase.depot(), name) : alone(phase, phases.get(0), name));
            }
            last = stands;
        }
    }

    private List<LossWork> visiting(StandingFleet fleet, String depot, String phase) {
        return LossList.of(asked, fleet.plan(depot), phase).stream()
                .<LossWork>map(loss -> new VisitLoss(fleet, loss))
                .toList();
    }

    private List<LossWork> alone(DepotPlan phase, DepotPlan first, String name) {
        Scenario alone = StandingPhase.of(scenario, phase, first);
        if (alone.crews().isEmpty()) {
            return List.of();
        }
        DepotPlan plan = StandingPhase.plan(phase);
        Scenario there = Ownership.after(alone, plan, List.of());
        DepotOutcome outcome = DepotOutcome.of(plan, FleetReplay.runDepot(there, Ownership.carriedOut(plan)));
        return LossList.of(asked, plan, name).stream()
                .<LossWork>map(loss -> new ApartLoss(alone, outcome, loss))
                .toList();
    }

    /** What a depot has and does, whatever it cost and however it was found. */
    static DepotPlan standing(DepotPlan phase) {
        DepotPlan plan = StandingPhase.plan(phase);
        return Ownership.carriedOut(plan).with(plan.days(), List.of()).withStop(ANY);
    }
}
