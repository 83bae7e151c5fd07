package depot.optimizer.rerun;

import depot.optimizer.plan.ChargerPlacement;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.UnitPlacement;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What a new plan buys, in the places of an earlier one: as many chargers of each type as the new plan has, but those that were there stay where they
 * were. Units stay on their circuits where both plans have as many of a type. Whether everything still fits is for a replay to say.
 */
final class OldPlaces {
    private OldPlaces() {}

    /** The new plan with its chargers and units in the places that they had; its days are the new plan's and do not belong to it. */
    static DepotPlan of(DepotPlan plan, DepotPlan earlier) {
        PlanParts parts = new PlanParts(plan);
        List<ChargerPlacement> chargers = new ArrayList<>();
        Set<String> types =
                plan.chargers().stream().map(ChargerPlacement::chargerType).collect(Collectors.toSet());
        for (String type : types.stream().sorted().toList()) {
            chargers.addAll(placed(ofType(plan, type), ofType(earlier, type)));
        }
        parts.chargers = chargers;
        if (types(plan.units()).equals(types(earlier.units()))) {
            parts.units = earlier.units();
        }
        return parts.plan();
    }

    private static List<String> types(List<UnitPlacement> units) {
        return units.stream().map(UnitPlacement::unitType).sorted().toList();
    }

    private static List<ChargerPlacement> ofType(DepotPlan plan, String type) {
        return plan.chargers().stream()
                .filter(charger -> charger.chargerType().equals(type))
                .toList();
    }

    /** As many chargers as are wanted: first those that both plans have in one place, then where they were, then where the new plan has them. */
    private static List<ChargerPlacement> placed(List<ChargerPlacement> wanted, List<ChargerPlacement> old) {
        List<ChargerPlacement> chosen = new ArrayList<>();
        List<ChargerPlacement> oldLeft = new ArrayList<>(old);
        List<ChargerPlacement> newLeft = new ArrayList<>();
        for (ChargerPlacement charger : wanted) {
            boolean both = oldLeft.stream()
                    .filter(other -> PlaceKeeper.alike(charger, other))
                    .findFirst()
                    .map(oldLeft::remove)
                    .orElse(false);
            (both ? chosen : newLeft).add(charger);
        }
        for (ChargerPlacement charger : newLeft) {
            chosen.add(oldLeft.isEmpty() ? charger : oldLeft.remove(0));
        }
        return chosen;
    }

    /** Whether two plans have the same chargers and units in the same places, whatever their names. */
    static boolean same(DepotPlan one, DepotPlan other) {
        return seats(one).equals(seats(other));
    }

    private static List<String> seats(DepotPlan plan) {
        List<String> seats = new ArrayList<>();
        plan.chargers()
                .forEach(charger -> seats.add("%s/%s/%s/%s"
                        .formatted(charger.circuit(), charger.chargerType(), charger.shared(), charger.priority())));
        plan.units().forEach(unit -> seats.add("%s/%s".formatted(unit.circuit(), unit.unitType())));
        seats.sort(null);
        return seats;
    }
}
