package depot.optimizer.sweep;

import depot.optimizer.fleet.DepotResult;
import depot.optimizer.fleet.HeldPlanner;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.Plan;
import depot.optimizer.problem.DepotRollout;
import depot.optimizer.problem.Visit.Service;
import depot.optimizer.replay.FleetReplay;
import depot.optimizer.replay.Violation;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.solve.NoPlanException;
import depot.optimizer.solve.VisitUse;
import depot.optimizer.sweep.change.Ownership;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The days of a fleet after a loss at one of its depots, with what is left and nothing bought. Visits are first for as many packs as the plan has them,
 * so that days of other depots stay. Where the depot cannot do that, its guests get as little as their homes can do without, whose days are planned anew
 * for it. Where even that is too much it gives them nothing.
 */
final class LossDays {

    private final StandingFleet fleet;
    private final Loss loss;
    private final Scenario after;
    private final FleetAssembly assembly;
    private final Map<String, Integer> planned = new LinkedHashMap<>();

    /**
     * @param after {@link StandingFleet#after}
     */
    LossDays(StandingFleet fleet, Loss loss, Scenario after) {
        this.fleet = fleet;
        this.loss = loss;
        this.after = after;
        assembly = new FleetAssembly(after);
        fleet.depots()
                .forEach(depot -> planned.putAll(
                        VisitUse.countedOn(assembly.rollout(depot).first(), fleet.plan(depot))));
    }

    /**
     * How the days go.
     *
     * @param here of the depot; empty: it has no plan
     * @param homes whose days are planned anew
     * @param holds whether nobody is worse off
     */
    record Days(Optional<DepotOutcome> here, List<DepotOutcome> homes, boolean holds) {}

    /** How many packs each visit is for in the plan, by {@link Service#key()}. */
    Map<String, Integer> planned() {
        return planned;
    }

    /** The depot's problem after the loss. */
    DepotRollout rollout() {
        return assembly.rollout(loss.depot());
    }

    Days days() {
        Days asPlanned = with(planned, List.of());
        if (asPlanned.holds()) {
            return asPlanned;
        }
        Map<String, Integer> least = new LinkedHashMap<>(planned);
        List<DepotOutcome> homes = new ArrayList<>();
        homesOfGuests().forEach(home -> least(home, least).ifPresent(homes::add));
        Days spared = homes.isEmpty() ? asPlanned : with(least, homes);
        if (spared.holds() || asPlanned.here().isPresent()) {
            return spared.holds() ? spared : asPlanned;
        }
        return spared.here().isPresent() ? spared : withoutGuests();
    }

    private List<Service> guests() {
        return rollout().first().guestServices().stream()
                .filter(service -> planned.getOrDefault(service.key(), 0) > 0)
                .toList();
    }

    private List<String> homesOfGuests() {
        return guests().stream()
                .map(service -> service.visit().home())
                .distinct()
                .toList();
    }

    /** Lowers what a home's crews get here for as long as its days go with it, one crew, pack type and level after the other. */
    private Optional<DepotOutcome> least(String home, Map<String, Integer> packs) {
        Map<String, List<String>> groups = new TreeMap<>();
        for (Service service : guests()) {
            if (service.visit().home().equals(home)) {
                String group = service.visit().crew() + " " + service.charge();
                groups.computeIfAbsent(group, none -> new ArrayList<>()).add(service.key());
            }
        }
        Optional<DepotOutcome> best = Optional.empty();
        for (List<String> group : groups.values()) {
            boolean lower = true;
            while (lower && group.stream().anyMatch(key -> packs.get(key) > 0)) {
                Map<String, Integer> fewer = new LinkedHashMap<>(packs);
                group.forEach(key -> fewer.merge(key, -1, (now, step) -> Math.max(0, now + step)));
                Optional<DepotOutcome> tried =
                        outcome(home, fleet.plan(home), fewer).filter(outcome -> outcome.bears(fleet.outcome(home)));
                lower = tried.isPresent();
                if (lower) {
                    packs.putAll(fewer);
                    best = tried;
                }
            }
        }
        return best;
    }

    private Days withoutGuests() {
        Map<String, Integer> none = new LinkedHashMap<>(planned);
        guests().forEach(service -> none.put(service.key(), 0));
        List<DepotOutcome> homes = homesOfGuests().stream()
                .flatMap(home -> outcome(home, fleet.plan(home), none).stream())
                .toList();
        return with(none, homes);
    }

    private Days with(Map<String, Integer> packs, List<DepotOutcome> homes) {
        Optional<DepotOutcome> here =
                outcome(loss.depot(), loss.left(), packs).map(outcome -> together(outcome, homes));
        boolean holds = here.filter(outcome -> outcome.bears(fleet.outcome(loss.depot())))
                        .isPresent()
                && homes.stream()
                        .allMatch(home -> home.bears(fleet.outcome(home.plan().depot())));
        return new Days(here, here.isPresent() ? homes : List.of(), holds);
    }

    private Optional<DepotOutcome> outcome(String depot, DepotPlan left, Map<String, Integer> packs) {
        try {
            DepotResult held =
                    HeldPlanner.replan(after, assembly.rollout(depot).first(), Ownership.carriedOut(left), packs);
            return Optional.of(DepotOutcome.of(held.plan(), held.replay()));
        } catch (NoPlanException none) {
            return Optional.empty();
        }
    }

    /** An outcome of the depot, when it is known what the others do: together what guests get may break a rule that none breaks by itself. */
    DepotOutcome together(DepotOutcome here, List<DepotOutcome> homes) {
        Map<String, DepotPlan> changed = new LinkedHashMap<>();
        homes.forEach(home -> changed.put(home.plan().depot(), home.plan()));
        changed.put(loss.depot(), here.plan());
        Plan all = FleetOutcome.ofApart(after, List.of(here)).plan();
        List<DepotPlan> plans = fleet.depots().stream()
                .map(depot -> changed.getOrDefault(depot, fleet.plan(depot)))
                .toList();
        return FleetReplay.runFleet(after, all.with(all.certificate(), List.of(), plans)).stream()
                .filter(violation -> violation.kind() == Violation.Kind.VISIT && here.proven())
                .findFirst()
                .map(violation -> here.broken(violation.message()))
                .orElse(here);
    }
}
