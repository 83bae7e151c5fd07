package depot.optimizer.solve;

import depot.optimizer.scenario.ChargerType;
import depot.optimizer.scenario.Scenario;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.Predicate;

/**
 * Runs a day in every possible way with a given number of chargers of each type, handover by handover: what goes into which charger, and what each trip
 * takes. Written from the rules of the trade; it shares nothing with the model. Ways that end in the same state keep only the cheapest.
 *
 * <p>Two shortenings are safe. A batch of full packs is collected as soon as it is done: that frees the bays and costs nothing. No trip takes a pack
 * that it does not need: the pack is better left at the depot.
 */
final class DayOracle {

    /** What is in a charger until a handover; packs by type. */
    private record Busy(int charger, int end, List<Integer> full, List<Integer> eighty) {}

    /**
     * @param surplus full packs collected so far less those taken, by type; negative: from the stock
     * @param stock packs that must be there in the morning
     * @param used charges of the day
     * @param away packs that each trip has on board
     */
    private record State(
            List<Integer> surplus,
            List<Integer> eighty,
            List<Integer> empty,
            List<Integer> stock,
            List<Integer> used,
            List<List<Integer>> away,
            List<Busy> busy) {}

    /** One end of a day: packs of the stock, charges, energy and shortage of a year. */
    record Ending(List<Integer> stock, List<Integer> used, double energyPerYear, double shortKwhPerYear) {}

    private record Flow(double energy, double shortKwh) {}

    private final Scenario scenario;
    private final List<OracleTrip> trips;
    private final BatchOracle batches;
    private final List<Integer> handovers;
    private final List<Integer> chargers;
    private final int types;
    private final double shortagePrice;
    private final Predicate<Ending> worthIt;
    private Map<State, Flow> states = new HashMap<>();

    /**
     * @param chargers how many there are of each type
     * @param worthIt whether something that costs no less than this may still be the cheapest
     */
    DayOracle(Scenario scenario, List<OracleTrip> trips, List<Integer> chargers, Predicate<Ending> worthIt) {
        this.worthIt = worthIt;
        this.scenario = scenario;
        this.trips = trips;
        this.chargers = chargers;
        types = scenario.packTypes().size();
        shortagePrice = scenario.shortageCostPerKwh().orElseThrow().doubleValue();
        int start = trips.stream().mapToInt(OracleTrip::leave).min().orElseThrow();
        TreeSet<Integer> times = new TreeSet<>(List.of(start, start + 1440));
        trips.forEach(trip -> times.addAll(List.of(trip.leave(), trip.back())));
        handovers = List.copyOf(times);
        batches = new BatchOracle(scenario, trips, handovers);
    }

    List<Ending> endings() {
        List<Integer> none = Collections.nCopies(types, 0);
        states.put(
                new State(none, none, none, none, none, Collections.nCopies(trips.size(), none), List.of()),
                new Flow(0, 0));
        for (int at : handovers) {
            Map<State, Flow> before = states;
            states = new HashMap<>();
            before.forEach((state, flow) -> load(returned(collected(state, at), at), flow, at, 0, List.of()));
        }
        List<Ending> endings = new ArrayList<>();
        states.forEach((state, flow) -> {
            boolean settled = state.busy().isEmpty()
                    && BatchOracle.sum(state.empty()) == 0
                    && BatchOracle.sum(state.eighty()) == 0;
            if (settled) {
                endings.add(ending(state, flow));
            }
        });
        return endings;
    }

    /** What the day would come to if it ended here: it can only get dearer. */
    private static Ending ending(State state, Flow flow) {
        return new Ending(state.stock(), state.used(), flow.energy(), flow.shortKwh());
    }

    private static List<Integer> plus(List<Integer> a, List<Integer> b, int sign) {
        List<Integer> sum = new ArrayList<>();
        for (int i = 0; i < a.size(); i++) {
            sum.add(a.get(i) + sign * b.get(i));
        }
        return sum;
    }

