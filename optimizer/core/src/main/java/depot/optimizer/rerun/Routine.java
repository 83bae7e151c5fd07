package depot.optimizer.rerun;

import depot.optimizer.plan.ChargerLoad;
import depot.optimizer.plan.ChargerLoad.Level;
import depot.optimizer.plan.DayPlan;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.SeasonDay;
import depot.optimizer.plan.TripPlan;
import depot.optimizer.rerun.RoutineChange.What;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * The daily routine of a depot: which charger is loaded when with which packs and when they are collected, and which packs a crew takes along. One line
 * for each loading and each trip, on each season day.
 */
public final class Routine {

    /** What a line is about: a charger and when it is loaded, or a crew and its trip. */
    private record Line(What what, String subject, int key) implements Comparable<Line> {
        @Override
        public int compareTo(Line other) {
            int byWhat = what.compareTo(other.what);
            int bySubject = byWhat != 0 ? byWhat : subject.compareTo(other.subject);
            return bySubject != 0 ? bySubject : Integer.compare(key, other.key);
        }
    }

    /** What a line says. */
    private record Told(int minute, String words) {}

    /** A change on any day. */
    private record Change(Line line, int minute, String before, String after) {}

    private final Map<SeasonDay, SortedMap<Line, Told>> lines = new LinkedHashMap<>();

    private Routine(Optional<DepotPlan> plan) {
        plan.ifPresent(depot -> depot.days()
                .forEach(day -> day.occurrences().forEach(occurrence -> lines.put(occurrence, lines(depot, day)))));
    }

    /**
     * Everything that changes, days that change alike together.
     *
     * @param before empty: there was no depot
     * @param after empty: there is none any more
     */
    public static List<RoutineChange> changes(Optional<DepotPlan> before, Optional<DepotPlan> after) {
        Map<Change, List<SeasonDay>> changes = new LinkedHashMap<>();
        Routine old = new Routine(before);
        Routine now = new Routine(after);
        List<SeasonDay> days = new ArrayList<>(now.lines.keySet());
        old.lines.keySet().stream().filter(day -> !days.contains(day)).forEach(days::add);
        for (SeasonDay day : days) {
            SortedMap<Line, Told> then = old.lines.getOrDefault(day, new TreeMap<>());
            compare(then, now.lines.getOrDefault(day, new TreeMap<>()))
                    .forEach(change -> changes.computeIfAbsent(change, none -> new ArrayList<>())
                            .add(day));
        }
        String depot = after.or(() -> before).map(DepotPlan::depot).orElse("");
        List<RoutineChange> list = new ArrayList<>();
        changes.forEach((change, on) -> list.add(new RoutineChange(
                depot,
                on,
                change.line().what(),
                change.line().subject(),
                change.minute(),
                change.before(),
                change.after())));
        return List.copyOf(list);
    }

    /** How many lines change, each season day counted by itself. */
    public static int count(List<RoutineChange> changes, What what) {
        return changes.stream()
                .filter(change -> change.what() == what)
                .mapToInt(change -> change.days().size())
                .sum();
    }

    private static List<Change> compare(SortedMap<Line, Told> before, SortedMap<Line, Told> after) {
        SortedMap<Line, Change> changes = new TreeMap<>();
        Told nothing = new Told(0, "");
        before.forEach((line, told) -> {
            Told now = after.getOrDefault(line, nothing);
            if (!told.words().equals(now.words())) {
                int minute = now.words().isEmpty() ? told.minute() : now.minute();
                changes.put(line, new Change(line, minute, told.words(), now.words()));
            }
        });
        after.forEach((line, told) -> {
            if (!before.containsKey(line)) {
                changes.put(line, new Change(line, told.minute(), "", told.words()));
            }
        });
        return List.copyOf(changes.values());
    }

    private static SortedMap<Line, Told> lines(DepotPlan plan, DayPlan day) {
        SortedMap<Line, Told> lines = new TreeMap<>();
        for (ChargerLoad load : day.loads()) {
            lines.put(
                    new Line(What.LOAD, load.charger(), load.loadMinute()),
                    new Told(load.loadMinute(), words(plan, load)));
        }
        for (TripPlan trip : day.trips()) {
            lines.put(new Line(What.KIT, trip.crew(), trip.trip()), new Told(trip.leaveMinute(), words(trip)));
        }
        return lines;
    }

    private static String words(DepotPlan plan, ChargerLoad load) {
        String packs = load.packs().stream()
                .map(packsOf -> "%d %s%s%s"
                        .formatted(
                                packsOf.count(),
                                packsOf.packType(),
                                packsOf.pool().equals(plan.depot()) ? "" : " of " + packsOf.pool(),
                                packsOf.level() == Level.FULL ? "" : " to 80 %"))
                .collect(Collectors.joining(", "));
        return packs + "; collected at " + clock(load.collectMinute());
    }

    private static String words(TripPlan trip) {
        return trip.carried().stream()
                .filter(carried -> carried.full() + carried.at80() > 0)
                .map(carried -> carried.at80() == 0
                        ? carried.full() + " " + carried.packType()
                        : "%d %s and %d at 80 %%".formatted(carried.full(), carried.packType(), carried.at80()))
                .collect(Collectors.joining(", "));
    }

    private static String clock(int minute) {
        int days = Math.floorDiv(minute, 1440);
        int ofDay = Math.floorMod(minute, 1440);
        return "%02d:%02d%s".formatted(ofDay / 60, ofDay % 60, days == 0 ? "" : " +" + days);
    }
}
