package depot.optimizer.check;

import depot.optimizer.dictionary.RouteTables.Stops;
import depot.optimizer.dictionary.Settings;
import depot.optimizer.dictionary.TimeSyntax;
import depot.optimizer.scenario.CrewBase;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The rule that makes days independent of each other. */
final class CycleRules {
    private static final int DAY = 24 * 60;

    private CycleRules() {}

    /**
     * Every crew is back before the depot's next day begins: with E the earliest departure of the depot over all seasons,
     * days and crews, rounded down to a handover, the last return, rounded up to a handover, is at most E + 24 h. It holds
     * at each depot for all the crews that could work from it, so that it holds wherever they do.
     */
    static void backBeforeNextDay(Drafts drafts, Findings findings) {
        Optional<Integer> step = drafts.settings.flatMap(row -> row.find(Settings.HANDOVER_MINUTES));
        if (step.isEmpty()) {
            return;
        }
        List<Route> routes = drafts.routes();
        Map<String, Set<String>> bases = bases(drafts);
        Map<String, Integer> earliest = new HashMap<>();
        for (Route route : routes) {
            int leave = route.first().value().leaveMinute();
            bases.get(route.crew().id()).forEach(depot -> earliest.merge(depot, leave, Math::min));
        }
        for (Route route : routes) {
            int back = -Math.floorDiv(-route.last().value().arriveMinute(), step.get()) * step.get();
            for (String depot : bases.get(route.crew().id())) {
                int start = Math.floorDiv(earliest.get(depot), step.get()) * step.get();
                if (back > start + DAY) {
                    backTooLate(route, depot, start, findings);
                }
            }
        }
    }

    private static void backTooLate(Route route, String depot, int start, Findings findings) {
        findings.error(
                route.last(),
                Stops.ARRIVE,
                route.words() + " is back after the next day has begun at depot " + depot
                        + ", where the earliest departure of any day is " + TimeSyntax.text(start)
                        + " (to a handover)",
                "end the day by " + TimeSyntax.text(start + DAY) + ", or split it into two days");
    }

    /** Depots that each crew could work from, its own first. */
    private static Map<String, Set<String>> bases(Drafts drafts) {
        Map<String, Set<String>> bases = new HashMap<>();
        drafts.crewsById.forEach((id, crew) ->
                bases.put(id, new LinkedHashSet<>(Set.of(crew.value().depot()))));
        for (Located<CrewBase> base : drafts.crewBases) {
            // A crew or depot that is not there is told by the rule of references.
            if (drafts.depotsById.containsKey(base.value().depot())) {
                Optional.ofNullable(bases.get(base.value().crew()))
                        .ifPresent(depots -> depots.add(base.value().depot()));
            }
        }
        return bases;
    }
}
