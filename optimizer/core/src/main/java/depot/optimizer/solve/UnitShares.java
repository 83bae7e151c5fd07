package depot.optimizer.solve;

import depot.optimizer.model.DayDecision;
import depot.optimizer.model.DayDecision.LoadDecision;
import depot.optimizer.model.DayDecision.SpanDecision;
import depot.optimizer.plan.ChargerLoad.Loaded;
import depot.optimizer.plan.ChargerPlacement;
import depot.optimizer.problem.DepotProblem;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Energy that the model has each unit draw for waiting chargers, and how much of it the batches handed out so far take up. The model takes the units
 * of a depot together; here its packs are dealt out, one by one, to the unit that has most left.
 */
final class UnitShares {

    private final DepotProblem problem;
    private final double[] leftWh;

    /** A charger of a batch and what is in it. */
    static final class Seat {
        private final ChargerPlacement charger;
        private final int circuit;
        private final int room;
        private final List<Loaded> packs = new ArrayList<>();
        private int minutes;

        Seat(ChargerPlacement charger, int circuit, int room) {
            this.charger = charger;
            this.circuit = circuit;
            this.room = room;
        }

        ChargerPlacement charger() {
            return charger;
        }

        int circuit() {
            return circuit;
        }

        int room() {
            return room;
        }

        List<Loaded> packs() {
            return packs;
        }

        /** Charging time of all its packs together. */
        int minutes() {
            return minutes;
        }

        int held() {
            return packs.stream().mapToInt(Loaded::count).sum();
        }
    }

    UnitShares(DepotProblem problem, DayDecision day) {
        this.problem = problem;
        leftWh = new double[problem.circuits().size()];
        for (int k = 0; k < day.unitWh().size(); k++) {
            leftWh[k] = day.unitWh().get(k).stream()
                    .mapToDouble(Double::doubleValue)
                    .sum();
        }
    }

    private int circuit(ChargerPlacement charger) {
        for (int k = 0; k < leftWh.length; k++) {
            if (problem.circuits().get(k).circuit().id().equals(charger.circuit())) {
                return k;
            }
        }
        throw new IllegalStateException(
                "circuit " + charger.circuit() + " is not in " + problem.depot().id());
    }

    /** The charger behind the unit with most energy left for each charger that is free there; of those, the first. */
    Optional<ChargerPlacement> neediest(List<ChargerPlacement> free) {
        double[] each = leftWh.clone();
        int[] count = new int[each.length];
        free.forEach(charger -> count[circuit(charger)]++);
        for (int k = 0; k < each.length; k++) {
            each[k] /= Math.max(1, count[k]);
        }
        ChargerPlacement best = null;
        for (ChargerPlacement charger : free) {
            if (best == null || each[circuit(charger)] > each[circuit(best)] + 1e-6) {
                best = charger;
            }
        }
        return Optional.ofNullable(best);
    }

    Seat seat(ChargerPlacement charger, int room) {
        return new Seat(charger, circuit(charger), room);
    }

    /**
     * Deals out the packs of a batch. Slow packs go first: they may only go where few fit, and since the sets of chargers that take them are nested
     * whatever order fills those leaves room for the others. Of packs that fit alike those with most energy go first,
     * and to priority outlets, which are fed first.
     */
    void fill(List<Seat> seats, SpanDecision span) {
        List<LoadDecision> slowFirst = new ArrayList<>(span.loads());
        slowFirst.sort(Comparator.comparingInt(LoadDecision::slots)
                .thenComparing(load -> -load.fit().gridWh(load.level())));
        for (LoadDecision load : slowFirst) {
            for (int i = 0; i < load.count(); i++) {
                Seat seat = seats.stream()
                        .filter(s -> s.room() <= load.slots() && s.held() < s.room())
                        .max(Comparator.<Seat>comparingDouble(s -> leftWh[s.circuit()])
                                .thenComparing(s -> -s.minutes())
                                .thenComparing(s -> s.charger().priority()))
                        .orElseThrow(() -> new IllegalStateException("a batch of depot "
                                + problem.depot().id() + " holds more packs than its chargers have room for"));
                put(seat, load);
            }
        }
    }

    private void put(Seat seat, LoadDecision load) {
        seat.minutes += load.fit().minutes(load.level());
        leftWh[seat.circuit()] -= load.fit().gridWh(load.level());
        Loaded one = DayScheduler.loaded(problem, load, 1);
        int last = seat.packs().size() - 1;
        if (last >= 0 && alike(seat.packs().get(last), one)) {
            Loaded before = seat.packs().remove(last);
            seat.packs().add(DayScheduler.loaded(problem, load, before.count() + 1));
        } else {
            seat.packs().add(one);
        }
    }

    private static boolean alike(Loaded a, Loaded b) {
        return a.packType().equals(b.packType()) && a.pool().equals(b.pool()) && a.level() == b.level();
    }
}
