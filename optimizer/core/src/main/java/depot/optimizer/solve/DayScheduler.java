package depot.optimizer.solve;

import depot.optimizer.model.DayDecision;
import depot.optimizer.model.DayDecision.LoadDecision;
import depot.optimizer.model.DayDecision.SpanDecision;
import depot.optimizer.model.Feed;
import depot.optimizer.plan.ChargerLoad;
import depot.optimizer.plan.ChargerLoad.Level;
import depot.optimizer.plan.ChargerLoad.Loaded;
import depot.optimizer.plan.ChargerPlacement;
import depot.optimizer.problem.ChargeLevel;
import depot.optimizer.problem.DepotProblem;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Puts the packs of a day's batches into single chargers. Batches that wait behind units are spread so that each unit gets about the energy that the
 * model had it draw.
 */
final class DayScheduler {

    private final DepotProblem problem;
    private final List<ChargerPlacement> chargers;
    private final List<ChargerLoad> loads = new ArrayList<>();

    DayScheduler(DepotProblem problem, List<ChargerPlacement> chargers) {
        this.problem = problem;
        this.chargers = chargers;
    }

    /** Every loading of a charger, in order of time and place. */
    List<ChargerLoad> schedule(DayDecision day) {
        // Heavy batches first suits the units best. In order of time there is always a free charger.
        if (!fits(day, heavyFirst())) {
            loads.clear();
            if (!fits(day, Comparator.comparingInt(SpanDecision::from).thenComparingInt(SpanDecision::to))) {
                throw new IllegalStateException("the batches of a day do not fit the chargers of depot "
                        + problem.depot().id());
            }
        }
        loads.sort(Comparator.comparingInt(ChargerLoad::loadMinute).thenComparing(ChargerLoad::charger));
        return List.copyOf(loads);
    }

    /** Batches that draw at once in order of time, then those that wait, heaviest first. */
    private static Comparator<SpanDecision> heavyFirst() {
        return Comparator.<SpanDecision, Boolean>comparing(span -> span.feed() == Feed.WAITING)
                .thenComparing(span -> span.feed() == Feed.WAITING ? -whPerCharger(span) : span.from())
                .thenComparingInt(SpanDecision::from)
                .thenComparingInt(SpanDecision::to);
    }

    private static double whPerCharger(SpanDecision span) {
        double wattHours = span.loads().stream()
                .mapToDouble(load -> load.count() * load.fit().gridWh(load.level()))
                .sum();
        return wattHours / Math.max(1, span.slots().size());
    }

    private boolean fits(DayDecision day, Comparator<SpanDecision> order) {
        List<SpanDecision> spans = new ArrayList<>(day.spans());
        spans.sort(order);
        UnitShares shares = new UnitShares(problem, day);
        for (SpanDecision span : spans) {
            boolean placed = span.feed() == Feed.WAITING ? scheduleWaiting(span, shares) : scheduleAtOnce(span);
            if (!placed) {
                return false;
            }
        }
        return true;
    }

    private boolean scheduleAtOnce(SpanDecision span) {
        List<Integer> slots = new ArrayList<>(span.slots());
        Collections.sort(slots);
        for (List<Loaded> packs : new BatchSplit(span, problem, slots).split()) {
            if (!packs.isEmpty()) {
                Optional<ChargerPlacement> charger =
                        free(span).stream().min(Comparator.comparing(ChargerPlacement::id));
                if (charger.isEmpty()) {
                    return false;
                }
                loads.add(new ChargerLoad(charger.get().id(), span.from(), span.to(), packs));
            }
        }
        return true;
    }

    private boolean scheduleWaiting(SpanDecision span, UnitShares shares) {
        List<UnitShares.Seat> seats = new ArrayList<>();
        List<ChargerPlacement> free = new ArrayList<>(free(span));
        List<Integer> slots = new ArrayList<>(span.slots());
        slots.sort(Comparator.reverseOrder());
        for (int room : slots) {
            Optional<ChargerPlacement> charger = shares.neediest(free);
            if (charger.isEmpty()) {
                return false;
            }
            free.remove(charger.get());
            seats.add(shares.seat(charger.get(), room));
        }
        shares.fill(seats, span);
        for (UnitShares.Seat seat : seats) {
            if (!seat.packs().isEmpty()) {
                loads.add(new ChargerLoad(seat.charger().id(), span.from(), span.to(), seat.packs()));
            }
        }
        return true;
    }

    /** Chargers that a batch may go into; those on priority outlets come last where the batch does not need one. */
    private List<ChargerPlacement> free(SpanDecision span) {
        String type = problem.chargers().get(span.charger()).type().id();
        return chargers.stream()
                .filter(c -> c.chargerType().equals(type))
                .filter(c -> (span.feed() == Feed.PLAIN) != c.shared())
                .filter(c -> span.feed() != Feed.PRIORITY || c.priority())
                .filter(c -> loads.stream()
                        .noneMatch(load -> load.charger().equals(c.id())
                                && load.loadMinute() < span.to()
                                && load.collectMinute() > span.from()))
                .sorted(Comparator.comparing(ChargerPlacement::priority).thenComparing(ChargerPlacement::id))
                .toList();
    }

    static Loaded loaded(DepotProblem problem, LoadDecision load, int count) {
        return new Loaded(
                load.fit().pack().id(),
                problem.owner(load.pool()),
                load.level() == ChargeLevel.FULL ? Level.FULL : Level.EIGHTY,
                count);
    }
}
