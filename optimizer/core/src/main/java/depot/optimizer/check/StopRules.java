package depot.optimizer.check;

import depot.optimizer.dictionary.CrewTables.Crews;
import depot.optimizer.dictionary.RouteTables.Stops;
import depot.optimizer.scenario.Crew;
import depot.optimizer.scenario.RouteStop;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** Rules of single stops, and notices about crews. */
final class StopRules {
    private StopRules() {}

    /** Mains at a crew's own depot are not made use of. */
    static void depotStops(Drafts drafts, Findings findings) {
        Map<String, String> byLowerCase = new HashMap<>();
        drafts.depotsById.keySet().forEach(id -> byLowerCase.put(id.toLowerCase(Locale.ROOT), id));
        for (Located<RouteStop> stop : drafts.stops) {
            Located<Crew> crew = drafts.crewsById.get(stop.value().crew());
            String place = stop.value().place();
            String depot = byLowerCase.get(place.toLowerCase(Locale.ROOT));
            if (crew == null || depot == null) {
                continue;
            }
            if (!drafts.depotsById.containsKey(place)) {
                findings.notice(stop, Stops.PLACE, "taken as a site, not as depot " + depot, "maybe " + depot);
            } else if (place.equals(crew.value().depot()) && stop.value().siteWatts() > 0) {
                findings.notice(stop, Stops.SITE_WATTS, "mains at a depot stop is not made use of", "leave it blank");
            }
        }
    }

    /** A crew without stops needs nothing. */
    static void crewsWithStops(Drafts drafts, Findings findings) {
        if (!drafts.table(Stops.TABLE).complete()) {
            return;
        }
        Set<String> busy = new HashSet<>();
        drafts.table(Stops.TABLE).rows().forEach(row -> row.find(Stops.CREW).ifPresent(busy::add));
        for (Located<Crew> crew : drafts.crews) {
            if (!busy.contains(crew.value().id())) {
                findings.notice(crew, Crews.CREW, "the crew has no stops", "nothing is planned for it");
            }
        }
    }
}
