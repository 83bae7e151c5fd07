package depot.optimizer.finance;

import depot.optimizer.scenario.Crew;
import depot.optimizer.scenario.FinanceTerms;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.scenario.Season;
import depot.optimizer.scenario.Tool;
import depot.optimizer.scenario.Work;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * What a crew's tools would burn and cost in a year on petrol, at today's prices. A crew's own petrol cost counts where
 * it has one: petrol at its price is a part of it, and the rest is upkeep. Without a price of petrol all of it is taken
 * for petrol. A crew without a petrol cost pays for its petrol alone.
 *
 * @param litres from its work and what its tools burn; tools that do not say burn nothing
 * @param statedCost the crew's own petrol cost, 0: none
 * @param fuelCost rises with the price of petrol
 * @param upkeepCost does not
 */
public record CrewPetrol(String crew, double litres, double statedCost, double fuelCost, double upkeepCost) {

    /** Some crews, in the order of the scenario. */
    public static List<CrewPetrol> of(Scenario scenario, Set<String> ids) {
        Map<String, Double> litres = litresByCrew(scenario);
        List<CrewPetrol> crews = new ArrayList<>();
        for (Crew crew : scenario.crews()) {
            if (ids.contains(crew.id())) {
                crews.add(of(crew, litres.getOrDefault(crew.id(), 0.0), scenario.finance()));
            }
        }
        return List.copyOf(crews);
    }

    private static CrewPetrol of(Crew crew, double litres, FinanceTerms terms) {
        double stated = crew.petrolCostPerYear().doubleValue();
        double burnt = terms.petrolPricePerLitre()
                .map(BigDecimal::doubleValue)
                .map(price -> price * litres)
                .orElse(stated);
        double fuel = stated > 0 ? Math.min(burnt, stated) : burnt;
        return new CrewPetrol(crew.id(), litres, stated, fuel, Math.max(0, stated - fuel));
    }

    private static Map<String, Double> litresByCrew(Scenario scenario) {
        Map<String, Double> weeks =
                scenario.seasons().stream().collect(Collectors.toMap(Season::id, Season::weeksPerYear));
        Map<String, Tool> tools = scenario.tools().stream().collect(Collectors.toMap(Tool::id, Function.identity()));
        return scenario.work().stream()
                .collect(Collectors.groupingBy(
                        Work::crew,
                        Collectors.summingDouble(work -> work.toolHours()
                                * work.days().size()
                                * weeks.get(work.season())
                                * tools.get(work.tool()).petrolLitresPerHour().orElse(0))));
    }
}