    private static State collected(State s, int at) {
        List<Integer> surplus = s.surplus();
        List<Integer> eighty = s.eighty();
        List<Busy> busy = new ArrayList<>();
        for (Busy charger : s.busy()) {
            if (charger.end() == at) {
                surplus = plus(surplus, charger.full(), 1);
                eighty = plus(eighty, charger.eighty(), 1);
            } else {
                busy.add(charger);
            }
        }
        return new State(surplus, eighty, s.empty(), s.stock(), s.used(), s.away(), busy);
    }

    private State returned(State s, int at) {
        List<Integer> empty = s.empty();
        List<List<Integer>> away = new ArrayList<>(s.away());
        for (int t = 0; t < trips.size(); t++) {
            if (trips.get(t).back() == at) {
                empty = plus(empty, away.get(t), 1);
                away.set(t, Collections.nCopies(types, 0));
            }
        }
        return new State(s.surplus(), s.eighty(), empty, s.stock(), s.used(), away, s.busy());
    }

    /** Tries everything in the free chargers from one type on; chargers of a type are alike, so that their fillings fall in order. */
    private void load(State s, Flow flow, int at, int type, List<Integer> noMoreThan) {
        if (type == chargers.size()) {
            depart(s, flow, at, 0);
            return;
        }
        load(s, flow, at, type + 1, List.of());
        long taken = s.busy().stream().filter(b -> b.charger() == type).count();
        if (taken == chargers.get(type) || BatchOracle.sum(s.empty()) == 0) {
            return;
        }
        ChargerType charger = scenario.chargerTypes().get(type);
        for (List<Integer> content : batches.fillings(s.empty(), charger.bays(), at)) {
            if (!noMoreThan.isEmpty() && inOrder().compare(content, noMoreThan) > 0) {
                continue;
            }
            List<Integer> full = content.subList(0, types);
            List<Integer> eighty = content.subList(types, 2 * types);
            for (int end : batches.ends(charger, full, eighty, at)) {
                List<Busy> busy = new ArrayList<>(s.busy());
                busy.add(new Busy(type, end, full, eighty));
                busy.sort(Comparator.comparing(Busy::toString));
                List<Integer> empty = plus(plus(s.empty(), full, -1), eighty, -1);
                State next = new State(s.surplus(), s.eighty(), empty, s.stock(), s.used(), s.away(), busy);
                Flow more = new Flow(flow.energy() + batches.energy(charger, full, eighty, at), flow.shortKwh());
                if (worthIt.test(ending(next, more))) {
                    load(next, more, at, type, content);
                }
            }
        }
    }

    private static Comparator<List<Integer>> inOrder() {
        return Comparator.comparing(List::toString);
    }

    /** Tries everything that each trip that leaves now may take. */
    private void depart(State s, Flow flow, int at, int trip) {
        if (trip == trips.size()) {
            states.merge(s, flow, this::cheaper);
            return;
        }
        if (trips.get(trip).leave() != at) {
            depart(s, flow, at, trip + 1);
            return;
        }
        for (OracleTrip.Taken taken : trips.get(trip).choices()) {
            List<Integer> eighty = plus(s.eighty(), taken.eighty(), -1);
            if (eighty.stream().allMatch(count -> count >= 0)) {
                List<Integer> packs = plus(taken.full(), taken.eighty(), 1);
                List<Integer> surplus = plus(s.surplus(), taken.full(), -1);
                List<Integer> stock = new ArrayList<>();
                for (int p = 0; p < types; p++) {
                    stock.add(Math.max(s.stock().get(p), -surplus.get(p)));
                }
                List<List<Integer>> away = new ArrayList<>(s.away());
                away.set(trip, packs);
                State next = new State(surplus, eighty, s.empty(), stock, plus(s.used(), packs, 1), away, s.busy());
                double shortKwh = taken.shortWh() / 1000 * batches.daysPerYear();
                Flow more = new Flow(flow.energy(), flow.shortKwh() + shortKwh);
                if (worthIt.test(ending(next, more))) {
                    depart(next, more, at, trip + 1);
                }
            }
        }
    }

    private Flow cheaper(Flow a, Flow b) {
        double difference = a.energy() - b.energy() + shortagePrice * (a.shortKwh() - b.shortKwh());
        return difference <= 0 ? a : b;
    }
}
