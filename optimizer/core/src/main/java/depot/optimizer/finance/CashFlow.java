package depot.optimizer.finance;

import depot.optimizer.plan.CostLine.Category;
import depot.optimizer.plan.DayPlan;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.EnergyUse;
import depot.optimizer.plan.Plan;
import depot.optimizer.scenario.Depot;
import depot.optimizer.scenario.FinanceTerms;
import depot.optimizer.scenario.Scenario;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * What a plan pays and saves, year by year: year 0 is now, all others are paid at their end. Received is above 0, paid
 * below.
 *
 * @param byKind for every kind the flows of the years 0 to the horizon
 */
public record CashFlow(PresentCost money, Map<FlowKind, List<Double>> byKind) {

    private static final double KG_PER_TONNE = 1000;

    /** Copies the map. */
    public CashFlow {
        byKind = Collections.unmodifiableMap(new EnumMap<>(byKind));
    }

    /**
     * The flows of a plan for a scenario.
     *
     * @throws IllegalArgumentException if the plan names a depot that the scenario does not list
     */
    public static CashFlow of(Scenario scenario, Plan plan) {
        PresentCost money = PresentCost.of(scenario);
        FinanceTerms terms = scenario.finance();
        YearFlows flows = new YearFlows(money);
        for (DepotPlan depot : plan.depots()) {
            for (PricedLine line : lines(scenario, depot)) {
                add(flows, money, line);
                addEitherWay(flows, money, line);
            }
        }
        addPetrol(flows, money, terms, crews(scenario, plan), kwhPerYear(plan));
        new TaxFlows(flows, money.horizonYears(), terms.taxRate(), terms.writeOffs()).add();
        return new CashFlow(money, flows.byKind());
    }

    /** What a depot's plan pays for. */
    public static List<PricedLine> lines(Scenario scenario, DepotPlan plan) {
        Map<String, Depot> depots =
                scenario.depots().stream().collect(Collectors.toMap(Depot::id, Function.identity()));
        Depot depot = depots.get(plan.depot());
        if (depot == null) {
            throw new IllegalArgumentException("The scenario has no depot '" + plan.depot() + "'.");
        }
        return DepotCosts.of(DepotPrices.of(scenario, depot), plan);
    }

    /** What the crews of the plan's depots that change to packs would burn and cost on petrol. */
    public static List<CrewPetrol> crews(Scenario scenario, Plan plan) {
        Set<String> depots = plan.depots().stream().map(DepotPlan::depot).collect(Collectors.toSet());
        Set<String> staying = plan.depots().stream()
                .flatMap(depot -> depot.onPetrol().stream())
                .collect(Collectors.toSet());
        return CrewPetrol.of(scenario, depots).stream()
                .filter(petrol -> !staying.contains(petrol.crew()))
                .toList();
    }

    /** Energy drawn from the grid for charging in a year, in kWh. */
    public static double kwhPerYear(Plan plan) {
        double sum = 0;
        for (DepotPlan depot : plan.depots()) {
            for (DayPlan day : depot.days()) {
                sum += day.daysPerYear()
                        * day.energy().stream().mapToDouble(EnergyUse::kwh).sum();
            }
        }
        return sum;
    }

    private static void add(YearFlows flows, PresentCost money, PricedLine line) {
        for (Payment payment : line.outlay().payments(money)) {
            FlowKind kind = FlowKind.of(line.category(), payment.reason());
            flows.add(kind, payment.years(), -line.quantity() * payment.amount());
        }
    }

    private static void addEitherWay(YearFlows flows, PresentCost money, PricedLine line) {
        if (line.category() == Category.PETROL) {
            for (Payment payment : line.outlay().payments(money)) {
                flows.add(FlowKind.PETROL_EITHER_WAY, payment.years(), line.quantity() * payment.amount());
            }
        }
    }

    private static void addPetrol(
            YearFlows flows, PresentCost money, FinanceTerms terms, List<CrewPetrol> crews, double kwh) {
        double fuel = crews.stream().mapToDouble(CrewPetrol::fuelCost).sum();
        double upkeep = crews.stream().mapToDouble(CrewPetrol::upkeepCost).sum();
        double litres = crews.stream().mapToDouble(CrewPetrol::litres).sum();
        double tonnes = (litres * terms.petrolKgCo2PerLitre()
                        - kwh * terms.gridKgCo2PerKwh().orElse(0))
                / KG_PER_TONNE;
        double carbon = terms.carbonPricePerTonne()
                .map(price -> price.doubleValue() * tonnes)
                .orElse(0.0);
        List<Double> petrolPrice = money.growing(terms.petrolPriceGrowth());
        for (int year = 1; year <= money.horizonYears(); year++) {
            flows.add(FlowKind.PETROL_SAVED, year, fuel * petrolPrice.get(year - 1) + upkeep);
            flows.add(FlowKind.CARBON_SAVED, year, carbon);
        }
    }

    /** Years of the horizon, the last of the flows. */
    public int horizonYears() {
        return money.horizonYears();
    }

    /** One flow. */
    public double at(FlowKind kind, int year) {
        return byKind.get(kind).get(year);
    }

    /** All flows of each year together: the plan against staying on petrol. */
    public List<Double> net() {
        return sums(kind -> true);
    }

    /** The plan's own costs of each year, paid being above 0. */
    public List<Double> planCosts() {
        return sums(FlowKind::ofPlan).stream().map(amount -> 0 - amount).toList();
    }

    /** What staying on petrol would cost all crews, year by year. */
    public List<Double> petrolOfAll() {
        return sums(kind -> kind == FlowKind.PETROL_SAVED || kind == FlowKind.PETROL_EITHER_WAY);
    }

    /** Whether anything is known of what petrol would cost. */
    public boolean petrolKnown() {
        return petrolOfAll().stream().anyMatch(amount -> amount > 0);
    }

    private List<Double> sums(Predicate<FlowKind> wanted) {
        List<Double> sums = new ArrayList<>();
        for (int year : IntStream.rangeClosed(0, horizonYears()).toArray()) {
            sums.add(byKind.entrySet().stream()
                    .filter(flow -> wanted.test(flow.getKey()))
                    .mapToDouble(flow -> flow.getValue().get(year))
                    .sum());
        }
        return List.copyOf(sums);
    }
}
