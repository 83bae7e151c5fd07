package depot.optimizer.replay;

import depot.optimizer.scenario.Circuit;
import depot.optimizer.scenario.Depot;

/**
 * Voltage, phases and power factor of a circuit or a supply: P = V I pf on one phase, P = sqrt(3) V I pf on three.
 *
 * @param volts line-to-line on three phases
 */
record Line(double volts, int phases, double powerFactor) {
    static Line of(Circuit circuit) {
        return new Line(circuit.volts(), circuit.phases(), circuit.powerFactor());
    }

    /** The supply, whose loads are counted in volt-amperes. */
    static Line of(Depot depot) {
        return new Line(depot.supplyVolts(), depot.supplyPhases(), 1);
    }

    double voltAmperes(double amps) {
        return amps * volts * phaseFactor();
    }

    double watts(double amps) {
        return voltAmperes(amps) * powerFactor;
    }

    double amps(double watts) {
        return watts / (volts * phaseFactor() * powerFactor);
    }

    double ampsOf(double voltAmperes) {
        return voltAmperes / (volts * phaseFactor());
    }

    private double phaseFactor() {
        return phases == 3 ? Math.sqrt(3) : 1;
    }
}
