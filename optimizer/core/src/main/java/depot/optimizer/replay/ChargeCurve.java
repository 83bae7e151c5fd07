package depot.optimizer.replay;

import depot.optimizer.scenario.ChargeTime;
import depot.optimizer.scenario.ChargerType;
import depot.optimizer.scenario.PackType;

/**
 * How one pack charges: evenly from empty to 80 %, then evenly to the full. Times are whole minutes and a charger is fed for whole minutes,
 * so a stage never ends inside a minute.
 *
 * @param firstWatts drawn from the mains up to 80 %
 * @param secondWatts drawn from there on
 * @param gridWh drawn for an empty pack: capacity * usable share / efficiency, as if it were new, which is the safe side
 */
record ChargeCurve(int minutesTo80, int minutesToFull, double firstWatts, double secondWatts, double gridWh) {
    /** Share of the energy at which charging slows down. */
    static final double KNEE = 0.8;

    static ChargeCurve of(ChargerType charger, PackType pack, ChargeTime time) {
        double grid = pack.capacityWh() * pack.usableShare() / charger.efficiency();
        int slow = time.minutesToFull() - time.minutesTo80();
        // Without a slow stage all of the energy goes in at one pace.
        double first = slow > 0 ? KNEE * grid * 60 / time.minutesTo80() : grid * 60 / time.minutesToFull();
        double second = slow > 0 ? (1 - KNEE) * grid * 60 / slow : first;
        return new ChargeCurve(time.minutesTo80(), time.minutesToFull(), first, second, grid);
    }

    /** Draw in the minute that starts after so many minutes of charging. */
    double watts(int minutesCharged) {
        return minutesCharged < minutesTo80 ? firstWatts : secondWatts;
    }

    /** State of charge after so many minutes. */
    double charge(int minutesCharged) {
        if (minutesCharged >= minutesToFull) {
            return 1;
        }
        return minutesCharged <= minutesTo80
                ? KNEE * minutesCharged / minutesTo80
                : KNEE + (1 - KNEE) * (minutesCharged - minutesTo80) / (minutesToFull - minutesTo80);
    }

    /** Drawn from the mains between two numbers of minutes of charging. */
    double gridWh(int from, int to) {
        double fast = Math.max(0, Math.min(to, minutesTo80) - Math.min(from, minutesTo80));
        double slow = Math.max(0, Math.max(to, minutesTo80) - Math.max(from, minutesTo80));
        return (fast * firstWatts + slow * secondWatts) / 60;
    }
}
