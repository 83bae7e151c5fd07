package depot.optimizer.advice.thumb;

import depot.optimizer.plan.ChargerLoad.Loaded;
import depot.optimizer.plan.DayPlan;
import depot.optimizer.plan.PackStock;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.scenario.Crew;
import depot.optimizer.scenario.PackType;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The packs of all crews by pool, and how fast they wear. */
final class ThumbStock {

    private final DepotProblem problem;
    private final Map<String, Map<String, Integer>> packs;
    private final Map<String, FamilyChoice> families;

    /**
     * @param packs by crew and family
     */
    ThumbStock(DepotProblem problem, Map<String, Map<String, Integer>> packs, Map<String, FamilyChoice> families) {
        this.problem = problem;
        this.packs = packs;
        this.families = families;
    }

    /** Packs by pool and type; those that are there already count first. */
    List<PackStock> stocks(List<DayPlan> days) {
        List<PackStock> stocks = new ArrayList<>();
        families.forEach((family, choice) -> {
            int all = packs.values().stream()
                    .mapToInt(crew -> crew.getOrDefault(family, 0))
                    .sum();
            double replaced = replacedPerYear(choice.pack(), all, days);
            for (String pool : problem.pools()) {
                int count = problem.crews().stream()
                        .filter(crew -> problem.poolOf(crew.id()).equals(pool))
                        .map(Crew::id)
                        .mapToInt(crew -> packs.getOrDefault(crew, Map.of()).getOrDefault(family, 0))
                        .sum();
                if (count > 0) {
                    String id = choice.pack().id();
                    String owner = pool.equals(problem.depot().id()) ? "" : pool;
                    int owned = Math.min(count, problem.ownedCount(id, owner));
                    stocks.add(new PackStock(pool, id, count, owned, replaced * count / all));
                }
            }
        });
        return List.copyOf(stocks);
    }

    /** The faster of wear by age and by charges. */
    private static double replacedPerYear(PackType pack, int count, List<DayPlan> days) {
        double charges = 0;
        for (DayPlan day : days) {
            charges += day.daysPerYear()
                    * day.loads().stream()
                            .flatMap(load -> load.packs().stream())
                            .filter(loaded -> loaded.packType().equals(pack.id()))
                            .mapToInt(Loaded::count)
                            .sum();
        }
        return Math.max(count / pack.calendarYears(), charges / pack.cycleLife());
    }
}
