package depot.optimizer.fleet;

import depot.optimizer.model.Tightening;
import depot.optimizer.plan.Certificate;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.EnergyUse;
import depot.optimizer.plan.SolveStop;
import depot.optimizer.plan.UnitFeed;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.replay.DayReplay;
import depot.optimizer.replay.DepotReplay;
import depot.optimizer.replay.FleetReplay;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.solve.DepotSolver;
import depot.optimizer.solve.MeasuredPlan;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * A depot's plan together with its replay. When the replay finds a load behind a unit late, or packs on the way not empty, that day is given less room
 * and the depot is solved again.
 */
record ProvenDepot(DepotPlan plan, DepotReplay replay) {

    /** Share of a unit's room that stays after a late day: this less the share of its energy that was missing, within limits. */
    private static final double MOST_KEEP = 0.96;

    private static final double LEAST_KEEP = 0.85;

    /** Share of what the supply and the demand paid for leave for units that stays after each late day. */
    private static final double DEPOT_KEEP = 0.96;

    /** Share of the energy that empties packs on the way that stays after each day on which they were not empty. */
    private static final double ROAD_KEEP = 0.7;

    static final int MOST_TIGHTENINGS = 8;

    static ProvenDepot solve(Scenario scenario, DepotProblem problem) {
        List<Tightening> tightenings =
                new ArrayList<>(Collections.nCopies(problem.days().size(), Tightening.NONE));
        DepotSolver solver = new DepotSolver(problem);
        DepotPlan first = null;
        for (int tightened = 0; ; tightened++) {
            DepotPlan plan = withFirstBound(problem, solver.solve(), first);
            first = first == null ? plan : first;
            DepotReplay replay = FleetReplay.runDepot(scenario, plan);
            if (replay.failedDays().stream().noneMatch(ProvenDepot::curable) || tightened == MOST_TIGHTENINGS) {
                return plan.units().isEmpty() || !replay.proven()
                        ? new ProvenDepot(plan, replay)
                        : asMeasured(scenario, problem, plan, replay);
            }
            Map<Integer, Double> keep = keep(problem, plan, replay);
            for (int d = 0; d < tightenings.size(); d++) {
                tightenings.set(d, tighter(tightenings.get(d), keep, lacking(d, replay)));
            }
            solver = solver.tightened(List.copyOf(tightenings));
        }
    }

    static boolean curable(DayReplay day) {
        return !day.missingWhByCircuit().isEmpty() || !day.crewsLacking().isEmpty();
    }

    /** With the energy that the replay measured, which is what will be paid for, and replayed once more. */
    static ProvenDepot asMeasured(Scenario scenario, DepotProblem problem, DepotPlan plan, DepotReplay replay) {
        Map<Integer, List<EnergyUse>> energy = new TreeMap<>();
        for (int d = 0; d < plan.days().size(); d++) {
            energy.put(d, measured(d, replay));
        }
        DepotPlan measured = MeasuredPlan.of(problem, plan, energy);
        return new ProvenDepot(measured, FleetReplay.runDepot(scenario, measured));
    }

    /** Mean energy of a day of the plan by span of one price: season days that it stands for may run differently. */
    private static List<EnergyUse> measured(int day, DepotReplay replay) {
        List<DayReplay> runs =
                replay.days().stream().filter(run -> run.day() == day).toList();
        double all = Math.max(
                Double.MIN_NORMAL,
                runs.stream().mapToDouble(DayReplay::daysPerYear).sum());
        Map<Integer, EnergyUse> spans = new TreeMap<>();
        for (DayReplay run : runs) {
            for (DayReplay.EnergySpan span : run.energy()) {
                EnergyUse part = new EnergyUse(
                        span.fromMinute(), span.toMinute(), span.kwh() * run.daysPerYear() / all, span.pricePerKwh());
                spans.merge(span.fromMinute(), part, EnergyUse::plus);
            }
        }
        return spans.values().stream().filter(use -> use.kwh() > 0).toList();
    }

    /** Tightening takes plans away, so that only the bound of the problem as it is holds for every plan. */
    private static DepotPlan withFirstBound(DepotProblem problem, DepotPlan plan, DepotPlan first) {
        if (first == null) {
            return plan;
        }
        double bound = first.stop().certificate().bound();
        Certificate certificate = Certificate.of(
                plan.stop().certificate().cost(), bound, problem.settings().relativeGap());
        SolveStop stop = plan.stop().withCertificate(certificate);
        return plan.withStop(certificate.proven() ? stop : stop.withReason("days tightened after the replay"));
    }

    /** Share of their room that units keep, by circuit; those that were in time on every day are left out. */
    static Map<Integer, Double> keep(DepotProblem problem, DepotPlan plan, DepotReplay replay) {
        Map<Integer, Double> shares = new TreeMap<>();
        for (DayReplay day : replay.failedDays()) {
            for (int k = 0; k < problem.circuits().size(); k++) {
                String circuit = problem.circuits().get(k).circuit().id();
                double missing = day.missingWhByCircuit().getOrDefault(circuit, 0.0);
                if (missing > 0) {
                    double drawn = plan.days().get(day.day()).feeds().stream()
                            .filter(feed -> feed.circuit().equals(circuit))
                            .mapToDouble(UnitFeed::wattHours)
                            .sum();
                    double share = Math.max(LEAST_KEEP, MOST_KEEP - missing / Math.max(missing, drawn));
                    shares.merge(k, share, Math::min);
                }
            }
        }
        return shares;
    }

    static Set<String> lacking(int day, DepotReplay replay) {
        return replay.failedDays().stream()
                .filter(run -> run.day() == day)
                .flatMap(run -> run.crewsLacking().stream())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    static Tightening tighter(Tightening before, Map<Integer, Double> keep, Set<String> lacking) {
        Map<Integer, Double> shares = new TreeMap<>(before.circuitShare());
        keep.forEach((circuit, share) -> shares.merge(circuit, share, (old, more) -> old * more));
        Map<String, Double> roads = new TreeMap<>(before.roadShare());
        lacking.forEach(crew -> roads.merge(crew, ROAD_KEEP, (old, more) -> old * more));
        double supply = keep.isEmpty() ? before.depotShare() : before.depotShare() * DEPOT_KEEP;
        return new Tightening(Map.copyOf(shares), supply, Map.copyOf(roads));
    }
}
