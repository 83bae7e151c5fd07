package depot.optimizer.rerun;

import depot.optimizer.plan.DepotPlan;
import depot.optimizer.scenario.Circuit;
import depot.optimizer.scenario.Crew;
import depot.optimizer.scenario.Depot;
import depot.optimizer.scenario.Owned;
import depot.optimizer.scenario.PackSharing;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.sweep.change.Existing;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What is there when a fleet is planned again: what {@code owned.csv} lists, and on top of it all that the earlier run bought. Pieces that the earlier
 * run itself counted as owned are in {@code owned.csv} and not counted again.
 *
 * <p>Pieces stay in their depot. Those of a crew go where the crew goes; those of a crew that is gone go to the depot's new crews, one after the other
 * in the order of {@code crews.csv}, as long as there are any.
 */
final class Holdings {

    private final Scenario scenario;
    /** What earlier runs bought, by depot. */
    private final SortedMap<String, Pieces> bought = new TreeMap<>();

    private final Set<String> circuitsBuilt;
    private final Set<String> suppliesUpgraded;

    private Holdings(Scenario scenario, Set<String> circuitsBuilt, Set<String> suppliesUpgraded) {
        this.scenario = scenario;
        this.circuitsBuilt = circuitsBuilt;
        this.suppliesUpgraded = suppliesUpgraded;
    }

    /** What is there for a scenario after a run. */
    static Holdings after(EarlierRun run, Scenario scenario) {
        return after(run, scenario, run.standing().unlisted(scenario, run.scenario()));
    }

    /**
     * The same.
     *
     * @param standing what runs before that one left and the scenario does not list
     */
    static Holdings after(EarlierRun run, Scenario scenario, Standing standing) {
        Holdings holdings = new Holdings(scenario, built(run, scenario, standing), upgraded(run, scenario, standing));
        for (DepotPlan plan : run.plansCarriedOut()) {
            holdings.of(plan.depot()).addAll(Pieces.bought(plan));
        }
        holdings.move(run.plansCarriedOut());
        Set<String> known = Items.of(run.scenario());
        List<Owned> left = run.standing().given() ? standing.pieces() : run.store();
        left.stream().filter(row -> known.contains(row.item())).forEach(row -> holdings.of(row.depot())
                .add(row));
        holdings.moveWithCrews();
        Set<String> before = run.scenario().crews().stream().map(Crew::id).collect(Collectors.toSet());
        List.copyOf(holdings.bought.keySet()).forEach(depot -> holdings.handOver(depot, before));
        return holdings;
    }

    /** Pieces that come to a depot have gone from others, the first of those that give some away first; what comes nowhere has not gone. */
    private void move(List<DepotPlan> plans) {
        Map<String, Integer> coming = new TreeMap<>();
        plans.forEach(
                plan -> plan.moves().stream().filter(moved -> moved.count() > 0).forEach(moved -> {
                    of(plan.depot()).add("", moved.item(), moved.count());
                    coming.merge(moved.item(), moved.count(), Integer::sum);
                }));
        plans.forEach(
                plan -> plan.moves().stream().filter(moved -> moved.count() < 0).forEach(moved -> {
                    int gone = Math.min(-moved.count(), coming.getOrDefault(moved.item(), 0));
                    of(plan.depot()).add("", moved.item(), -gone);
                    coming.merge(moved.item(), -gone, Integer::sum);
                }));
    }

    private Pieces of(String depot) {
        return bought.computeIfAbsent(depot, none -> new Pieces());
    }

    private void moveWithCrews() {
        Map<String, Crew> crews = scenario.crews().stream().collect(Collectors.toMap(Crew::id, crew -> crew));
        for (String depot : List.copyOf(bought.keySet())) {
            for (String owner : of(depot).owners()) {
                Crew crew = crews.get(owner);
                if (crew != null && !scenario.basesOf(crew).contains(depot)) {
                    of(crew.depot()).addAll(of(depot).takeAll(owner));
                }
            }
        }
    }

