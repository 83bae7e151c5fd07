package depot.optimizer.check;

import depot.optimizer.dictionary.RouteTables.Stops;
import depot.optimizer.dictionary.Settings;
import depot.optimizer.dictionary.TimeSyntax;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The rule that makes days independent of each other. */
final class CycleRules {
    private static final int DAY = 24 * 60;

    private CycleRules() {}

    /**
     * Every crew is back before the depot's next day begins: with E the earliest departure of the depot over all seasons,
     * days and crews, rounded down to a handover, the last return, rounded up to a handover, is at most E + 24 h.
     */
    static void backBeforeNextDay(Drafts drafts, Findings findings) {
        Optional<Integer> step = drafts.settings.flatMap(row -> row.find(Settings.HANDOVER_MINUTES));
        if (step.isEmpty()) {
            return;
        }
        List<Route> routes = drafts.routes();
        Map<String, Integer> earliest = new HashMap<>();
        routes.forEach(route ->
                earliest.merge(route.crew().depot(), route.first().value().leaveMinute(), Math::min));
        for (Route route : routes) {
            int start = Math.floorDiv(earliest.get(route.crew().depot()), step.get()) * step.get();
            int back = -Math.floorDiv(-route.last().value().arriveMinute(), step.get()) * step.get();
            if (back > start + DAY) {
                findings.error(
                        route.last(),
                        Stops.ARRIVE,
                        route.words() + " is back after the next day has begun at depot "
                                + route.crew().depot() + ", where the earliest departure of any day is "
                                + TimeSyntax.text(start) + " (to a handover)",
                        "end the day by " + TimeSyntax.text(start + DAY) + ", or split it into two days");
            }
        }
    }
}
