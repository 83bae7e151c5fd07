package depot.optimizer.model;

import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.Trip;
import depot.optimizer.scenario.Crew;
import depot.optimizer.scenario.PowerBankType;

/** Which crews can find power on the road at all. */
final class RoadPower {

    private RoadPower() {}

    /** Whether any trip of the crew passes mains, its vehicle gives power, or power banks are on offer. */
    static boolean reaches(DepotProblem problem, String crew) {
        return !problem.bankTypes().isEmpty()
                || problem.crews().stream().anyMatch(c -> c.id().equals(crew) && c.vehicleWatts() > 0)
                || problem.days().stream()
                        .flatMap(day -> day.trips().stream())
                        .filter(trip -> trip.crew().equals(crew))
                        .flatMap(trip -> trip.stops().stream())
                        .anyMatch(stop -> stop.siteWatts() > 0);
    }

    /** Whether a bank that the crew empties is full again by the earliest departure, on every day. */
    static boolean rechargeable(DepotProblem problem, String crew, PowerBankType bank) {
        return problem.days().stream().allMatch(day -> day.trips().stream()
                .filter(trip -> trip.crew().equals(crew))
                .allMatch(trip -> trip.arrival() + bank.rechargeMinutes() <= problem.endMinute()));
    }

    /** Power of the crew's vehicle, in watts. */
    static double vehicleWatts(DepotProblem problem, Trip trip) {
        return problem.crews().stream()
                .filter(crew -> crew.id().equals(trip.crew()))
                .mapToDouble(Crew::vehicleWatts)
                .findFirst()
                .orElse(0);
    }
}
