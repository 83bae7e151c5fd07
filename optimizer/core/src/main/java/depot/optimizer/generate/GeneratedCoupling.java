package depot.optimizer.generate;

import depot.optimizer.generate.CouplingSettings.Kind;
import depot.optimizer.scenario.Coupling;
import depot.optimizer.scenario.Crew;
import depot.optimizer.scenario.CrewConversion;
import depot.optimizer.scenario.DeliveryLimit;
import depot.optimizer.scenario.Depot;
import depot.optimizer.scenario.Phase;
import depot.optimizer.scenario.RegionBudget;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The phases of a synthetic fleet, their budgets and limits, and when its crews change. The last phase has no limit, so
 * that a plan there is.
 */
final class GeneratedCoupling {
    private static final BigDecimal ROUNDING = BigDecimal.valueOf(100);

    /** A region with a budget of its own gets somewhat more than its part: the fleet's budget binds as well. */
    private static final BigDecimal REGION_EASE = new BigDecimal("1.2");

    private final CouplingSettings settings;
    private final long seed;
    private final List<Depot> depots;
    private final List<Crew> crews;
    private final RoughNeed need;

    GeneratedCoupling(CouplingSettings settings, long seed, List<Depot> depots, List<Crew> crews, RoughNeed need) {
        this.settings = settings;
        this.seed = seed;
        this.depots = depots;
        this.crews = crews;
        this.need = need;
    }

    Coupling coupling() {
        return new Coupling(
                phases(),
                settings.budgetShare().isPresent() && !optional() ? regionBudgets() : List.of(),
                settings.has(Kind.CONVERSIONS) || optional() ? conversions() : List.of(),
                settings.has(Kind.TIERS) ? GeneratedOrders.priceTiers(need) : List.of(),
                settings.has(Kind.LIMITS) ? deliveryLimits() : List.of(),
                settings.has(Kind.MOVES) ? GeneratedOrders.moveCosts() : List.of());
    }

    private List<Phase> phases() {
        if (settings.phases() == 1 && !optional()) {
            return List.of(Phase.NOW);
        }
        List<Phase> phases = new ArrayList<>();
        for (int index = 0; index < settings.phases(); index++) {
            boolean limited = optional() || index < last();
            phases.add(new Phase(phase(index), index, limited ? budget(crews) : Optional.empty()));
        }
        return phases;
    }

    private boolean optional() {
        return settings.has(Kind.OPTIONAL);
    }

    private Optional<BigDecimal> budget(List<Crew> ofCrews) {
        return settings.budgetShare().isEmpty()
                ? Optional.empty()
                : Optional.of(rounded(need.capital(ofCrews)
                        .multiply(BigDecimal.valueOf(settings.budgetShare().getAsDouble()))));
    }

    /** Every second region has budgets of its own. */
    private List<RegionBudget> regionBudgets() {
        List<RegionBudget> budgets = new ArrayList<>();
        int number = 0;
        for (Map.Entry<String, List<Crew>> region : crewsByRegion().entrySet()) {
            number++;
            for (int index = 0; index < last() && number % 2 == 0; index++) {
                String phase = phase(index);
                budget(region.getValue())
                        .map(amount -> rounded(amount.multiply(REGION_EASE)))
                        .ifPresent(amount -> budgets.add(new RegionBudget(phase, region.getKey(), amount)));
            }
        }
        return budgets;
    }

    private Map<String, List<Crew>> crewsByRegion() {
        Map<String, List<Crew>> byRegion = new TreeMap<>();
        for (Depot depot : depots) {
            List<Crew> ofDepot = crews.stream()
                    .filter(crew -> crew.depot().equals(depot.id()))
                    .toList();
            depot.region().ifPresent(region -> byRegion.computeIfAbsent(region, none -> new ArrayList<>())
                    .addAll(ofDepot));
        }
        return byRegion;
    }

    /** A quarter of the crews each: changes at once, by the last phase, from a later phase on, or maybe never. */
    private List<CrewConversion> conversions() {
        List<CrewConversion> conversions = new ArrayList<>();
        for (int index = 0; index < crews.size(); index++) {
            if (optional()) {
                conversions.add(new CrewConversion(crews.get(index).id(), phase(0), Optional.empty()));
                continue;
            }
            Dice dice = Dice.beside(seed, Kind.CONVERSIONS, index);
            conversion(crews.get(index), dice).ifPresent(conversions::add);
        }
        return conversions;
    }

    private Optional<CrewConversion> conversion(Crew crew, Dice dice) {
        int quarter = dice.between(0, 3);
        int later = dice.between(Math.min(1, last()), last());
        if (quarter == 0) {
            return Optional.of(new CrewConversion(crew.id(), phase(0), Optional.empty()));
        }
        boolean atOnce = quarter == 1 && !settings.limited();
        return atOnce || last() == 0
                ? Optional.empty()
                : Optional.of(
                        new CrewConversion(crew.id(), phase(quarter == 2 ? later : 0), Optional.of(phase(last()))));
    }

    private List<DeliveryLimit> deliveryLimits() {
        String pack = GeneratedEquipment.MAIN_PACK.id();
        String charger = GeneratedEquipment.MAIN_CHARGER.id();
        List<DeliveryLimit> limits = new ArrayList<>();
        for (int index = 0; index < Math.max(1, last()); index++) {
            limits.add(new DeliveryLimit(pack, phase(index), partOf(need.packs(pack))));
            limits.add(new DeliveryLimit(charger, phase(index), partOf(need.chargers())));
        }
        return limits;
    }

    private int partOf(int count) {
        return Math.max(1, count / settings.phases());
    }

    private int last() {
        return settings.phases() - 1;
    }

    private String phase(int index) {
        return settings.phases() == 1 ? Phase.NOW.id() : "year-" + (index + 1);
    }

    private static BigDecimal rounded(BigDecimal amount) {
        return amount.divide(ROUNDING, 0, RoundingMode.UP).multiply(ROUNDING);
    }
}
