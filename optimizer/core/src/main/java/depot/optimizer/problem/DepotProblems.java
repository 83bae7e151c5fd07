package depot.optimizer.problem;

import depot.optimizer.finance.DepotPrices;
import depot.optimizer.finance.PresentCost;
import depot.optimizer.problem.DepotProblem.Billing;
import depot.optimizer.problem.DepotProblem.CircuitSite;
import depot.optimizer.problem.DepotProblem.MoveOffer;
import depot.optimizer.scenario.Circuit;
import depot.optimizer.scenario.Depot;
import depot.optimizer.scenario.MoveCost;
import depot.optimizer.scenario.Owned;
import depot.optimizer.scenario.Phase;
import depot.optimizer.scenario.Scenario;
import java.util.ArrayList;
import java.util.List;

/** Makes the sub-problems of each depot from a scenario. */
public final class DepotProblems {

    private final Scenario scenario;
    private final KindsOfDay kinds;
    private final VisitBook visits;
    private final List<SharedLimit> limits;

    /** Prepares the parts that all depots share. */
    public DepotProblems(Scenario scenario) {
        this.scenario = scenario;
        kinds = new KindsOfDay(scenario);
        visits = VisitBook.of(scenario, kinds);
        limits = SharedLimits.of(scenario, visits);
    }

    /** The depot over all phases, with the shared limits that concern it. */
    public DepotRollout rollout(Depot depot) {
        return new DepotRollout(
                scenario.coupling().phases().stream()
                        .map(phase -> of(depot, phase))
                        .toList(),
                limits.stream().filter(limit -> concerns(limit, depot)).toList());
    }

    private boolean concerns(SharedLimit limit, Depot depot) {
        return switch (limit.kind()) {
            case BUDGET, DELIVERY, QUANTITY, MOVES -> true;
            case REGION_BUDGET -> depot.region().filter(limit.subject()::equals).isPresent();
            case CREW ->
                kinds.mayHave(depot).stream().anyMatch(crew -> crew.id().equals(limit.subject()));
            case VISIT -> visits.concerns(limit, depot);
        };
    }

    /** The sub-problem of a depot in the first phase. */
    public DepotProblem of(Depot depot) {
        return of(depot, scenario.coupling().phases().get(0));
    }

    private DepotProblem of(Depot depot, Phase phase) {
        List<Circuit> circuits = scenario.circuits().stream()
                .filter(circuit -> circuit.depot().equals(depot.id()))
                .toList();
        PhaseCrews crews = new PhaseCrews(scenario, depot, phase);
        GridDay grid = new GridDay(scenario, depot, circuits);
        int start = kinds.start(depot);
        return new DepotProblem(
                depot,
                phase.id(),
                circuits.stream()
                        .map(c -> new CircuitSite(c, grid.peakBaseAmps(c)))
                        .toList(),
                crews.withPacks(),
                crews.petrolOnly(),
                scenario.packTypes(),
                ChargerOption.mounted(scenario),
                ChargerOption.portable(scenario),
                scenario.sharingUnitTypes(),
                scenario.powerBankTypes(),
                scenario.owned().stream()
                        .filter(row -> row.depot().equals(depot.id()))
                        .toList(),
                scenario.seasons(),
                crews.choice(),
                crews.mobile(),
                crews.mustChange(),
                phase.equals(scenario.coupling().phases().get(0)) ? moves(depot) : List.of(),
                scenario.packHealth(),
                scenario.packSharing(),
                start,
                kinds.of(
                        depot,
                        crews.withPacks(),
                        grid,
                        day -> visits.from(depot, phase.id(), day),
                        day -> visits.to(depot, phase.id(), day)),
                billing(depot, grid, start),
                PresentCost.of(scenario, phase),
                DepotPrices.shortagePerKwh(scenario),
                scenario.shortageCostPerKwh().isEmpty(),
                crews.baseCostPerYear(),
                crews.guestSavings(),
                List.of(),
                scenario.solve());
    }

    private List<MoveOffer> moves(Depot depot) {
        List<MoveOffer> offers = new ArrayList<>();
        for (MoveCost move : scenario.coupling().moves()) {
            int here = 0;
            int all = 0;
            for (Owned owned : scenario.owned()) {
                if (owned.item().equals(move.item()) && owned.crew().isEmpty()) {
                    all += owned.count();
                    here += owned.depot().equals(depot.id()) ? owned.count() : 0;
                }
            }
            if (all > 0) {
                offers.add(new MoveOffer(move.item(), move.cost().doubleValue(), here, all - here));
            }
        }
        return List.copyOf(offers);
    }

    private Billing billing(Depot depot, GridDay grid, int start) {
        return scenario.tariffTerms().stream()
                .filter(terms -> terms.tariff().equals(depot.tariff()))
                .findFirst()
                .map(terms -> new Billing(
                        terms.standingPerDay().doubleValue(),
                        terms.demandPricePerKwMonth().doubleValue(),
                        terms.demandMinutes(),
                        grid.peakBaseKw(start, terms.demandMinutes())))
                .orElse(new Billing(0, 0, 15, 0));
    }
}
