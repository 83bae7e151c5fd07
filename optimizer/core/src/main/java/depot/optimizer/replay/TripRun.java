package depot.optimizer.replay;

import depot.optimizer.plan.TripPlan.RoadCharge;
import depot.optimizer.plan.TripPlan.RoadSource;
import depot.optimizer.scenario.Season;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;

/**
 * Works a trip off, stop by stop, with the packs on board. Tools that run together drain a pack each; a pack in use is drained before a fresh
 * one is taken; types that are to be recharged on the way go first, and of them those that were taken at 80 %.
 */
final class TripRun {
    private static final double EMPTY = 1e-9;

    private final DepotTables tables;
    private final Season season;
    private final DayCase.Trip trip;
    private final List<PackState> board;
    private final DayEvents events;

    /** Packs of one charge while they are on a charger. */
    private record Charging(RoadCharge charge, List<PackState> packs) {}

    TripRun(DepotTables tables, Season season, DayCase.Trip trip, List<PackState> board, DayEvents events) {
        this.tables = tables;
        this.season = season;
        this.trip = trip;
        this.board = board;
        this.events = events;
    }

    /** Runs every family's work. */
    void run(Draw draw) {
        for (int k = 0; k < trip.needs().size(); k++) {
            Needs need = trip.needs().get(k);
            runFamily(need, draw.usedWh(trip, need));
        }
    }

    private void runFamily(Needs need, double[] usedWh) {
        List<RoadCharge> charges = charges(need.family());
        List<PackState> packs = inOrderOfUse(need.family(), charges);
        List<Charging> charging = new ArrayList<>();
        for (int i = 0; i < usedWh.length; i++) {
            int stop = i;
            finish(charging, stop);
            start(charges, charging, packs, c -> c.source().atStop() && at(c.afterStop()) == stop);
            double lacked = usedWh[i] > 0 ? use(packs, usedWh[i], Math.max(1, need.toolsAtOnce()[i])) : 0;
            if (usedWh[i] > 0) {
                events.worked(trip, need, i, left(packs), lacked);
            }
            start(charges, charging, packs, c -> !c.source().atStop() && at(c.afterStop()) == stop);
        }
    }

    private int at(int stopNumber) {
        return trip.route().indexOf(stopNumber);
    }

    private List<RoadCharge> charges(String family) {
        return trip.plan().roadCharges().stream()
                .filter(c -> tables.packTypes().containsKey(c.packType())
                        && tables.packTypes().get(c.packType()).family().equals(family))
                .sorted(Comparator.comparingInt(RoadCharge::fromMinute))
                .toList();
    }

    private List<PackState> inOrderOfUse(String family, List<RoadCharge> charges) {
        return board.stream()
                .filter(p -> p.shelf.type().family().equals(family) && fullWh(p) > 0)
                .sorted(Comparator.comparingInt((PackState p) -> firstCharge(p, charges))
                        .thenComparingDouble(PackState::charge))
                .toList();
    }

    private static int firstCharge(PackState pack, List<RoadCharge> charges) {
        return charges.stream()
                .filter(c -> c.packType().equals(pack.shelf.type().id()))
                .mapToInt(RoadCharge::fromMinute)
                .min()
                .orElse(Integer.MAX_VALUE);
    }

    private void start(
            List<RoadCharge> charges, List<Charging> charging, List<PackState> packs, Predicate<RoadCharge> now) {
        for (RoadCharge charge : charges) {
            if (now.test(charge)) {
                List<PackState> empty = packs.stream()
                        .filter(p -> p.charge() <= EMPTY
                                && p.shelf.type().id().equals(charge.packType())
                                && charging.stream().noneMatch(c -> c.packs().contains(p)))
                        .limit(charge.packs())
                        .toList();
                if (empty.size() < charge.packs()) {
                    events.roadPacksNotEmpty(trip, charge, empty.size());
                }
                charging.add(new Charging(charge, empty));
            }
        }
    }

    private void finish(List<Charging> charging, int stop) {
        charging.removeIf(c -> {
            boolean back = at(c.charge().beforeStop()) <= stop && at(c.charge().beforeStop()) >= 0;
            if (back) {
                double charge = c.charge().source() == RoadSource.VISIT_EIGHTY ? ChargeCurve.KNEE : 1;
                c.packs().forEach(p -> p.setCharge(charge));
            }
            return back;
        });
    }

    /** Drains packs, so many side by side, and says what they could not give. */
    private double use(List<PackState> packs, double wattHours, int together) {
        double left = wattHours;
        while (left > EMPTY) {
            List<PackState> hands = next(packs, together);
            if (hands.isEmpty()) {
                return left;
            }
            double each = left / hands.size();
            for (PackState pack : hands) {
                each = Math.min(each, pack.charge() * fullWh(pack));
            }
            for (PackState pack : hands) {
                double charge = pack.charge() - each / fullWh(pack);
                pack.setCharge(charge <= EMPTY ? 0 : charge);
            }
            left -= each * hands.size();
        }
        return 0;
    }

    /** Packs in use first, then fresh ones in their order. */
    private static List<PackState> next(List<PackState> packs, int together) {
        List<PackState> hands = new ArrayList<>(together);
        for (int pass = 0; pass < 2; pass++) {
            for (PackState pack : packs) {
                boolean fresh = pack.charge() >= 1 || pack.charge() == ChargeCurve.KNEE;
                if (hands.size() < together && pack.charge() > EMPTY && fresh == (pass == 1)) {
                    hands.add(pack);
                }
            }
        }
        return hands;
    }

    private double left(List<PackState> packs) {
        double wattHours = 0;
        for (PackState pack : packs) {
            wattHours += pack.charge() * fullWh(pack);
        }
        return wattHours;
    }

    private double fullWh(PackState pack) {
        return tables.usableWh(pack.shelf.type(), season);
    }
}
