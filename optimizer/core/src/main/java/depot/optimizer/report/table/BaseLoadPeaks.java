package depot.optimizer.report.table;

import depot.optimizer.scenario.BaseLoad;
import depot.optimizer.scenario.Circuit;
import depot.optimizer.scenario.Depot;
import java.time.DayOfWeek;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** What circuits and supplies feed beside the chargers, at the worst moment of the week. */
final class BaseLoadPeaks {

    private final Catalog catalog;
    private final Depot depot;
    private final List<BaseLoad> loads;

    BaseLoadPeaks(Catalog catalog, Depot depot) {
        this.catalog = catalog;
        this.depot = depot;
        this.loads = catalog.scenario().baseLoads().stream()
                .filter(load -> load.depot().equals(depot.id()))
                .toList();
    }

    /** In amps at the circuit's voltage. */
    double ofCircuit(String circuit) {
        return peak(
                loads.stream()
                        .filter(load -> load.circuit().equals(Optional.of(circuit)))
                        .toList(),
                BaseLoad::amps);
    }

    /** In amps at the supply's voltage: its own loads and those of all circuits, by their volt-amperes. */
    double ofSupply() {
        double voltsOfSupply = volts(depot.supplyVolts(), depot.supplyPhases());
        return peak(
                loads,
                load -> load.circuit().isEmpty()
                        ? load.amps()
                        : load.amps()
                                * volts(catalog.circuit(
                                        depot.id(), load.circuit().get()))
                                / voltsOfSupply);
    }

    /** Volts that turn amps of a connection into volt-amperes: times the root of three for three phases. */
    static double volts(double volts, int phases) {
        return phases == 3 ? volts * Math.sqrt(3) : volts;
    }

    static double volts(Circuit circuit) {
        return volts(circuit.volts(), circuit.phases());
    }

    /** The sum only rises where a span starts. */
    private static double peak(List<BaseLoad> loads, ToDoubleFunction<BaseLoad> amps) {
        double peak = 0;
        for (DayOfWeek day : DayOfWeek.values()) {
            List<BaseLoad> today =
                    loads.stream().filter(load -> load.days().contains(day)).toList();
            for (BaseLoad start : today) {
                double sum = today.stream()
                        .filter(load -> load.fromMinute() <= start.fromMinute() && load.toMinute() > start.fromMinute())
                        .mapToDouble(amps)
                        .sum();
                peak = Math.max(peak, sum);
            }
        }
        return peak;
    }
}
