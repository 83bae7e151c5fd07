package depot.optimizer.sweep;

import depot.optimizer.scenario.Scenario;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What came of a case.
 *
 * @param scenario after the case's changes
 * @param fleet plans of all depots in the scenario's order, phase by phase; empty: there is no plan
 * @param touched depots that the changes touch
 * @param plansOf by depot: the case whose plan serves this one as well and costs no more than any found for it
 * @param unsearched depots for which nothing was searched, since plans and bounds of cases beside this one are within the gap
 * @param carried what the fleet as a whole has from other cases
 * @param noPlan why there is no plan, empty: there is one
 * @param least smallest value of the budget that is changed with which a plan can be paid for; empty: a plan was found, or it is not known
 */
public record CaseResult(
        SweepCase sweepCase,
        Scenario scenario,
        Optional<FleetOutcome> fleet,
        List<String> touched,
        SortedMap<String, String> plansOf,
        List<String> unsearched,
        Carried carried,
        String noPlan,
        OptionalDouble least) {

    /**
     * What holds for one case because it holds for another.
     *
     * @param planOf case whose plan serves this one as well and costs less; empty: none
     * @param boundOf case whose bound is higher and holds for this one as well; empty: none
     */
    public record Carried(String planOf, String boundOf) {
        /** Nothing. */
        public static final Carried NOTHING = new Carried("", "");
    }

    static CaseResult planned(SweepCase sweepCase, Scenario scenario, FleetOutcome fleet, List<String> touched) {
        return new CaseResult(
                sweepCase,
                scenario,
                Optional.of(fleet),
                touched,
                new TreeMap<>(),
                List.of(),
                Carried.NOTHING,
                "",
                OptionalDouble.empty());
    }

    static CaseResult unplanned(
            SweepCase sweepCase, Scenario scenario, List<String> touched, String noPlan, OptionalDouble least) {
        return new CaseResult(
                sweepCase,
                scenario,
                Optional.empty(),
                touched,
                new TreeMap<>(),
                List.of(),
                Carried.NOTHING,
                noPlan,
                least);
    }

    /** The same with plans that come from other cases. */
    CaseResult served(SortedMap<String, String> plans, List<String> notSearched) {
        return new CaseResult(sweepCase, scenario, fleet, touched, plans, notSearched, carried, noPlan, least);
    }

    /** Whether there is a plan. */
    public boolean planned() {
        return fleet.isPresent();
    }

    /** Plans of the depots, phase by phase. */
    public List<DepotOutcome> depots() {
        return fleet.map(FleetOutcome::depots).orElse(List.of());
    }

    /** Cost of a case with a plan, as in {@link FleetOutcome#pricedCost}. */
    public double cost() {
        return fleet.orElseThrow().pricedCost(scenario);
    }
}
