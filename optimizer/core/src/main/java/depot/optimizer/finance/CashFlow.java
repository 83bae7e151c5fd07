package depot.optimizer.finance;

import depot.optimizer.plan.CostLine.Category;
import depot.optimizer.plan.DayPlan;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.EnergyUse;
import depot.optimizer.plan.FleetCost;
import depot.optimizer.plan.Plan;
import depot.optimizer.scenario.Depot;
import depot.optimizer.scenario.FinanceTerms;
import depot.optimizer.scenario.Scenario;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashSet;
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
     * @throws IllegalArgumentException if the plan names a depot or an item that the scenario does not list
     */
    public static CashFlow of(Scenario scenario, Plan plan) {
        PresentCost money = PresentCost.of(scenario);
        FinanceTerms terms = scenario.finance();
        YearFlows flows = new YearFlows(money);
        for (DepotPlan depot : plan.depots()) {
            PresentCost ofPhase = money(scenario, depot.phase());
            for (PricedLine line : lines(scenario, plan, depot)) {
                add(flows, ofPhase, line);
                addEitherWay(flows, ofPhase, line);
            }
        }
        for (FleetCost cost : plan.fleetCosts()) {
            addFleetCost(flows, scenario, cost);
        }
        for (String phase : plan.phases()) {
            List<DepotPlan> depots = plan.depots().stream()
                    .filter(depot -> depot.phase().equals(phase))
                    .toList();
            addPetrol(flows, money(scenario, phase), terms, crews(scenario, depots), kwhPerYear(depots));
        }
        new TaxFlows(flows, money.horizonYears(), terms.taxRate(), terms.writeOffs()).add();
        return new CashFlow(money, flows.byKind());
    }

    private static PresentCost money(Scenario scenario, String phase) {
        return PresentCost.of(scenario, scenario.coupling().phase(phase));
    }

    /** What a depot's plan pays for in its phase. */
    public static List<PricedLine> lines(Scenario scenario, Plan fleet, DepotPlan plan) {
        Map<String, Depot> depots =
                scenario.depots().stream().collect(Collectors.toMap(Depot::id, Function.identity()));
        Depot depot = depots.get(plan.depot());
        if (depot == null) {
            throw new IllegalArgumentException("The scenario has no depot '" + plan.depot() + "'.");
        }
        int phase = scenario.coupling().phaseNumber(plan.phase()) + 1;
        return DepotCosts.of(DepotPrices.of(scenario, depot), phase, plan, fleet.before(plan));
    }

    /** What the crews that work with packs by the plans of one phase would burn and cost on petrol. */
    public static List<CrewPetrol> crews(Scenario scenario, List<DepotPlan> depots) {
        Set<String> changed = new HashSet<>();
        for (DepotPlan depot : depots) {
            depot.crews(scenario).forEach(crew -> changed.add(crew.id()));
            depot.onPetrol().forEach(changed::remove);
        }
        return CrewPetrol.of(scenario, changed);
    }

    /** Energy drawn from the grid for charging in a year of one phase, in kWh. */
    public static double kwhPerYear(List<DepotPlan> depots) {
        double sum = 0;
        for (DepotPlan depot : depots) {
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

    /** Quantity prices change what is paid at the purchase, and with it what the pieces are worth at the end; so do spare pieces. */
    private static void addFleetCost(YearFlows flows, Scenario scenario, FleetCost cost) {
        PresentCost ofPhase = money(scenario, cost.phase());
        for (Payment payment : FleetOutlays.of(scenario, cost).payments(ofPhase)) {
            flows.add(FlowKind.ofFleet(payment.reason()), payment.years(), -cost.pieces() * payment.amount());
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
        List<Double> ofPhase = money.growing(0);
        for (int year = 1; year <= money.horizonYears(); year++) {
            flows.add(FlowKind.PETROL_SAVED, year, fuel * petrolPrice.get(year - 1) + upkeep * ofPhase.get(year - 1));
            flows.add(FlowKind.CARBON_SAVED, year, carbon * ofPhase.get(year - 1));
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
