package depot.optimizer.report.table;

import depot.optimizer.dictionary.SweepFields;
import depot.optimizer.finance.PresentCost;
import depot.optimizer.report.text.Figures;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.sweep.DepotOutcome;
import depot.optimizer.sweep.FleetOutcome;
import depot.optimizer.sweep.spec.Sharing;
import java.math.BigDecimal;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * What the tables say about the plan of a case.
 *
 * @param cost present cost over the horizon; where shortage is forbidden, energy not covered has no price and is left out
 * @param atOnce what is paid when the first phase begins, installation included
 * @param bound no plan costs less; empty: nothing is proven, because purchases were kept, or the bound counts a shortage that has no price
 * @param gap share of the cost that the bound leaves open
 * @param gapOpen whether the gap is wider than asked for
 * @param daysMet depot days of a year on which all work is done
 * @param days depot days of a year with work
 * @param shortKwh energy not covered in a year
 * @param petrol present value of the petrol that the crews no longer burn
 * @param status in plain words
 * @param ending how the case ends
 */
public record CaseFigures(
        double cost,
        BigDecimal atOnce,
        OptionalDouble bound,
        OptionalDouble gap,
        boolean gapOpen,
        double daysMet,
        double days,
        double shortKwh,
        double petrol,
        String status,
        Ending ending) {

    /** How a case ends. */
    public enum Ending {
        /** Every day is met, and the replay agrees. */
        MET,
        /** Some work is not covered, as the plan says. */
        SHORT,
        /** The replay finds a rule broken. */
        FAILED
    }

    /** The figures of a fleet's plans. */
    static CaseFigures of(Scenario scenario, FleetOutcome fleet, SweepFields.Purchases purchases) {
        double met = fleet.sum(DepotOutcome::daysMet);
        double days = met + fleet.sum(DepotOutcome::daysShort) + fleet.sum(DepotOutcome::daysFailed);
        double shortKwh = fleet.sum(DepotOutcome::shortKwh);
        double penalty = fleet.penalty(scenario);
        boolean bounded = purchases == SweepFields.Purchases.ANEW && penalty == 0;
        Ending ending = !fleet.proven() ? Ending.FAILED : met < days - 1e-6 ? Ending.SHORT : Ending.MET;
        return new CaseFigures(
                fleet.cost() - penalty,
                atOnce(scenario, fleet),
                bounded ? OptionalDouble.of(fleet.bound()) : OptionalDouble.empty(),
                bounded ? OptionalDouble.of(fleet.gap()) : OptionalDouble.empty(),
                bounded && fleet.gap() > scenario.solve().relativeGap() + 1e-9,
                met,
                days,
                shortKwh,
                petrol(scenario, fleet),
                status(ending, fleet, met, days, shortKwh),
                ending);
    }

    private static BigDecimal atOnce(Scenario scenario, FleetOutcome fleet) {
        return RolloutTable.steps(new Catalog(scenario), fleet.plan()).stream()
                .findFirst()
                .map(RolloutTable.Step::spent)
                .orElse(BigDecimal.ZERO);
    }

    private static double petrol(Scenario scenario, FleetOutcome fleet) {
        double ofAll = scenario.crews().stream()
                        .mapToDouble(crew -> crew.petrolCostPerYear().doubleValue())
                        .sum()
                * PresentCost.of(scenario).annuity();
        return Sharing.joined(scenario) ? ofAll - fleet.petrol() : ofAll;
    }

    private static String status(Ending ending, FleetOutcome fleet, double met, double days, double shortKwh) {
        return switch (ending) {
            case MET -> "every day met";
            case SHORT ->
                "short on %s of %s a year, %s kWh"
                        .formatted(
                                Figures.read(days - met, 0),
                                Figures.count(Figures.read(days, 0), "depot day"),
                                Figures.read(shortKwh, 1));
            case FAILED ->
                "does not work: "
                        + Stream.concat(
                                        fleet.troubles().stream(),
                                        fleet.depots().stream()
                                                .filter(depot -> !depot.proven())
                                                .map(depot -> depot.plan().depot() + ", " + depot.trouble()))
                                .findFirst()
                                .orElse("");
        };
    }

    /** The case's bound, or its cost where none is proven. */
    public double boundOrCost() {
        return bound.orElse(cost);
    }
}