    private void handOver(String depot, Set<String> before) {
        Set<String> now = scenario.crews().stream().map(Crew::id).collect(Collectors.toSet());
        List<String> fresh = new ArrayList<>(scenario.crews().stream()
                .filter(crew -> crew.depot().equals(depot) && !before.contains(crew.id()))
                .map(Crew::id)
                .toList());
        for (String owner : of(depot).owners()) {
            boolean gone = !owner.isEmpty() && !now.contains(owner);
            if (gone && !fresh.isEmpty()) {
                of(depot).hand(owner, fresh.remove(0));
            }
        }
    }

    /** Circuits that the run built, as far as the tables still list them as not there. */
    private static Set<String> built(EarlierRun run, Scenario scenario, Standing standing) {
        Set<String> candidates = scenario.circuits().stream()
                .filter(Circuit::candidate)
                .map(Circuit::id)
                .collect(Collectors.toSet());
        return Stream.concat(
                        run.plansCarriedOut().stream().flatMap(plan -> plan.circuitsBuilt().stream()),
                        standing.circuits().stream())
                .filter(candidates::contains)
                .collect(Collectors.toUnmodifiableSet());
    }

    /** Depots whose bigger supply the run bought, as far as the tables still offer the same one. */
    private static Set<String> upgraded(EarlierRun run, Scenario scenario, Standing standing) {
        Map<String, Depot> before =
                run.scenario().depots().stream().collect(Collectors.toMap(Depot::id, depot -> depot));
        return scenario.depots().stream()
                .filter(Depot::upgradeOffered)
                .filter(depot -> bought(run, before, depot) || left(standing, before, depot))
                .map(Depot::id)
                .collect(Collectors.toUnmodifiableSet());
    }

    private static boolean bought(EarlierRun run, Map<String, Depot> before, Depot depot) {
        return run.depot(depot.id()).filter(DepotPlan::supplyUpgraded).isPresent()
                && before.get(depot.id()).supplyUpgradeAmps() == depot.supplyUpgradeAmps();
    }

    private static boolean left(Standing standing, Map<String, Depot> before, Depot depot) {
        return standing.supplies().contains(depot.id())
                && before.containsKey(depot.id())
                && before.get(depot.id()).supplyAmps() == depot.supplyUpgradeAmps();
    }

    /**
     * All of this as the next run finds it.
     *
     * @param begun what has been used of limits of the phase that has begun
     */
    Standing standing(SortedMap<String, Double> begun) {
        List<Owned> pieces = new ArrayList<>();
        bought.forEach((depot, ofDepot) -> pieces.addAll(ofDepot.changes(depot)));
        return new Standing(
                pieces,
                circuitsBuilt.stream().sorted().toList(),
                suppliesUpgraded.stream().sorted().toList(),
                begun);
    }

    /** The scenario in which all of this is there already. */
    Scenario scenario() {
        List<Owned> owned = new ArrayList<>(scenario.owned());
        for (Depot depot : scenario.depots()) {
            owned.addAll(of(depot.id()).rows(depot.id()).stream()
                    .map(row -> scenario.packSharing() == PackSharing.DEPOT ? pooled(row) : row)
                    .toList());
        }
        return Existing.of(scenario, owned, circuitsBuilt, suppliesUpgraded);
    }

    /** Packs that were a crew's own are the depot's where its crews share them. */
    private Owned pooled(Owned row) {
        boolean pack = scenario.packTypes().stream().anyMatch(type -> type.id().equals(row.item()));
        return pack ? new Owned(row.depot(), row.circuit(), Optional.empty(), row.item(), row.count()) : row;
    }

    /** Pieces that a depot has, bought earlier or listed as owned, by item. */
    SortedMap<String, Integer> held(String depot) {
        Pieces all = new Pieces();
        all.addAll(of(depot));
        scenario.owned().stream().filter(row -> row.depot().equals(depot)).forEach(all::add);
        return all.byItem();
    }

    /** What earlier runs bought for a depot. */
    Pieces bought(String depot) {
        return of(depot);
    }

    Set<String> circuitsBuilt() {
        return circuitsBuilt;
    }

    Set<String> suppliesUpgraded() {
        return suppliesUpgraded;
    }
}
