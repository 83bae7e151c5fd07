package depot.optimizer.check;

import depot.optimizer.dictionary.DaysSyntax;
import depot.optimizer.dictionary.RouteTables.Stops;
import depot.optimizer.dictionary.RouteTables.WorkRows;
import depot.optimizer.scenario.Crew;
import depot.optimizer.scenario.RouteStop;
import depot.optimizer.scenario.Work;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiConsumer;

/** Rules of the work at stops. */
final class WorkRules {
    private static final double MINUTES = 60;

    /** Hours are often thirds written with two or three decimals. */
    private static final double ROUNDING_HOURS = 0.005;

    private WorkRules() {}

    private record StopKey(String season, String crew, int stop) {
        static StopKey of(RouteStop stop) {
            return new StopKey(stop.season(), stop.crew(), stop.stop());
        }

        static StopKey of(Work work) {
            return new StopKey(work.season(), work.crew(), work.stop());
        }
    }

    /** Work is done at a stop that is made on each of its days. */
    static void stopIsMade(Drafts drafts, Findings findings) {
        if (!drafts.table(Stops.TABLE).complete()) {
            return;
        }
        Set<String> broken = drafts.inBrokenRows(Stops.TABLE, Stops.CREW);
        Map<StopKey, List<Located<RouteStop>>> stops = stops(drafts);
        for (Located<Work> work : drafts.work) {
            // Season and crew that do not exist are told by the rule of references.
            if (broken.contains(work.value().crew())
                    || !drafts.crewsById.containsKey(work.value().crew())) {
                continue;
            }
            EnumSet<DayOfWeek> missing = EnumSet.copyOf(work.value().days());
            List<Located<RouteStop>> made = stops.getOrDefault(StopKey.of(work.value()), List.of());
            made.forEach(stop -> missing.removeAll(stop.value().days()));
            if (made.isEmpty()) {
                findings.error(
                        work,
                        WorkRows.STOP,
                        work.value().crew() + " makes no such stop in "
                                + work.value().season(),
                        "add it to stops.csv, or correct its number");
            } else if (!missing.isEmpty()) {
                findings.error(
                        work,
                        WorkRows.DAYS,
                        "the stop is not made on " + DaysSyntax.text(missing),
                        "name only days on which stops.csv has it");
            }
        }
    }

    /** No work is done at the crew's own depot, where trips begin and end. */
    static void notAtOwnDepot(Drafts drafts, Findings findings) {
        eachStopOfWork(drafts, (work, stop) -> {
            Located<Crew> crew = drafts.crewsById.get(work.value().crew());
            if (crew != null && crew.value().depot().equals(stop.value().place())) {
                findings.error(
                        work,
                        WorkRows.STOP,
                        "the stop is the crew's own depot",
                        "give work on the depot's grounds a stop with a name of its own");
            }
        });
    }

    /** A tool runs no longer than the stop lasts. */
    static void withinStop(Drafts drafts, Findings findings) {
        eachStopOfWork(drafts, (work, stop) -> {
            double hours = hours(stop.value());
            if (hours >= 0 && work.value().hours() > hours + ROUNDING_HOURS) {
                findings.error(
                        work,
                        WorkRows.HOURS,
                        "longer than the stop (stops.csv line " + stop.row().line() + "), " + hours + " h",
                        "several tools at once count as tools_at_once, not as more hours");
            }
        });
    }

    /** Tools used by turns run together no longer than the stop lasts. */
    static void turnsWithinStop(Drafts drafts, Findings findings) {
        Map<StopKey, List<Located<Work>>> byTurns = new HashMap<>();
        drafts.work.stream().filter(work -> work.value().toolsAtOnce() == 0).forEach(work -> byTurns.computeIfAbsent(
                        StopKey.of(work.value()), none -> new ArrayList<>())
                .add(work));
        for (Located<RouteStop> stop : drafts.stops) {
            List<Located<Work>> work = byTurns.getOrDefault(StopKey.of(stop.value()), List.of());
            if (work.size() > 1 && hours(stop.value()) >= 0) {
                stop.value().days().forEach(day -> turns(work, day, stop, findings));
            }
        }
    }

    private static void turns(List<Located<Work>> work, DayOfWeek day, Located<RouteStop> stop, Findings findings) {
        double sum = 0;
        double limit = hours(stop.value()) + ROUNDING_HOURS;
        for (Located<Work> turn : work) {
            double before = sum;
            if (turn.value().days().contains(day)) {
                sum += turn.value().hours();
            }
            boolean alone = turn.value().hours() > limit;
            if (sum > limit && before <= limit && !alone) {
                findings.error(
                        turn,
                        WorkRows.HOURS,
                        "tools used by turns run longer together than the stop (stops.csv line "
                                + stop.row().line() + "), " + hours(stop.value()) + " h",
                        "shorten them, or give tools that run together a tools_at_once of 1");
            }
        }
    }

    private static void eachStopOfWork(Drafts drafts, BiConsumer<Located<Work>, Located<RouteStop>> consumer) {
        Map<StopKey, List<Located<RouteStop>>> stops = stops(drafts);
        for (Located<Work> work : drafts.work) {
            for (Located<RouteStop> stop : stops.getOrDefault(StopKey.of(work.value()), List.of())) {
                if (!Collections.disjoint(work.value().days(), stop.value().days())) {
                    consumer.accept(work, stop);
                }
            }
        }
    }

    private static double hours(RouteStop stop) {
        return (stop.leaveMinute() - stop.arriveMinute()) / MINUTES;
    }

    private static Map<StopKey, List<Located<RouteStop>>> stops(Drafts drafts) {
        Map<StopKey, List<Located<RouteStop>>> stops = new HashMap<>();
        drafts.stops.forEach(stop -> stops.computeIfAbsent(StopKey.of(stop.value()), none -> new ArrayList<>(1))
                .add(stop));
        return stops;
    }
}
