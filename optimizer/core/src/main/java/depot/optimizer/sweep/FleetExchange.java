package depot.optimizer.sweep;

import depot.optimizer.dictionary.SweepFields.Purchases;
import depot.optimizer.plan.Plan;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.sweep.CaseResult.Carried;
import depot.optimizer.sweep.spec.Sharing;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Future;

/**
 * Lets cases whose depots are planned together use each other's plans and bounds, as {@link Exchange} does for depots by themselves. A plan serves when
 * it keeps the other case's limits at its prices: a replay decides. A bound holds for every case that differs in smaller budgets only, since what can
 * be done with these can be done with larger ones at the same cost. So neither cost nor bound rises with a budget.
 */
final class FleetExchange {

    /** Share of a cost that is rounding: much less than a coin, so that costs as they are written never rise with a budget. */
    private static final double ROUNDING = 1e-10;

    /** Energy below this is rounding, in kWh a year. */
    private static final double ROUNDING_KWH = 1e-6;

    private final Workshop workshop;
    private final Serving serving;
    private final List<CaseResult> cases;
    private final List<CaseResult> sources = new ArrayList<>();

    /**
     * @param base of the scenario as it is, whether its depots share something or not
     * @param found all with the plans that were found for them
     */
    FleetExchange(Workshop workshop, Scenario scenario, FleetOutcome base, List<CaseResult> found) {
        this.workshop = workshop;
        serving = new Serving(scenario);
        cases = found;
        sources.add(CaseResult.planned(Exchange.BASE, scenario, base, List.of()));
        found.stream().filter(FleetExchange::takesPart).forEach(sources::add);
    }

    private static boolean takesPart(CaseResult result) {
        return result.sweepCase().purchases() == Purchases.ANEW && Sharing.joined(result.scenario());
    }

    List<CaseResult> results() {
        List<Future<CaseResult>> futures = cases.stream()
                .map(each -> workshop.submit(() -> takesPart(each) ? improved(each) : each))
                .toList();
        return futures.stream().map(Workshop::await).toList();
    }

    private record Offer(String from, Plan plan) {
        double cost() {
            return plan.certificate().cost();
        }
    }

    private record Found(String from, FleetOutcome fleet) {}

    private CaseResult improved(CaseResult result) {
        Optional<Found> better = better(result);
        Optional<FleetOutcome> fleet = better.map(Found::fleet).or(result::fleet);
        if (fleet.isEmpty()) {
            return result;
        }
        double gap = result.scenario().solve().relativeGap();
        double own = result.fleet().map(FleetOutcome::bound).orElse(0.0);
        CaseResult highest = highestBound(result, own);
        boolean raised = highest != null;
        double bound = raised ? highest.fleet().orElseThrow().bound() : own;
        return new CaseResult(
                result.sweepCase(),
                result.scenario(),
                Optional.of(raised || better.isPresent() ? fleet.get().bounded(bound, gap) : fleet.get()),
                result.touched(),
                result.plansOf(),
                result.unsearched(),
                new Carried(
                        better.map(Found::from).orElse(""),
                        raised ? highest.sweepCase().name() : ""),
                "",
                OptionalDouble.empty());
    }

    /** The case whose bound holds here as well and is the highest, above a bound; null: none is above it. */
    private CaseResult highestBound(CaseResult result, double bound) {
        return sources.stream()
                .filter(other -> other.planned()
                        && Serving.alikeButForBudgets(
                                other.sweepCase().changes(), result.sweepCase().changes())
                        && Budgets.of(other.scenario()).allowAll(Budgets.of(result.scenario())))
                .max(Comparator.comparingDouble(
                        other -> other.fleet().orElseThrow().bound()))
                .filter(other -> other.fleet().orElseThrow().bound() > bound + ROUNDING * Math.abs(bound))
                .orElse(null);
    }

    /** The cheapest plan of another case that the replay lets pass. */
    private Optional<Found> better(CaseResult result) {
        FleetJob job = FleetJob.of(result.scenario());
        for (Offer offer : offers(result, job)) {
            FleetOutcome replayed = FleetOutcome.replayed(result.scenario(), offer.plan());
            double shortKwh =
                    result.fleet().map(own -> own.sum(DepotOutcome::shortKwh)).orElse(Double.POSITIVE_INFINITY);
            if (replayed.proven() && replayed.sum(DepotOutcome::shortKwh) <= shortKwh + ROUNDING_KWH) {
                return Optional.of(new Found(offer.from(), replayed));
            }
        }
        return Optional.empty();
    }

    private List<Offer> offers(CaseResult result, FleetJob job) {
        double limit = result.fleet()
                .map(own -> own.cost() - ROUNDING * Math.abs(own.cost()))
                .orElse(Double.POSITIVE_INFINITY);
        return sources.stream()
                .filter(other -> other.planned()
                        && !other.sweepCase().equals(result.sweepCase())
                        && serving.servesBudgetsAside(
                                other.sweepCase().changes(), result.sweepCase().changes()))
                .map(other -> new Offer(
                        other.sweepCase().name(),
                        RepricedFleet.of(job, other.fleet().orElseThrow().plan())))
                .filter(offer -> offer.cost() < limit)
                .sorted(Comparator.comparingDouble(Offer::cost))
                .toList();
    }
}
