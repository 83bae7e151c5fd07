package depot.optimizer.check;

import depot.optimizer.dictionary.RouteTables.Stops;
import depot.optimizer.dictionary.TimeSyntax;
import depot.optimizer.scenario.RouteStop;

/** Rules of a crew's day. */
final class RouteRules {
    private static final int MIDNIGHT = 24 * 60;

    private RouteRules() {}

    /** A day begins and ends at the crew's own depot. */
    static void beginsAndEndsAtDepot(Drafts drafts, Findings findings) {
        for (Route route : drafts.routes()) {
            if (route.stops().size() < 2) {
                findings.error(
                        route.first(),
                        Stops.STOP,
                        "the day of " + route.words() + " has one stop only",
                        "a day has at least the departure from the depot, a stop and the return");
                continue;
            }
            atDepot(route, route.first(), "begin", findings);
            atDepot(route, route.last(), "end", findings);
        }
    }

    private static void atDepot(Route route, Located<RouteStop> stop, String verb, Findings findings) {
        if (!route.atOwnDepot(stop)) {
            findings.error(
                    stop,
                    Stops.PLACE,
                    "the day of " + route.words() + " does not " + verb + " at its depot",
                    "make it " + route.crew().depot() + ", or add that stop");
        }
    }

    /** Only the first arrival and the last departure of a day may be blank; given ones equal the other time. */
    static void blankTimes(Drafts drafts, Findings findings) {
        for (Route route : drafts.routes()) {
            for (Located<RouteStop> stop : route.stops()) {
                boolean arrives = stop.row().find(Stops.ARRIVE).isPresent();
                boolean leaves = stop.row().find(Stops.LEAVE).isPresent();
                if (!arrives && !stop.equals(route.first())) {
                    findings.error(stop, Stops.ARRIVE, "the arrival is missing", "only a day's first stop has none");
                }
                if (!leaves && !stop.equals(route.last())) {
                    findings.error(stop, Stops.LEAVE, "the departure is missing", "only a day's last stop has none");
                }
            }
            sameTimes(route.first(), findings);
            sameTimes(route.last(), findings);
        }
    }

    private static void sameTimes(Located<RouteStop> stop, Findings findings) {
        if (stop.value().arriveMinute() < stop.value().leaveMinute()) {
            findings.error(
                    stop,
                    Stops.ARRIVE,
                    "a day does not begin or end with a stay at the depot",
                    "leave arrive blank on the first stop, and leave on the last");
        }
    }

    /** Times never fall along a day. */
    static void timesRise(Drafts drafts, Findings findings) {
        for (Route route : drafts.routes()) {
            Located<RouteStop> before = null;
            for (Located<RouteStop> stop : route.stops()) {
                if (stop.value().leaveMinute() < stop.value().arriveMinute()) {
                    findings.error(
                            stop,
                            Stops.LEAVE,
                            "leaves before it arrives, at "
                                    + TimeSyntax.text(stop.value().arriveMinute()),
                            "write times after midnight as 24:00 and later");
                }
                if (before != null
                        && stop.value().arriveMinute() < before.value().leaveMinute()) {
                    findings.error(
                            stop,
                            Stops.ARRIVE,
                            "arrives before it leaves stop " + before.value().stop() + " (line "
                                    + before.row().line() + ") at "
                                    + TimeSyntax.text(before.value().leaveMinute()),
                            "stops of a day are in order and do not overlap");
                }
                before = stop;
            }
        }
    }

    /** A day begins on its own date. */
    static void beginsBeforeMidnight(Drafts drafts, Findings findings) {
        for (Route route : drafts.routes()) {
            if (route.first().value().leaveMinute() >= MIDNIGHT) {
                findings.error(
                        route.first(),
                        Stops.LEAVE,
                        "the day of " + route.words() + " begins on the next day",
                        "give it the next day's name and times from 00:00");
            }
        }
    }

    /** Between two stops at its own depot a crew goes somewhere. */
    static void tripsGoSomewhere(Drafts drafts, Findings findings) {
        for (Route route : drafts.routes()) {
            for (int index = 1; index < route.stops().size(); index++) {
                Located<RouteStop> stop = route.stops().get(index);
                if (route.atOwnDepot(stop) && route.atOwnDepot(route.stops().get(index - 1))) {
                    findings.error(
                            stop,
                            Stops.PLACE,
                            "the stop before it is the same depot",
                            "make the two one stop with the first arrival and the last departure");
                }
            }
        }
    }
}
