package depot.optimizer.finance;

import depot.optimizer.plan.FleetCost;
import depot.optimizer.scenario.Scenario;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** What quantity prices take off and what spare pieces cost, piece by piece, and when. */
public final class FleetOutlays {

    private FleetOutlays() {}

    /** What one piece of a fleet's cost pays; below 0: less is paid for it. */
    static Outlay of(Scenario scenario, FleetCost cost) {
        boolean spare = cost.kind() == FleetCost.Kind.SPARE_PIECES;
        return of(scenario, cost.item(), spare ? cost.price() : 0 - cost.price());
    }

    /**
     * An amount paid for one piece when a phase begins, beside what depots pay for theirs.
     *
     * @param item id of a pack, charger, sharing-unit or power-bank type
     * @param amount below 0: the piece costs so much less
     * @throws IllegalArgumentException if the scenario has no such item
     */
    public static Outlay of(Scenario scenario, String item, double amount) {
        if (scenario.packTypes().stream().anyMatch(type -> type.id().equals(item))) {
            return new Outlay.StockedPack(amount);
        }
        double life = lifeYears(scenario, item)
                .orElseThrow(() -> new IllegalArgumentException("The scenario has no item '" + item + "'."));
        return new Outlay.SinglePiece(amount, life);
    }

    private static OptionalDouble lifeYears(Scenario scenario, String item) {
        return Stream.of(
                        scenario.chargerTypes().stream()
                                .filter(type -> type.id().equals(item))
                                .map(type -> type.lifeYears()),
                        scenario.sharingUnitTypes().stream()
                                .filter(type -> type.id().equals(item))
                                .map(type -> type.lifeYears()),
                        scenario.powerBankTypes().stream()
                                .filter(type -> type.id().equals(item))
                                .map(type -> type.lifeYears()))
                .flatMap(lives -> lives)
                .mapToDouble(life -> life)
                .findFirst();
    }
}
