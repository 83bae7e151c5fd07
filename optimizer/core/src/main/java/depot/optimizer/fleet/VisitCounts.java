package depot.optimizer.fleet;

import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.DepotRollout;
import depot.optimizer.problem.SharedLimit;
import depot.optimizer.problem.SharedLimit.Kind;
import depot.optimizer.problem.Visit.Service;
import depot.optimizer.solve.SharedPrices;
import depot.optimizer.solve.UseRange;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;

/**
 * Settles how many packs each visiting crew gets charged, for its home and its host alike. At prices alone the one asks for more and the other for less
 * than the middle on which both agree.
 */
final class VisitCounts {

    private final List<DepotRollout> rollouts;

    /** Each limit with its home. */
    private final Map<SharedLimit, Integer> homes = new LinkedHashMap<>();

    /** Limits that are of use together: those of one crew, pack type and level on all days of all phases. A pack is spared when no day needs it. */
    private final Map<String, List<SharedLimit>> groups = new TreeMap<>();

    /** What crews count on where the search for prices ended. */
    private final Map<SharedLimit, Double> wanted = new LinkedHashMap<>();

    VisitCounts(List<DepotRollout> rollouts, List<SharedLimit> limits) {
        this.rollouts = rollouts;
        for (SharedLimit limit : limits) {
            for (int d = 0; d < rollouts.size() && limit.kind() == Kind.VISIT; d++) {
                for (DepotProblem problem : rollouts.get(d).phases()) {
                    for (Service service : problem.services()) {
                        if (limit.phase().equals(problem.phase())
                                && limit.subject().equals(service.key())) {
                            homes.put(limit, d);
                            String group = "%s %s %s"
                                    .formatted(
                                            service.visit().crew(),
                                            service.charge().pack().id(),
                                            service.charge().level());
                            groups.computeIfAbsent(group, key -> new ArrayList<>())
                                    .add(limit);
                        }
                    }
                }
            }
        }
    }

    boolean none() {
        return homes.isEmpty();
    }

    /**
     * Numbers to try first: the whole ones that are nearest to what a relaxation wanted, and none at all.
     *
     * @param found what the crews count on where the search for prices ended
     */
    List<Map<SharedLimit, Integer>> around(Map<SharedLimit, Double> found) {
        wanted.putAll(found);
        Map<SharedLimit, Integer> nearest = new LinkedHashMap<>();
        Map<SharedLimit, Integer> nothing = new LinkedHashMap<>();
        for (SharedLimit limit : homes.keySet()) {
            nearest.put(limit, (int) Math.rint(found.getOrDefault(limit, 0.0)));
            nothing.put(limit, 0);
        }
        return List.copyOf(new LinkedHashSet<>(List.of(nearest, nothing)));
    }

    /** Prices at which visits cost nothing: how many packs they are for is settled. */
    SharedPrices free(SharedPrices prices) {
        Map<SharedLimit, Double> others = new LinkedHashMap<>(prices.byLimit());
        others.keySet().removeAll(homes.keySet());
        return new SharedPrices(others);
    }

    /**
     * Some numbers and those beside them: for one crew and pack type after the other one more, or one less, on all days, those first of which a
     * relaxation wanted most.
     */
    List<Map<SharedLimit, Integer>> beside(Map<SharedLimit, Integer> packs) {
        List<Map<SharedLimit, Integer>> others = new ArrayList<>();
        others.add(packs);
        for (int step : new int[] {1, -1}) {
            for (List<SharedLimit> group : mostWantedFirst()) {
                Map<SharedLimit, Integer> changed = new LinkedHashMap<>(packs);
                group.forEach(limit -> changed.merge(limit, step, (a, b) -> Math.max(0, a + b)));
                if (!changed.equals(packs)) {
                    others.add(changed);
                }
            }
        }
        return others;
    }

    private List<List<SharedLimit>> mostWantedFirst() {
        return groups.values().stream()
                .sorted(Comparator.comparingDouble(group -> -group.stream()
                        .mapToDouble(limit -> wanted.getOrDefault(limit, 0.0))
                        .sum()))
                .toList();
    }

    /** What the crews count on in plans of their homes. */
    Map<SharedLimit, Integer> countedOn(List<FleetColumn> columns) {
        Map<SharedLimit, Integer> packs = new LinkedHashMap<>();
        for (FleetColumn column : columns) {
            homes.forEach((limit, home) -> {
                if (home == column.depot()) {
                    packs.put(limit, (int) Math.rint(column.use(limit)));
                }
            });
        }
        return packs;
    }

    /**
     * For each depot how much it may use of the limits when crews get so many packs: its own crews no more, others no less. Nothing for depots that no
     * change concerns.
     *
     * @param before numbers at which there are plans of all depots; empty: there are none yet
     */
    List<Map<SharedLimit, UseRange>> ranges(Map<SharedLimit, Integer> packs, Map<SharedLimit, Integer> before) {
        List<Map<SharedLimit, UseRange>> ranges = new ArrayList<>();
        for (int d = 0; d < rollouts.size(); d++) {
            int depot = d;
            Map<SharedLimit, UseRange> use = new LinkedHashMap<>();
            List<SharedLimit> own = rollouts.get(d).limits();
            if (own.stream().anyMatch(limit -> !Objects.equals(packs.get(limit), before.get(limit)))) {
                own.stream()
                        .filter(packs::containsKey)
                        .forEach(limit -> use.put(
                                limit,
                                homes.get(limit) == depot
                                        ? UseRange.upTo(packs.get(limit))
                                        : UseRange.exactly(-packs.get(limit))));
            }
            ranges.add(use);
        }
        return ranges;
    }
}
