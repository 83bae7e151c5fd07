package depot.optimizer.solve;

import depot.optimizer.scenario.BaseLoad;
import depot.optimizer.scenario.ChargerType;
import depot.optimizer.scenario.Circuit;
import depot.optimizer.scenario.PackType;
import depot.optimizer.scenario.Scenario;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The cheapest plan of a tiny depot by full enumeration: all chargers on all circuits, and for each purchase all days. One season of working days that
 * are all alike, single-phase circuits, no units, no road charging, no growth of prices.
 */
final class DepotOracle {

    private static final double EPSILON = 1e-9;

    private final Scenario scenario;
    private final double atEnd;
    private final double annuity;
    private double best = Double.POSITIVE_INFINITY;

    DepotOracle(Scenario scenario) {
        this.scenario = scenario;
        double rate = scenario.discountRate();
        atEnd = Math.pow(1 + rate, -scenario.horizonYears());
        annuity = rate == 0 ? scenario.horizonYears() : (1 - atEnd) / rate;
    }

    double cheapest() {
        List<OracleTrip> trips = OracleTrip.all(scenario);
        List<Map.Entry<List<Integer>, Double>> cheapFirst = purchases().entrySet().stream()
                .sorted(Map.Entry.comparingByValue())
                .toList();
        for (Map.Entry<List<Integer>, Double> purchase : cheapFirst) {
            double bought = purchase.getValue();
            new DayOracle(scenario, trips, purchase.getKey(), ending -> bought + running(ending) < best)
                    .endings()
                    .forEach(ending -> best = Math.min(best, bought + running(ending)));
        }
        double standing = scenario.tariffTerms().get(0).standingPerDay().doubleValue();
        return best + standing * 365.25 * annuity;
    }

    private double running(DayOracle.Ending ending) {
        double cost = annuity * ending.energyPerYear()
                + annuity
                        * ending.shortKwhPerYear()
                        * scenario.shortageCostPerKwh().orElseThrow().doubleValue();
        double days = 5 * scenario.seasons().get(0).weeksPerYear();
        for (int p = 0; p < scenario.packTypes().size(); p++) {
            PackType pack = scenario.packTypes().get(p);
            double price = pack.price().doubleValue();
            int count = ending.stock().get(p);
            double worn = Math.max(count / pack.calendarYears(), ending.used().get(p) * days / pack.cycleLife());
            cost += count * price * (1 - atEnd) + worn * price * annuity;
        }
        return cost;
    }

    /** Chargers of each type in all, each with the least that they and their circuits cost. */
    private Map<List<Integer>, Double> purchases() {
        Map<List<Integer>, Double> all = new HashMap<>();
        List<Integer> none = Collections.nCopies(scenario.chargerTypes().size(), 0);
        addCircuit(0, none, 0, all);
        return all;
    }

    private void addCircuit(int k, List<Integer> total, double cost, Map<List<Integer>, Double> all) {
        if (k == scenario.circuits().size()) {
            if (fitsDepot(total)) {
                all.merge(total, cost + price(total), Math::min);
            }
            return;
        }
        addCircuit(k + 1, total, cost, all);
        fill(
                k,
                new ArrayList<>(),
                total,
                cost + scenario.circuits().get(k).installCost().doubleValue(),
                all);
    }

    private void fill(int k, List<Integer> here, List<Integer> total, double cost, Map<List<Integer>, Double> all) {
        Circuit circuit = scenario.circuits().get(k);
        if (here.size() == scenario.chargerTypes().size()) {
            double amps = 0;
            int plugs = 0;
            List<Integer> sum = new ArrayList<>();
            for (int c = 0; c < here.size(); c++) {
                amps += here.get(c) * scenario.chargerTypes().get(c).plateWatts() / circuit.volts();
                plugs += here.get(c);
                sum.add(total.get(c) + here.get(c));
            }
            double room = circuit.breakerAmps() * circuit.continuousFactor() - baseAmps(circuit);
            if (amps <= room + EPSILON && plugs <= circuit.outlets()) {
                addCircuit(k + 1, sum, cost, all);
            }
            return;
        }
        for (int count = 0; count <= circuit.outlets(); count++) {
            here.add(count);
            fill(k, here, total, cost, all);
            here.remove(here.size() - 1);
        }
    }

    private double baseAmps(Circuit circuit) {
        return scenario.baseLoads().stream()
                .filter(load -> load.circuit().orElse("").equals(circuit.id()))
                .mapToDouble(BaseLoad::amps)
                .sum();
    }

    private boolean fitsDepot(List<Integer> total) {
        int places = 0;
        double va = 0;
        for (int c = 0; c < total.size(); c++) {
            places += total.get(c) * scenario.chargerTypes().get(c).places();
            va += total.get(c) * scenario.chargerTypes().get(c).plateWatts();
        }
        for (Circuit circuit : scenario.circuits()) {
            va += baseAmps(circuit) * circuit.volts();
        }
        var depot = scenario.depots().get(0);
        return places <= depot.places() && va <= 0.8 * Math.sqrt(3) * depot.supplyVolts() * depot.supplyAmps();
    }

    private double price(List<Integer> total) {
        double cost = 0;
        int horizon = scenario.horizonYears();
        for (int c = 0; c < total.size(); c++) {
            ChargerType type = scenario.chargerTypes().get(c);
            double piece = type.installCost().doubleValue();
            double year = 0;
            for (; year < horizon; year += type.lifeYears()) {
                piece += type.price().doubleValue() * Math.pow(1 + scenario.discountRate(), -year);
            }
            // The last piece is worth its remaining years.
            piece -= type.price().doubleValue() * (year - horizon) / type.lifeYears() * atEnd;
            cost += total.get(c) * piece;
        }
        return cost;
    }
}
