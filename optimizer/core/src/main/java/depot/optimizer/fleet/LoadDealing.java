package depot.optimizer.fleet;

import depot.optimizer.plan.ChargerLoad;
import depot.optimizer.plan.ChargerLoad.Level;
import depot.optimizer.plan.ChargerLoad.Loaded;
import depot.optimizer.plan.ChargerPlacement;
import depot.optimizer.plan.DayPlan;
import depot.optimizer.problem.ChargeLevel;
import depot.optimizer.problem.ChargerOption;
import depot.optimizer.problem.DepotProblem;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Which packs go into which charger, and in which order, of the loads behind load-sharing units that stay until the end of the cycle. Loads of chargers
 * of one type that begin together may exchange packs: all that changes about the day is when each pack charges.
 */
final class LoadDealing {

    private final DepotProblem problem;
    private final Map<String, ChargerPlacement> placements;
    private final Map<String, ChargerOption> options;

    LoadDealing(DepotProblem problem, List<ChargerPlacement> chargers) {
        this.problem = problem;
        placements = chargers.stream().collect(Collectors.toMap(ChargerPlacement::id, Function.identity()));
        options = problem.chargers().stream()
                .collect(Collectors.toMap(option -> option.type().id(), Function.identity()));
    }

    /** Loads that may exchange packs, by place in the day. */
    Collection<List<Integer>> groups(DayPlan day) {
        Map<String, List<Integer>> groups = new LinkedHashMap<>();
        for (int i = 0; i < day.loads().size(); i++) {
            ChargerLoad load = day.loads().get(i);
            ChargerPlacement charger = placements.get(load.charger());
            if (charger.shared() && load.collectMinute() == problem.endMinute()) {
                groups.computeIfAbsent(charger.chargerType() + "@" + load.loadMinute(), key -> new ArrayList<>())
                        .add(i);
            }
        }
        return groups.values();
    }

    /** Packs that are put into a charger one after the other. */
    private static final class Seat {
        private final List<Loaded> packs = new ArrayList<>();
        private int minutes;

        int minutes() {
            return minutes;
        }

        int held() {
            return packs.size();
        }
    }

    /** Longest packs first, each to the charger with the least work of those with a free bay: all chargers have about as much to do. */
    DayPlan evenly(DayPlan day) {
        List<ChargerLoad> loads = new ArrayList<>(day.loads());
        for (List<Integer> group : groups(day)) {
            ChargerOption option = option(loads.get(group.get(0)));
            List<Loaded> packs = new ArrayList<>();
            List<Seat> seats = new ArrayList<>();
            for (int i : group) {
                packs.addAll(singly(loads.get(i)));
                seats.add(new Seat());
            }
            packs.sort(Comparator.comparingInt(pack -> -minutes(option, pack)));
            for (Loaded pack : packs) {
                Seat seat = seats.stream()
                        .filter(s -> s.held() < option.type().bays())
                        .min(Comparator.comparingInt(Seat::minutes).thenComparingInt(Seat::held))
                        .orElseThrow();
                seat.packs.add(pack);
                seat.minutes += minutes(option, pack);
            }
            for (int i = 0; i < seats.size(); i++) {
                loads.set(group.get(i), with(loads.get(group.get(i)), seats.get(i).packs));
            }
        }
        loads.removeIf(load -> load.packs().isEmpty());
        return day.withLoads(loads);
    }

    /** Every so many loads of a group charge their packs in the opposite order. */
    DayPlan turnedRound(DayPlan day, int every) {
        List<ChargerLoad> loads = new ArrayList<>(day.loads());
        for (List<Integer> group : groups(day)) {
            for (int n = 0; n < group.size(); n += every) {
                List<Loaded> packs = singly(loads.get(group.get(n)));
                Collections.reverse(packs);
                loads.set(group.get(n), with(loads.get(group.get(n)), packs));
            }
        }
        return day.withLoads(loads);
    }

    /**
     * The longest pack of a load changes places with the shortest of another of its group, or goes into a free bay there.
     *
     * @param from place of the load in the day
     * @param to place of the other
     * @return the same day where nothing is gained by it
     */
    DayPlan relieved(DayPlan day, int from, int to) {
        List<ChargerLoad> loads = new ArrayList<>(day.loads());
        ChargerOption option = option(loads.get(from));
        Comparator<Loaded> byMinutes = Comparator.comparingInt(pack -> minutes(option, pack));
        List<Loaded> giving = singly(loads.get(from));
        List<Loaded> taking = singly(loads.get(to));
        Loaded longest = Collections.max(giving, byMinutes);
        giving.remove(longest);
        if (taking.size() >= option.type().bays()) {
            Loaded shortest = Collections.min(taking, byMinutes);
            if (byMinutes.compare(shortest, longest) >= 0) {
                return day;
            }
            taking.remove(shortest);
            giving.add(shortest);
        }
        taking.add(longest);
        if (giving.isEmpty()) {
            return day;
        }
        loads.set(from, with(loads.get(from), giving));
        loads.set(to, with(loads.get(to), taking));
        return day.withLoads(loads);
    }

    /** A day in which two loads of a group, drawn at random, exchange packs drawn at random, or one of them charges its packs in another order. */
    DayPlan shuffled(DayPlan day, SplittableRandom random) {
        List<List<Integer>> groups = List.copyOf(groups(day));
        if (groups.isEmpty()) {
            return day;
        }
        List<Integer> group = groups.get(random.nextInt(groups.size()));
        int from = group.get(random.nextInt(group.size()));
        int to = group.get(random.nextInt(group.size()));
        List<ChargerLoad> loads = new ArrayList<>(day.loads());
        List<Loaded> giving = singly(loads.get(from));
        List<Loaded> taking = from == to ? giving : singly(loads.get(to));
        int a = random.nextInt(giving.size());
        int b = random.nextInt(taking.size());
        Loaded moved = giving.get(a);
        giving.set(a, taking.get(b));
        taking.set(b, moved);
        loads.set(from, with(loads.get(from), giving));
        loads.set(to, with(loads.get(to), taking));
        return day.withLoads(loads);
    }

    private ChargerOption option(ChargerLoad load) {
        return options.get(placements.get(load.charger()).chargerType());
    }

    private static int minutes(ChargerOption option, Loaded pack) {
        return option.fits().stream()
                .filter(fit -> fit.pack().id().equals(pack.packType()))
                .findFirst()
                .orElseThrow()
                .minutes(pack.level() == Level.FULL ? ChargeLevel.FULL : ChargeLevel.EIGHTY);
    }

    private static List<Loaded> singly(ChargerLoad load) {
        List<Loaded> packs = new ArrayList<>();
        for (Loaded some : load.packs()) {
            packs.addAll(Collections.nCopies(some.count(), counted(some, 1)));
        }
        return packs;
    }

    private static Loaded counted(Loaded pack, int count) {
        return new Loaded(pack.packType(), pack.pool(), pack.level(), count);
    }

    private static ChargerLoad with(ChargerLoad load, List<Loaded> packs) {
        List<Loaded> together = new ArrayList<>();
        for (Loaded pack : packs) {
            int last = together.size() - 1;
            if (last >= 0 && together.get(last).sameKind(pack)) {
                together.set(last, counted(pack, together.get(last).count() + 1));
            } else {
                together.add(pack);
            }
        }
        return new ChargerLoad(load.charger(), load.loadMinute(), load.collectMinute(), List.copyOf(together));
    }
}
