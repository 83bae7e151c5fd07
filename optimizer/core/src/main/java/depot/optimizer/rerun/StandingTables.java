package depot.optimizer.rerun;

import depot.optimizer.problem.SharedLimit;
import depot.optimizer.problem.SharedLimit.Kind;
import depot.optimizer.scenario.Circuit;
import depot.optimizer.scenario.Coupling;
import depot.optimizer.scenario.DeliveryLimit;
import depot.optimizer.scenario.Depot;
import depot.optimizer.scenario.Owned;
import depot.optimizer.scenario.PackSharing;
import depot.optimizer.scenario.Phase;
import depot.optimizer.scenario.RegionBudget;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.sweep.change.Couplings;
import depot.optimizer.sweep.change.Existing;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Tables in which everything that runs left is there already: pieces are owned, circuits and supplies exist, and limits of the phase that has begun are
 * what is left of them.
 */
public final class StandingTables {

    private final Scenario scenario;
    private final Standing standing;

    private StandingTables(Scenario scenario, Standing standing) {
        this.scenario = scenario;
        this.standing = standing;
    }

    /** The scenario with what stands; the scenario itself where nothing does. */
    public static Scenario of(Scenario scenario, Standing standing) {
        return standing.given() ? new StandingTables(scenario, standing).scenario() : scenario;
    }

    private Scenario scenario() {
        Set<String> candidates = scenario.circuits().stream()
                .filter(Circuit::candidate)
                .map(Circuit::id)
                .filter(standing.circuits()::contains)
                .collect(Collectors.toSet());
        Set<String> supplies = scenario.depots().stream()
                .filter(Depot::upgradeOffered)
                .map(Depot::id)
                .filter(standing.supplies()::contains)
                .collect(Collectors.toSet());
        Scenario there = Existing.of(scenario, owned(), candidates, supplies);
        return Couplings.of(Couplings.withoutSpentOffers(there), coupling(), scenario.horizonYears());
    }

    private List<Owned> owned() {
        List<Owned> rows = new ArrayList<>(scenario.owned());
        Set<String> known = Items.of(scenario);
        Map<Owned, Integer> more = new LinkedHashMap<>();
        standing.pieces().stream().filter(row -> known.contains(row.item())).forEach(row -> {
            Owned pooled = pooled(row);
            Owned key = new Owned(pooled.depot(), Optional.empty(), pooled.crew(), pooled.item(), 0);
            more.merge(key, row.count(), Integer::sum);
        });
        more.forEach((key, count) -> {
            if (count > 0) {
                rows.add(new Owned(key.depot(), key.circuit(), key.crew(), key.item(), count));
            } else {
                take(rows, key, -count);
            }
        });
        return rows;
    }

    /** Packs that were a crew's own are the depot's where its crews share them. */
    private Owned pooled(Owned row) {
        boolean pack = scenario.packTypes().stream().anyMatch(type -> type.id().equals(row.item()));
        return pack && scenario.packSharing() == PackSharing.DEPOT
                ? new Owned(row.depot(), Optional.empty(), Optional.empty(), row.item(), row.count())
                : row;
    }

    /** Pieces that have gone to other depots: the last rows lose them first. */
    private static void take(List<Owned> rows, Owned which, int pieces) {
        int left = pieces;
        for (int i = rows.size() - 1; i >= 0 && left > 0; i--) {
            Owned row = rows.get(i);
            boolean same = row.depot().equals(which.depot())
                    && row.crew().equals(which.crew())
                    && row.item().equals(which.item());
            if (same) {
                int taken = Math.min(left, row.count());
                left -= taken;
                if (taken == row.count()) {
                    rows.remove(i);
                } else {
                    rows.set(i, new Owned(row.depot(), row.circuit(), row.crew(), row.item(), row.count() - taken));
                }
            }
        }
    }

    private Coupling coupling() {
        Coupling coupling = scenario.coupling();
        return new Coupling(
                coupling.phases().stream()
                        .map(phase -> new Phase(
                                phase.id(),
                                phase.year(),
                                phase.budget().map(budget -> left(Kind.BUDGET, phase.id(), "", budget))))
                        .toList(),
                coupling.regionBudgets().stream()
                        .map(budget -> new RegionBudget(
                                budget.phase(),
                                budget.region(),
                                left(Kind.REGION_BUDGET, budget.phase(), budget.region(), budget.budget())))
                        .toList(),
                coupling.conversions(),
                coupling.priceTiers(),
                coupling.deliveryLimits().stream()
                        .map(limit -> new DeliveryLimit(
                                limit.item(),
                                limit.phase(),
                                left(Kind.DELIVERY, limit.phase(), limit.item(), BigDecimal.valueOf(limit.count()))
                                        .intValue()))
                        .toList(),
                coupling.moves());
    }

    private BigDecimal left(Kind kind, String phase, String subject, BigDecimal most) {
        double used = standing.begun().getOrDefault(new SharedLimit(kind, phase, subject, false, 0).name(), 0.0);
        return used == 0
                ? most
                : most.subtract(BigDecimal.valueOf(used).setScale(2, RoundingMode.HALF_EVEN))
                        .max(BigDecimal.ZERO);
    }
}
