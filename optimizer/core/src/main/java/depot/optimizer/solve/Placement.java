package depot.optimizer.solve;

import depot.optimizer.model.CapacityDecision;
import depot.optimizer.plan.BankPlacement;
import depot.optimizer.plan.ChargerPlacement;
import depot.optimizer.plan.CrewKit;
import depot.optimizer.plan.PackStock;
import depot.optimizer.plan.UnitPlacement;
import depot.optimizer.problem.DepotProblem;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Gives every purchased or owned piece its place. */
final class Placement {

    private final DepotProblem problem;
    private final CapacityDecision decision;
    private final Map<String, Integer> ownedLeft = new HashMap<>();
    private final List<ChargerPlacement> chargers = new ArrayList<>();
    private final List<BankPlacement> banks = new ArrayList<>();

    Placement(DepotProblem problem, CapacityDecision decision) {
        this.problem = problem;
        this.decision = decision;
        for (int k = 0; k < problem.circuits().size(); k++) {
            int outlet = placeChargers(k);
            placeBanks(k, outlet);
        }
    }

    private int placeChargers(int k) {
        boolean shared = decision.unit().get(k) >= 0;
        int outlet = 1;
        if (shared) {
            for (int c = 0; c < problem.chargers().size(); c++) {
                int first = Math.min(
                        decision.priority().get(k).get(c),
                        decision.shared().get(k).get(c));
                outlet = place(k, c, first, outlet, new Seat(true, true));
            }
        }
        List<Integer> counts = (shared ? decision.shared() : decision.plain()).get(k);
        for (int c = 0; c < problem.chargers().size(); c++) {
            int first = shared ? Math.min(decision.priority().get(k).get(c), counts.get(c)) : 0;
            outlet = place(k, c, counts.get(c) - first, outlet, new Seat(shared, false));
        }
        return outlet;
    }

    private record Seat(boolean shared, boolean priority) {}

    private int place(int k, int c, int count, int outlet, Seat seat) {
        String circuit = problem.circuits().get(k).circuit().id();
        String type = problem.chargers().get(c).type().id();
        for (int i = 0; i < count; i++) {
            chargers.add(new ChargerPlacement(
                    "%s-%02d".formatted(circuit, outlet + i),
                    circuit,
                    type,
                    outlet + i,
                    seat.shared(),
                    seat.priority(),
                    takeOwned(type, "")));
        }
        return outlet + count;
    }

    private boolean takeOwned(String item, String crew) {
        String key = item + "/" + crew;
        int left = ownedLeft.computeIfAbsent(key, k -> problem.ownedCount(item, crew));
        ownedLeft.put(key, Math.max(0, left - 1));
        return left > 0;
    }

    private void placeBanks(int k, int firstOutlet) {
        int outlet = firstOutlet;
        String circuit = problem.circuits().get(k).circuit().id();
        for (int b = 0; b < problem.bankTypes().size(); b++) {
            for (int i = 0; i < decision.bankPlugs().get(k).get(b); i++) {
                String crew = nextCrew(b);
                if (crew != null) {
                    banks.add(new BankPlacement(crew, problem.bankTypes().get(b).id(), circuit, outlet++));
                }
            }
        }
    }

    /** The first crew that has more banks of the type than have been placed; null: none. */
    private String nextCrew(int b) {
        String type = problem.bankTypes().get(b).id();
        for (int w = 0; w < problem.crews().size(); w++) {
            String crew = problem.crews().get(w).id();
            long placed = banks.stream()
                    .filter(bank -> bank.crew().equals(crew) && bank.bankType().equals(type))
                    .count();
            if (placed < decision.banks().get(w).get(b)) {
                return crew;
            }
        }
        return null;
    }

    List<ChargerPlacement> chargers() {
        return List.copyOf(chargers);
    }

    List<BankPlacement> banks() {
        return List.copyOf(banks);
    }

    List<UnitPlacement> units() {
        List<UnitPlacement> units = new ArrayList<>();
        for (int k = 0; k < problem.circuits().size(); k++) {
            int u = decision.unit().get(k);
            if (u >= 0) {
                String type = problem.unitTypes().get(u).id();
                units.add(new UnitPlacement(problem.circuits().get(k).circuit().id(), type, takeOwned(type, "")));
            }
        }
        return List.copyOf(units);
    }

    List<String> circuitsBuilt() {
        List<String> built = new ArrayList<>();
        for (int k = 0; k < problem.circuits().size(); k++) {
            if (problem.circuits().get(k).circuit().candidate()
                    && decision.built().get(k)) {
                built.add(problem.circuits().get(k).circuit().id());
            }
        }
        return List.copyOf(built);
    }

    /**
     * @param replaced packs of each type replaced a year, over all pools
     */
    List<PackStock> packs(List<Double> replaced) {
        List<PackStock> stocks = new ArrayList<>();
        for (int p = 0; p < problem.packTypes().size(); p++) {
            int type = p;
            int all = decision.packs().stream().mapToInt(pool -> pool.get(type)).sum();
            for (int q = 0; q < problem.pools().size(); q++) {
                int count = decision.packs().get(q).get(p);
                String pool = problem.pools().get(q);
                String owner = pool.equals(problem.depot().id()) ? "" : pool;
                String id = problem.packTypes().get(p).id();
                if (count > 0) {
                    stocks.add(new PackStock(
                            pool,
                            id,
                            count,
                            Math.min(count, problem.ownedCount(id, owner)),
                            replaced.get(p) * count / all));
                }
            }
        }
        return List.copyOf(stocks);
    }

    List<CrewKit> kits() {
        List<CrewKit> kits = new ArrayList<>();
        for (int w = 0; w < problem.crews().size(); w++) {
            String crew = problem.crews().get(w).id();
            for (int t = 0; t < problem.portableChargers().size(); t++) {
                String item = problem.portableChargers().get(t).type().id();
                addKit(kits, crew, item, decision.kit().get(w).get(t));
            }
            for (int b = 0; b < problem.bankTypes().size(); b++) {
                addKit(
                        kits,
                        crew,
                        problem.bankTypes().get(b).id(),
                        decision.banks().get(w).get(b));
            }
        }
        return List.copyOf(kits);
    }

    private void addKit(List<CrewKit> kits, String crew, String item, int count) {
        if (count > 0) {
            kits.add(new CrewKit(crew, item, count, Math.min(count, problem.ownedCount(item, crew))));
        }
    }
}
