package depot.optimizer.generate;

import depot.optimizer.scenario.ChargerType;
import depot.optimizer.scenario.Crew;
import depot.optimizer.scenario.PackType;
import depot.optimizer.scenario.Season;
import depot.optimizer.scenario.Tool;
import depot.optimizer.scenario.Work;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What crews need by a rough estimate, without a plan: packs for the longest day of each, of the first type of each
 * family, and a bay for each pack. Enough to set budgets and counts that matter.
 */
final class RoughNeed {
    /** A day at the planned quantile takes about so much more than the average one. */
    private static final double BAD_DAY = 1.2;

    private static final ChargerType CHARGER = GeneratedEquipment.MAIN_CHARGER;

    private final List<PackType> packTypes;
    private final Map<String, PackType> firstOfFamily = new HashMap<>();
    /** Packs by crew and pack type. */
    private final Map<String, Map<String, Integer>> packs = new HashMap<>();

    private record Day(String season, Set<DayOfWeek> days, String crew, String family) {}

    RoughNeed(List<PackType> packTypes, List<Tool> tools, List<Season> seasons, List<Work> work) {
        this.packTypes = packTypes;
        packTypes.forEach(pack -> firstOfFamily.putIfAbsent(pack.family(), pack));
        Map<String, Tool> toolsById = new HashMap<>();
        tools.forEach(tool -> toolsById.put(tool.id(), tool));
        Map<String, Double> factors = new HashMap<>();
        seasons.forEach(season -> factors.put(season.id(), season.packCapacityFactor()));
        Map<Day, Double> wattHours = new HashMap<>();
        for (Work row : work) {
            Tool tool = toolsById.get(row.tool());
            Day day = new Day(row.season(), row.days(), row.crew(), tool.family());
            wattHours.merge(day, tool.averageWatts() * row.toolHours(), Double::sum);
        }
        wattHours.forEach((day, energy) -> add(day, energy / factors.get(day.season())));
    }

    private void add(Day day, double wattHours) {
        PackType pack = firstOfFamily.get(day.family());
        double packWh = pack.capacityWh() * pack.usableShare() * FleetGenerator.PACK_HEALTH;
        int count = (int) Math.ceil(BAD_DAY * wattHours / packWh);
        packs.computeIfAbsent(day.crew(), none -> new HashMap<>()).merge(pack.id(), count, Math::max);
    }

    /** Packs of a type that all crews need, 0: another type of the family stands for it. */
    int packs(String packType) {
        return packs.values().stream()
                .mapToInt(ofCrew -> ofCrew.getOrDefault(packType, 0))
                .sum();
    }

    /** Packs that all crews need. */
    int packs() {
        return packTypes.stream().mapToInt(pack -> packs(pack.id())).sum();
    }

    /** Chargers that all packs need. */
    int chargers() {
        return chargers(packs());
    }

    /** Price of the packs and chargers of some crews. */
    BigDecimal capital(List<Crew> crews) {
        BigDecimal sum = BigDecimal.ZERO;
        for (Crew crew : crews) {
            Map<String, Integer> ofCrew = packs.getOrDefault(crew.id(), Map.of());
            int count = 0;
            for (PackType pack : packTypes) {
                int ofType = ofCrew.getOrDefault(pack.id(), 0);
                sum = sum.add(pack.price().multiply(BigDecimal.valueOf(ofType)));
                count += ofType;
            }
            BigDecimal charger = CHARGER.price().add(CHARGER.installCost());
            sum = sum.add(charger.multiply(BigDecimal.valueOf(chargers(count))));
        }
        return sum;
    }

    private static int chargers(int packs) {
        return (packs + CHARGER.bays() - 1) / CHARGER.bays();
    }
}
