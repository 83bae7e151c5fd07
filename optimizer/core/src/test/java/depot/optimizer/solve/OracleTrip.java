package depot.optimizer.solve;

import depot.optimizer.scenario.Crew;
import depot.optimizer.scenario.PackType;
import depot.optimizer.scenario.RouteStop;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.scenario.Work;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A trip of the oracle: one tool, no spread.
 *
 * @param choices what may be taken along
 */
record OracleTrip(int leave, int back, List<Taken> choices) {

    private static final double EPSILON = 1e-9;

    /** Packs by type and level, and what they leave uncovered. */
    record Taken(List<Integer> full, List<Integer> eighty, double shortWh) {}

    /** The trips of all crews, between neighbouring stops at the depot. */
    static List<OracleTrip> all(Scenario scenario) {
        List<OracleTrip> trips = new ArrayList<>();
        String depot = scenario.depots().get(0).id();
        for (Crew crew : scenario.crews()) {
            List<RouteStop> route = scenario.stops().stream()
                    .filter(stop -> stop.crew().equals(crew.id()))
                    .sorted(Comparator.comparingInt(RouteStop::stop))
                    .toList();
            for (int i = 0; i + 2 < route.size(); i++) {
                if (route.get(i).place().equals(depot)) {
                    int site = route.get(i + 1).stop();
                    double needWh = scenario.work().stream()
                            .filter(work -> work.crew().equals(crew.id()) && work.stop() == site)
                            .mapToDouble(Work::hours)
                            .map(hours -> hours * scenario.tools().get(0).averageWatts())
                            .sum();
                    trips.add(new OracleTrip(
                            route.get(i).leaveMinute(),
                            route.get(i + 2).arriveMinute(),
                            choices(scenario, crew, needWh)));
                }
            }
        }
        return List.copyOf(trips);
    }

    private static List<Taken> choices(Scenario scenario, Crew crew, double needWh) {
        List<Taken> all = new ArrayList<>();
        extend(new ArrayList<>(), scenario, crew, needWh, all);
        return List.copyOf(all);
    }

    private static void extend(List<Integer> counts, Scenario scenario, Crew crew, double needWh, List<Taken> all) {
        int types = scenario.packTypes().size();
        if (counts.size() == 2 * types) {
            double wh = wh(scenario, counts);
            if (carriable(scenario, crew, counts) && noneToSpare(scenario, counts, needWh)) {
                all.add(new Taken(
                        List.copyOf(counts.subList(0, types)),
                        List.copyOf(counts.subList(types, 2 * types)),
                        Math.max(0, needWh - wh)));
            }
            return;
        }
        for (int count = 0; count <= crew.packPlaces(); count++) {
            counts.add(count);
            extend(counts, scenario, crew, needWh, all);
            counts.remove(counts.size() - 1);
        }
    }

    private static double wh(Scenario scenario, List<Integer> counts) {
        double wh = 0;
        int types = scenario.packTypes().size();
        for (int i = 0; i < counts.size(); i++) {
            PackType pack = scenario.packTypes().get(i % types);
            wh += counts.get(i) * pack.capacityWh() * pack.usableShare() * (i < types ? 1 : 0.8);
        }
        return wh;
    }

    private static boolean carriable(Scenario scenario, Crew crew, List<Integer> counts) {
        int packs = 0;
        double kg = 0;
        for (int i = 0; i < counts.size(); i++) {
            packs += counts.get(i);
            kg += counts.get(i)
                    * scenario.packTypes().get(i % scenario.packTypes().size()).weightKg();
        }
        return packs <= crew.packPlaces() && kg <= crew.payloadKg() + EPSILON;
    }

    private static boolean noneToSpare(Scenario scenario, List<Integer> counts, double needWh) {
        for (int i = 0; i < counts.size(); i++) {
            if (counts.get(i) > 0) {
                List<Integer> fewer = new ArrayList<>(counts);
                fewer.set(i, counts.get(i) - 1);
                if (wh(scenario, fewer) >= needWh - EPSILON) {
                    return false;
                }
            }
        }
        return true;
    }
}
