package depot.optimizer.rerun;

import depot.optimizer.plan.ChargerLoad;
import depot.optimizer.plan.DayPlan;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.MovedPieces;
import depot.optimizer.rerun.FleetChange.What;
import depot.optimizer.scenario.Crew;
import depot.optimizer.scenario.Scenario;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/** Compares a fleet's plan with what was left to do of an earlier one, phase by phase. */
final class FleetChanges {

    private record Key(int phase, What what, String depot, String subject) implements Comparable<Key> {
        @Override
        public int compareTo(Key other) {
            int byPhase = Integer.compare(phase, other.phase);
            int byWhat = byPhase != 0 ? byPhase : what.compareTo(other.what);
            int byDepot = byWhat != 0 ? byWhat : depot.compareTo(other.depot);
            return byDepot != 0 ? byDepot : subject.compareTo(other.subject);
        }
    }

    private final Scenario scenario;
    private final SortedMap<Key, String> told = new TreeMap<>();

    private FleetChanges(Scenario scenario) {
        this.scenario = scenario;
    }

    /**
     * Everything that changes.
     *
     * @param then scenario of the earlier plan
     * @param before what was left to do of it, by depot and phase; as many phases as there are now
     * @param now the changed scenario
     * @param after its plan, by depot and phase
     */
    static List<FleetChange> between(
            Scenario then, Map<String, List<DepotPlan>> before, Scenario now, Map<String, List<DepotPlan>> after) {
        SortedMap<Key, String> old = new FleetChanges(then).of(before);
        SortedMap<Key, String> fresh = new FleetChanges(now).of(after);
        SortedSet<Key> keys = new TreeSet<>(old.keySet());
        keys.addAll(fresh.keySet());
        List<FleetChange> changes = new ArrayList<>();
        for (Key key : keys) {
            String was = old.getOrDefault(key, "");
            String is = fresh.getOrDefault(key, "");
            if (!was.equals(is)) {
                String phase = now.coupling().phases().get(key.phase()).id();
                changes.add(new FleetChange(phase, key.depot(), key.what(), key.subject(), was, is));
            }
        }
        return List.copyOf(changes);
    }

    private SortedMap<Key, String> of(Map<String, List<DepotPlan>> depots) {
        for (List<DepotPlan> plans : depots.values()) {
            for (int f = 0; f < plans.size(); f++) {
                Optional<DepotPlan> before = f == 0 ? Optional.empty() : Optional.of(plans.get(f - 1));
                purchases(f, plans.get(f), before);
                moves(f, plans.get(f));
                visits(f, plans.get(f));
                crews(f, plans.get(f));
            }
        }
        return told;
    }

    private void purchases(int phase, DepotPlan plan, Optional<DepotPlan> before) {
        Pieces.bought(plan).byItem().forEach((item, count) -> {
            if (count > 0) {
                tell(phase, What.PURCHASE, plan.depot(), item, Integer.toString(count));
            }
        });
        List<String> built = before.map(DepotPlan::circuitsBuilt).orElse(List.of());
        plan.circuitsBuilt().stream()
                .filter(circuit -> !built.contains(circuit))
                .forEach(circuit -> tell(phase, What.PURCHASE, plan.depot(), "circuit " + circuit, "1"));
        if (plan.supplyUpgraded() && before.filter(DepotPlan::supplyUpgraded).isEmpty()) {
            tell(phase, What.PURCHASE, plan.depot(), "bigger supply", "1");
        }
    }

    private void moves(int phase, DepotPlan plan) {
        for (MovedPieces moved : plan.moves()) {
            tell(phase, What.MOVE, plan.depot(), moved.item(), Integer.toString(moved.count()));
        }
    }

    private void visits(int phase, DepotPlan plan) {
        SortedMap<String, Integer> packs = new TreeMap<>();
        for (DayPlan day : plan.days()) {
            for (ChargerLoad load : day.loads()) {
                for (ChargerLoad.Loaded loaded : load.packs()) {
                    if (plan.visitor(loaded.pool())) {
                        packs.merge(
                                loaded.pool() + ", " + loaded.packType(),
                                loaded.count() * day.occurrences().size(),
                                Integer::sum);
                    }
                }
            }
        }
        packs.forEach((whose, count) -> tell(phase, What.VISIT, plan.depot(), whose, Integer.toString(count)));
    }

    private void crews(int phase, DepotPlan plan) {
        for (Crew crew : scenario.crews()) {
            String id = crew.id();
            if (plan.guests().contains(id)) {
                tell(phase, What.CREW, crew.depot(), id, "from " + plan.depot() + ", with packs");
            } else if (crew.depot().equals(plan.depot()) && plan.onPetrol().contains(id)) {
                tell(phase, What.CREW, crew.depot(), id, "on petrol");
            } else if (crew.depot().equals(plan.depot()) && !plan.away().contains(id)) {
                tell(phase, What.CREW, crew.depot(), id, "from " + plan.depot() + ", with packs");
            }
        }
    }

    private void tell(int phase, What what, String depot, String subject, String words) {
        told.put(new Key(phase, what, depot, subject), words);
    }
}
