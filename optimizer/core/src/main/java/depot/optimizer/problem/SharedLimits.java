package depot.optimizer.problem;

import depot.optimizer.problem.SharedLimit.Kind;
import depot.optimizer.scenario.Coupling;
import depot.optimizer.scenario.Crew;
import depot.optimizer.scenario.Phase;
import depot.optimizer.scenario.PriceTier;
import depot.optimizer.scenario.Scenario;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Lists what the depots of a scenario share. */
public final class SharedLimits {

    private final Scenario scenario;
    private final Coupling coupling;
    private final List<SharedLimit> limits = new ArrayList<>();

    private final VisitBook visits;

    private SharedLimits(Scenario scenario, VisitBook visits) {
        this.scenario = scenario;
        this.visits = visits;
        coupling = scenario.coupling();
    }

    /** Every shared limit, phase by phase; empty where nothing couples the depots. */
    public static List<SharedLimit> of(Scenario scenario) {
        return of(scenario, VisitBook.of(scenario, new KindsOfDay(scenario)));
    }

    static List<SharedLimit> of(Scenario scenario, VisitBook visits) {
        SharedLimits all = new SharedLimits(scenario, visits);
        for (Phase phase : all.coupling.phases()) {
            all.addPhase(phase);
        }
        all.coupling.moves().forEach(move -> all.add(Kind.MOVES, "", move.item(), false, 0));
        return List.copyOf(all.limits);
    }

    private void addPhase(Phase phase) {
        phase.budget().ifPresent(budget -> add(Kind.BUDGET, phase.id(), "", false, budget.doubleValue()));
        coupling.regionBudgets().stream()
                .filter(budget -> budget.phase().equals(phase.id()))
                .forEach(budget -> add(
                        Kind.REGION_BUDGET,
                        phase.id(),
                        budget.region(),
                        false,
                        budget.budget().doubleValue()));
        coupling.deliveryLimits().stream()
                .filter(limit -> limit.phase().equals(phase.id()))
                .forEach(limit -> add(Kind.DELIVERY, phase.id(), limit.item(), false, limit.count()));
        coupling.priceTiers().stream()
                .map(PriceTier::item)
                .distinct()
                .forEach(item -> add(Kind.QUANTITY, phase.id(), item, false, 0));
        for (Crew crew : scenario.crews()) {
            if (scenario.basesOf(crew).size() > 1
                    && !before(phase, coupling.conversionOf(crew.id()).earliestPhase())) {
                Optional<String> latest = coupling.conversionOf(crew.id()).latestPhase();
                boolean must = latest.isPresent() && !before(phase, latest.get());
                add(Kind.CREW, phase.id(), crew.id(), must, 1);
            }
        }
        visits.services(phase.id()).forEach(service -> add(Kind.VISIT, phase.id(), service.key(), false, 0));
    }

    private boolean before(Phase phase, String other) {
        return coupling.phaseNumber(phase.id()) < coupling.phaseNumber(other);
    }

    private void add(Kind kind, String phase, String subject, boolean equation, double most) {
        limits.add(new SharedLimit(kind, phase, subject, equation, most));
    }
}
