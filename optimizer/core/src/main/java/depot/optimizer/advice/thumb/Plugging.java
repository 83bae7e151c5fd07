package depot.optimizer.advice.thumb;

import depot.optimizer.advice.thumb.ThumbSettings.Breaker;
import depot.optimizer.plan.ChargerPlacement;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.DepotProblem.CircuitSite;
import depot.optimizer.scenario.ChargerType;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Plugs chargers in, one after the other, each into the first circuit that has an outlet left and is not full: those that are there in the order of
 * the table, then those on offer, the cheapest first. What finds no outlet at all goes on a lead from the circuit with most current left.
 */
final class Plugging {

    private static final double ROUNDING = 1e-9;

    private final DepotProblem problem;
    private final Breaker breaker;
    private final List<Socket> sockets;
    private final Map<String, Integer> ownedLeft = new HashMap<>();
    private final List<ChargerPlacement> chargers = new ArrayList<>();

    /** A circuit while chargers are plugged into it. */
    private static final class Socket {
        private final CircuitSite site;
        private final double limitAmps;
        private double amps;
        private int outlets;

        Socket(CircuitSite site, double limitAmps) {
            this.site = site;
            this.limitAmps = limitAmps;
        }

        double amps(ChargerType type) {
            return type.plateWatts() / site.wattsPerAmp();
        }

        boolean takes(ChargerType type) {
            return outlets < site.circuit().outlets() && amps + amps(type) <= limitAmps + ROUNDING;
        }
    }

    Plugging(DepotProblem problem, Breaker breaker) {
        this.problem = problem;
        this.breaker = breaker;
        sockets = Stream.concat(
                        problem.circuits().stream()
                                .filter(site -> !site.circuit().candidate()),
                        problem.circuits().stream()
                                .filter(site -> site.circuit().candidate())
                                .sorted(Comparator.comparing(
                                        site -> site.circuit().installCost())))
                .map(site -> new Socket(site, limit(site)))
                .toList();
    }

    private double limit(CircuitSite site) {
        return switch (breaker) {
            case FULL -> site.circuit().breakerAmps();
            case USABLE -> site.usableAmps(site.peakBaseAmps());
        };
    }

    /** Plugs one in; empty: the depot has no circuit. */
    Optional<ChargerPlacement> plugIn(ChargerType type) {
        return sockets.stream()
                .filter(socket -> socket.takes(type))
                .findFirst()
                .or(() -> sockets.stream()
                        .filter(socket -> !socket.site.circuit().candidate())
                        .max(Comparator.comparingDouble(socket -> socket.limitAmps - socket.amps)))
                .map(socket -> plugIn(type, socket));
    }

    private ChargerPlacement plugIn(ChargerType type, Socket socket) {
        socket.outlets++;
        socket.amps += socket.amps(type);
        String circuit = socket.site.circuit().id();
        ChargerPlacement charger = new ChargerPlacement(
                "%s-%02d".formatted(circuit, socket.outlets),
                circuit,
                type.id(),
                socket.outlets,
                false,
                false,
                takeOwned(type.id()));
        chargers.add(charger);
        return charger;
    }

    private boolean takeOwned(String item) {
        int left = ownedLeft.computeIfAbsent(item, key -> problem.ownedCount(key, ""));
        ownedLeft.put(item, Math.max(0, left - 1));
        return left > 0;
    }

    /** Circuits that have to be built for it, in the order of the table. */
    List<String> circuitsBuilt() {
        return problem.circuits().stream()
                .map(CircuitSite::circuit)
                .filter(circuit -> circuit.candidate()
                        && chargers.stream()
                                .anyMatch(charger -> charger.circuit().equals(circuit.id())))
                .map(circuit -> circuit.id())
                .toList();
    }
}
