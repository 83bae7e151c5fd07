package depot.optimizer.sweep;

import depot.optimizer.dictionary.SweepFields.Purchases;
import depot.optimizer.plan.Certificate;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.solve.NoPlanException;
import depot.optimizer.solve.RepricedPlan;
import depot.optimizer.sweep.SweepCase.Part;
import depot.optimizer.sweep.change.Change;
import depot.optimizer.sweep.spec.Sharing;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.Future;

/**
 * Lets cases use each other's plans. Plans are found within a gap of the best, so that the plan for a harder case may cost less than the one found for
 * an easier case, which it serves as well. Costs then neither fall where a case gets harder, nor does a change of prices make a plan dearer than keeping
 * the old one. A replay decides whether a plan serves; where its days do not fit, they are planned anew with what it buys.
 */
final class Exchange {

    /** Savings below this share of the cost are rounding. */
    private static final double ROUNDING = 1e-7;

    /** The base plan as a case without changes. */
    static final SweepCase BASE = new SweepCase(Part.CASE, "", SweepCase.BASE_NAME, Purchases.ANEW, List.of());

    private final Workshop workshop;
    private final Serving serving;
    private final List<CaseResult> cases;
    private final List<CaseResult> sources = new ArrayList<>();

    /**
     * @param found all with the plans that were found for them
     */
    Exchange(Workshop workshop, Scenario scenario, FleetOutcome base, List<CaseResult> found) {
        this.workshop = workshop;
        this.serving = new Serving(scenario);
        this.cases = found;
        sources.add(CaseResult.planned(BASE, scenario, base, List.of()));
        found.stream().filter(Exchange::takesPart).forEach(sources::add);
    }

    private static boolean takesPart(CaseResult result) {
        return result.planned()
                && result.sweepCase().purchases() == Purchases.ANEW
                && !Sharing.joined(result.scenario());
    }

    /** The base plan, with what serves it better. */
    FleetOutcome base() {
        CaseResult base = sources.get(0);
        return takesPart(base)
                ? improved(base).fleet().orElseThrow()
                : base.fleet().orElseThrow();
    }

    List<CaseResult> results() {
        List<Future<CaseResult>> futures = cases.stream()
                .map(each -> workshop.submit(() -> takesPart(each) ? improved(each) : each))
                .toList();
        return futures.stream().map(Workshop::await).toList();
    }

    private record Offer(String from, DepotPlan plan, DepotPlan repriced) {
        double cost() {
            return repriced.stop().certificate().cost();
        }
    }

    private CaseResult improved(CaseResult result) {
        List<Change> changes = result.sweepCase().changes();
        List<CaseResult> serving = sources.stream()
                .filter(other -> this.serving.serves(other.sweepCase().changes(), changes))
                .toList();
        List<DepotOutcome> depots = new ArrayList<>();
        SortedMap<String, String> plansOf = new TreeMap<>(result.plansOf());
        for (int d = 0; d < result.depots().size(); d++) {
            DepotOutcome own = result.depots().get(d);
            String depot = own.plan().depot();
            Optional<Better> better = better(result, own, offers(result, own, serving, d));
            better.ifPresent(found -> plansOf.put(depot, found.from()));
            depots.add(better.map(Better::outcome).orElse(own));
        }
        return new CaseResult(
                result.sweepCase(),
                result.scenario(),
                Optional.of(FleetOutcome.ofApart(result.scenario(), depots)),
                result.touched(),
                plansOf,
                result.unsearched(),
                CaseResult.Carried.NOTHING,
                "",
                OptionalDouble.empty());
    }

    private static List<Offer> offers(CaseResult result, DepotOutcome own, List<CaseResult> serving, int d) {
        List<Offer> offers = new ArrayList<>();
        DepotJob job = DepotJob.anew(result.scenario(), own.plan().depot());
        for (CaseResult other : serving) {
            DepotPlan plan = other.depots().get(d).plan();
            // A plan that nothing was searched for is another case's.
            boolean seen = other.unsearched().contains(plan.depot())
                    || plan.equals(own.plan())
                    || offers.stream().anyMatch(offer -> offer.plan().equals(plan));
            if (!seen) {
                offers.add(new Offer(other.sweepCase().name(), plan, RepricedPlan.of(job.problem(), plan)));
            }
        }
        double limit =
                own.certificate().cost() - ROUNDING * Math.abs(own.certificate().cost());
        offers.removeIf(offer -> offer.cost() >= limit);
        offers.sort(Comparator.comparingDouble(Offer::cost));
        return offers;
    }

    private record Better(String from, DepotOutcome outcome) {}

    /** The cheapest offer that the replay lets pass. */
    private Optional<Better> better(CaseResult result, DepotOutcome own, List<Offer> offers) {
        DepotJob job = offers.isEmpty()
                ? null
                : DepotJob.anew(result.scenario(), own.plan().depot());
        for (Offer offer : offers) {
            DepotOutcome asItIs = job.replayed(bounded(offer.repriced(), own, job));
            if (passes(asItIs, own)) {
                return Optional.of(new Better(offer.from(), asItIs));
            }
            try {
                DepotOutcome replanned = workshop.outcome(DepotJob.keeping(result.scenario(), offer.plan()));
                DepotOutcome kept = job.replayed(bounded(replanned.plan(), own, job));
                if (passes(kept, own)) {
                    return Optional.of(new Better(offer.from(), kept));
                }
            } catch (NoPlanException e) {
                // This offer does not serve; the next one may.
            }
        }
        return Optional.empty();
    }

    private static boolean passes(DepotOutcome offered, DepotOutcome own) {
        return offered.proven()
                && offered.certificate().cost() < own.certificate().cost() * (1 - ROUNDING)
                && offered.shortKwh() <= own.shortKwh() + ROUNDING;
    }

    /** The plan with what is proven about the case that it is to serve. */
    private static DepotPlan bounded(DepotPlan plan, DepotOutcome own, DepotJob job) {
        double cost = plan.stop().certificate().cost();
        double bound = Math.min(cost, own.certificate().bound());
        double gap = job.problem().settings().relativeGap();
        return plan.withStop(own.plan().stop().withCertificate(Certificate.of(cost, bound, gap)));
    }
}
