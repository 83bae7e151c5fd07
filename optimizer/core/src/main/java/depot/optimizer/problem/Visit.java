package depot.optimizer.problem;

import depot.optimizer.scenario.PackType;
import java.util.List;

/**
 * A stop of a crew at a depot that is not its own, at which bays of that depot may charge its packs: handed in on arrival, collected at departure.
 *
 * @param home depot that the crew works from
 * @param host depot that it visits
 * @param day label of the kind of day of its home; on all days of it the host gives the same
 * @param packPlaces of the crew, more than which it cannot hand in
 * @param trip number of the trip within the crew's day
 * @param stop number of the stop in the route
 * @param arrival handover at which packs are handed in: the arrival, rounded up
 * @param departure handover at which they are collected, later: the departure, rounded down
 * @param charges what some charger can do in that time, never empty
 */
public record Visit(
        String home,
        String host,
        String day,
        String crew,
        int packPlaces,
        int trip,
        int stop,
        int arrival,
        int departure,
        List<Charge> charges) {

    /** Packs of one type, brought to one level. */
    public record Charge(PackType pack, ChargeLevel level) {}

    /** A visit and one thing that the host may give on it. */
    public record Service(Visit visit, Charge charge) {

        /** A name that no other service of the phase has. */
        public String key() {
            return "%s %s stop %d %s %s"
                    .formatted(
                            visit.crew,
                            visit.day,
                            visit.stop,
                            charge.pack.id(),
                            charge.level == ChargeLevel.FULL ? "full" : "80");
        }
    }

    /** Everything that the host may give. */
    public List<Service> services() {
        return charges.stream().map(charge -> new Service(this, charge)).toList();
    }

    /** Minutes between the two handovers. */
    public int minutes() {
        return departure - arrival;
    }

    /** Whether the host is a depot, or the home. */
    public boolean concerns(String depot) {
        return host.equals(depot) || home.equals(depot);
    }
}
