package depot.optimizer.solve;

import depot.optimizer.scenario.ChargeTime;
import depot.optimizer.scenario.ChargerType;
import depot.optimizer.scenario.PackType;
import depot.optimizer.scenario.PriceBand;
import depot.optimizer.scenario.Scenario;
import java.util.ArrayList;
import java.util.List;

/** What may go into a charger at a handover, when it may be collected and what its energy costs: the part of {@link DayOracle} that knows chargers. */
final class BatchOracle {

    private static final double EIGHTY = 0.8;

    private final Scenario scenario;
    private final List<OracleTrip> trips;
    private final List<Integer> handovers;
    private final int types;

    BatchOracle(Scenario scenario, List<OracleTrip> trips, List<Integer> handovers) {
        this.scenario = scenario;
        this.trips = trips;
        this.handovers = handovers;
        types = scenario.packTypes().size();
    }

    static int sum(List<Integer> counts) {
        return counts.stream().mapToInt(Integer::intValue).sum();
    }

    private boolean departsFrom(int minute) {
        return trips.stream().anyMatch(trip -> trip.leave() >= minute);
    }

    /** Every choice of up to so many of the empty packs: counts to the full by type, then to 80 %. */
    List<List<Integer>> fillings(List<Integer> empty, int bays, int at) {
        List<List<Integer>> all = new ArrayList<>();
        int levels = departsFrom(at + 1) ? 2 : 1;
        extend(new ArrayList<>(), empty, bays, levels, all);
        all.removeIf(content -> sum(content) == 0);
        return all;
    }

    private void extend(List<Integer> so, List<Integer> empty, int bays, int levels, List<List<Integer>> all) {
        int i = so.size();
        if (i == 2 * types) {
            all.add(List.copyOf(so));
            return;
        }
        int left = empty.get(i % types) - (i >= types ? so.get(i - types) : 0);
        int most = i >= types && levels == 1 ? 0 : Math.min(left, bays - sum(so));
        for (int count = 0; count <= most; count++) {
            so.add(count);
            extend(so, empty, bays, levels, all);
            so.remove(i);
        }
    }

    private ChargeTime time(ChargerType charger, int pack) {
        String id = scenario.packTypes().get(pack).id();
        return scenario.chargeTimes().stream()
                .filter(row ->
                        row.chargerType().equals(charger.id()) && row.packType().equals(id))
                .findFirst()
                .orElseThrow();
    }

    /**
     * When a batch may be collected. It holds min(bays, at once x floor(span / time)) packs of its slowest; a pack leaves at 80 % only where there is
     * no time for more, that is where fewer packs would get full.
     */
    List<Integer> ends(ChargerType charger, List<Integer> full, List<Integer> eighty, int at) {
        int slowest = 0;
        for (int p = 0; p < types; p++) {
            slowest = Math.max(slowest, full.get(p) > 0 ? time(charger, p).minutesToFull() : 0);
            slowest = Math.max(slowest, eighty.get(p) > 0 ? time(charger, p).minutesTo80() : 0);
        }
        List<Integer> ends = new ArrayList<>();
        for (int end : handovers) {
            boolean done = end > at && fits(charger, slowest, end - at) >= sum(full) + sum(eighty);
            if (done && sum(eighty) == 0) {
                return List.of(end);
            }
            if (done && departsFrom(end) && noTimeForMore(charger, eighty, end - at)) {
                ends.add(end);
            }
        }
        return ends;
    }

    private boolean noTimeForMore(ChargerType charger, List<Integer> eighty, int span) {
        for (int p = 0; p < types; p++) {
            ChargeTime time = time(charger, p);
            if (eighty.get(p) > 0
                    && fits(charger, time.minutesTo80(), span) <= fits(charger, time.minutesToFull(), span)) {
                return false;
            }
        }
        return true;
    }

    private static int fits(ChargerType charger, int minutes, int span) {
        return Math.min(charger.bays(), charger.chargingAtOnce() * (span / minutes));
    }

    /** A year's price of a batch: its packs charge in turns, fast to 80 % and slow after it. */
    double energy(ChargerType charger, List<Integer> full, List<Integer> eighty, int at) {
        double cost = 0;
        int turn = 0;
        for (int p = 0; p < types; p++) {
            ChargeTime time = time(charger, p);
            PackType pack = scenario.packTypes().get(p);
            double kwh = pack.capacityWh() * pack.usableShare() / charger.efficiency() / 1000;
            for (int i = 0; i < full.get(p) + eighty.get(p); i++) {
                int from = at + turn / charger.chargingAtOnce() * time.minutesToFull();
                int fast = from + time.minutesTo80();
                cost += EIGHTY * kwh * meanPrice(from, fast);
                if (i < full.get(p)) {
                    cost += (1 - EIGHTY) * kwh * meanPrice(fast, from + time.minutesToFull());
                }
                turn++;
            }
        }
        return cost * daysPerYear();
    }

    double daysPerYear() {
        return 5 * scenario.seasons().get(0).weeksPerYear();
    }

    private double meanPrice(int from, int to) {
        double sum = 0;
        for (int minute = from; minute < to; minute++) {
            int clock = minute % 1440;
            for (PriceBand band : scenario.priceBands()) {
                if (band.fromMinute() <= clock && clock < band.toMinute()) {
                    sum += band.pricePerKwh().doubleValue();
                }
            }
        }
        return sum / (to - from);
    }
}
