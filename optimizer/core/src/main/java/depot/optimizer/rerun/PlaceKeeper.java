package depot.optimizer.rerun;

import depot.optimizer.plan.BankPlacement;
import depot.optimizer.plan.ChargerLoad;
import depot.optimizer.plan.ChargerPlacement;
import depot.optimizer.plan.DayPlan;
import depot.optimizer.plan.DepotPlan;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Gives chargers of a new plan the names and outlets that they had: a charger that stays on its circuit, in the same kind of outlet, keeps its place.
 * Only names change, so that the plan costs and does what it did.
 */
final class PlaceKeeper {

    private final DepotPlan plan;
    /** The new name of each charger, by the name that the plan gave it. */
    private final Map<String, ChargerPlacement> placed = new LinkedHashMap<>();

    private final Map<String, Set<Integer>> taken = new HashMap<>();

    private PlaceKeeper(DepotPlan plan) {
        this.plan = plan;
    }

    /** The plan in the places of an earlier one of the same depot. */
    static DepotPlan keep(DepotPlan plan, DepotPlan earlier) {
        PlaceKeeper keeper = new PlaceKeeper(plan);
        keeper.keepOld(earlier);
        keeper.placeNew();
        return keeper.renamed();
    }

    private void keepOld(DepotPlan earlier) {
        List<ChargerPlacement> old = new ArrayList<>(earlier.chargers());
        for (ChargerPlacement charger : plan.chargers()) {
            old.stream().filter(other -> alike(charger, other)).findFirst().ifPresent(other -> {
                old.remove(other);
                put(charger, other.id(), other.outlet());
            });
        }
    }

    static boolean alike(ChargerPlacement one, ChargerPlacement other) {
        return one.circuit().equals(other.circuit())
                && one.chargerType().equals(other.chargerType())
                && one.shared() == other.shared()
                && one.priority() == other.priority();
    }

    private void placeNew() {
        Set<String> names = new HashSet<>();
        placed.values().forEach(charger -> names.add(charger.id()));
        for (ChargerPlacement charger : plan.chargers()) {
            if (!placed.containsKey(charger.id())) {
                int outlet = freeOutlet(charger.circuit());
                String name = "%s-%02d".formatted(charger.circuit(), outlet);
                for (int number = outlet + 1; !names.add(name); number++) {
                    name = "%s-%02d".formatted(charger.circuit(), number);
                }
                put(charger, name, outlet);
            }
        }
    }

    private int freeOutlet(String circuit) {
        Set<Integer> used = taken.getOrDefault(circuit, Set.of());
        int outlet = 1;
        while (used.contains(outlet)) {
            outlet++;
        }
        return outlet;
    }

    private void put(ChargerPlacement charger, String name, int outlet) {
        taken.computeIfAbsent(charger.circuit(), none -> new HashSet<>()).add(outlet);
        placed.put(
                charger.id(),
                new ChargerPlacement(
                        name,
                        charger.circuit(),
                        charger.chargerType(),
                        outlet,
                        charger.shared(),
                        charger.priority(),
                        charger.owned()));
    }

    private DepotPlan renamed() {
        PlanParts parts = new PlanParts(plan);
        List<String> circuits = plan.chargers().stream()
                .map(ChargerPlacement::circuit)
                .distinct()
                .toList();
        parts.chargers = plan.chargers().stream()
                .map(charger -> placed.get(charger.id()))
                .sorted(Comparator.<ChargerPlacement>comparingInt(charger -> circuits.indexOf(charger.circuit()))
                        .thenComparingInt(ChargerPlacement::outlet))
                .toList();
        List<BankPlacement> banks = new ArrayList<>();
        for (BankPlacement bank : plan.banks()) {
            int outlet = freeOutlet(bank.circuit());
            taken.computeIfAbsent(bank.circuit(), none -> new HashSet<>()).add(outlet);
            banks.add(new BankPlacement(bank.crew(), bank.bankType(), bank.circuit(), outlet));
        }
        parts.banks = banks;
        return parts.plan().with(plan.days().stream().map(this::day).toList(), plan.costs());
    }

    private DayPlan day(DayPlan day) {
        List<ChargerLoad> loads = day.loads().stream()
                .map(load -> new ChargerLoad(
                        placed.get(load.charger()).id(), load.loadMinute(), load.collectMinute(), load.packs()))
                .sorted(Comparator.comparingInt(ChargerLoad::loadMinute).thenComparing(ChargerLoad::charger))
                .toList();
        return new DayPlan(
                day.occurrences(),
                day.daysPerYear(),
                day.startMinute(),
                day.trips(),
                loads,
                day.feeds(),
                day.energy(),
                day.demandKw());
    }
}
