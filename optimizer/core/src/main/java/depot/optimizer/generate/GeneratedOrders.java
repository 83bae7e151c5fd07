package depot.optimizer.generate;

import depot.optimizer.generate.CouplingSettings.Kind;
import depot.optimizer.scenario.ChargerType;
import depot.optimizer.scenario.Crew;
import depot.optimizer.scenario.CrewBase;
import depot.optimizer.scenario.Depot;
import depot.optimizer.scenario.MoveCost;
import depot.optimizer.scenario.Owned;
import depot.optimizer.scenario.PackType;
import depot.optimizer.scenario.PriceTier;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Quantity prices, moves and what there is to move, and other bases of a synthetic fleet. */
final class GeneratedOrders {
    private static final BigDecimal FIRST_TIER = new BigDecimal("0.94");
    private static final BigDecimal SECOND_TIER = new BigDecimal("0.88");

    private GeneratedOrders() {}

    /**
     * Two tiers for the pack and the charger that the estimate is made with: one that half of the fleet's need reaches, and
     * one that all of it just does.
     */
    static List<PriceTier> priceTiers(RoughNeed need) {
        PackType pack = GeneratedEquipment.MAIN_PACK;
        ChargerType charger = GeneratedEquipment.MAIN_CHARGER;
        List<PriceTier> tiers = new ArrayList<>();
        addTiers(tiers, pack.id(), pack.price(), need.packs(pack.id()));
        addTiers(tiers, charger.id(), charger.price(), need.chargers());
        return tiers;
    }

    private static void addTiers(List<PriceTier> tiers, String item, BigDecimal price, int count) {
        int first = Math.max(2, count / 2);
        tiers.add(new PriceTier(item, first, part(price, FIRST_TIER)));
        tiers.add(new PriceTier(item, Math.max(first + 1, count), part(price, SECOND_TIER)));
    }

    private static BigDecimal part(BigDecimal price, BigDecimal share) {
        return price.multiply(share).setScale(0, RoundingMode.HALF_UP);
    }

    static List<MoveCost> moveCosts() {
        return List.of(
                new MoveCost(GeneratedEquipment.MAIN_PACK.id(), BigDecimal.valueOf(12)),
                new MoveCost(GeneratedEquipment.MAIN_CHARGER.id(), BigDecimal.valueOf(45)));
    }

    /** What each depot owns, and every third one more in store than it has a use for. */
    static List<Owned> withSurplus(List<Owned> owned, List<Depot> depots, int crewsPerDepot) {
        List<Owned> all = new ArrayList<>(owned);
        for (int index = 0; index < depots.size(); index += 3) {
            String depot = depots.get(index).id();
            addToStore(all, depot, GeneratedEquipment.MAIN_PACK.id(), 10 * crewsPerDepot);
            addToStore(all, depot, GeneratedEquipment.MAIN_CHARGER.id(), 3 * crewsPerDepot);
        }
        return all;
    }

    private static void addToStore(List<Owned> all, String depot, String item, int count) {
        for (int index = 0; index < all.size(); index++) {
            Owned row = all.get(index);
            boolean inStore = row.circuit().isEmpty() && row.crew().isEmpty();
            if (inStore && row.depot().equals(depot) && row.item().equals(item)) {
                all.set(index, new Owned(depot, Optional.empty(), Optional.empty(), item, row.count() + count));
                return;
            }
        }
        all.add(new Owned(depot, Optional.empty(), Optional.empty(), item, count));
    }

    /** Every second crew could work from a neighbour of its depot, for what the longer way costs. */
    static List<CrewBase> bases(List<Crew> crews, int crewsPerDepot, long seed) {
        List<CrewBase> bases = new ArrayList<>();
        for (int index = 0; index < crews.size(); index += 2) {
            Crew crew = crews.get(index);
            Dice dice = Dice.beside(seed, Kind.BASES, index);
            bases.add(new CrewBase(crew.id(), crew.depot(), BigDecimal.valueOf(dice.stepped(0, 600, 50))));
            String neighbour = GeneratedDepot.neighbour(index / crewsPerDepot + 1);
            bases.add(new CrewBase(crew.id(), neighbour, BigDecimal.valueOf(dice.stepped(0, 1500, 50))));
        }
        return bases;
    }
}
