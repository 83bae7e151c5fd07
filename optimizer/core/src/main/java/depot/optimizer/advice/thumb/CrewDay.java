package depot.optimizer.advice.thumb;

import depot.optimizer.advice.thumb.ChargerDay.Stay;
import depot.optimizer.plan.TripPlan;
import depot.optimizer.plan.TripPlan.Carried;
import depot.optimizer.problem.ChargeLevel;
import depot.optimizer.problem.DayKind;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.Trip;
import depot.optimizer.problem.Trip.FamilyNeed;
import depot.optimizer.scenario.Crew;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One crew over one day. It takes as many of its packs as the day's work asks for, as far as it has them and places for them, and hands all of them
 * in when it comes back.
 */
final class CrewDay {

    private static final double ROUNDING_WH = 1e-6;

    private final DepotProblem problem;
    private final DayKind kind;
    private final Crew crew;
    private final Map<String, FamilyChoice> families;
    private final ChargerDay chargers;
    private final Map<String, Ready> ready = new LinkedHashMap<>();

    /** Packs of a family that lie ready. */
    private record Ready(int full, int eighty) {}

    /**
     * @param packs of the crew by family
     */
    CrewDay(
            DepotProblem problem,
            DayKind kind,
            Crew crew,
            Map<String, Integer> packs,
            Map<String, FamilyChoice> families,
            ChargerDay chargers) {
        this.problem = problem;
        this.kind = kind;
        this.crew = crew;
        this.families = families;
        this.chargers = chargers;
        packs.forEach((family, count) -> ready.put(family, new Ready(count, 0)));
    }

    /** The crew's trips, its packs put into chargers in between and after them. */
    List<TripPlan> trips() {
        List<Trip> trips = kind.trips().stream()
                .filter(trip -> trip.crew().equals(crew.id()))
                .toList();
        List<TripPlan> planned = new ArrayList<>();
        for (int t = 0; t < trips.size(); t++) {
            Map<String, Ready> taken = take(trips.get(t));
            planned.add(plan(trips.get(t), taken));
            int back = trips.get(t).arrival();
            boolean last = t + 1 == trips.size() || trips.get(t + 1).departure() <= back;
            for (Map.Entry<String, Ready> family : taken.entrySet()) {
                int count = family.getValue().full() + family.getValue().eighty();
                int left = last ? count : count - atLunch(family.getKey(), count, trips.get(t + 1), back);
                chargers.overnight(family.getKey(), back, problem.poolOf(crew.id()), left);
            }
        }
        return planned;
    }

    private Map<String, Ready> take(Trip trip) {
        Map<String, Ready> taken = new LinkedHashMap<>();
        int places = crew.packPlaces();
        for (FamilyNeed need : trip.needs()) {
            Ready there = ready.getOrDefault(need.family(), new Ready(0, 0));
            Ready packs = wanted(need, there, places);
            if (packs.full() + packs.eighty() > 0) {
                taken.put(need.family(), packs);
                ready.put(need.family(), new Ready(there.full() - packs.full(), there.eighty() - packs.eighty()));
                places -= packs.full() + packs.eighty();
            }
        }
        return taken;
    }

    /** As many as give the energy and one for each tool that runs at once; those at 80 % first. */
    private Ready wanted(FamilyNeed need, Ready there, int places) {
        FamilyChoice choice = families.get(need.family());
        double usableWh = choice == null ? 0 : problem.usableWh(choice.pack(), kind);
        double leftWh = need.totalWh();
        int full = 0;
        int eighty = 0;
        while (full + eighty < places && (leftWh > ROUNDING_WH || full + eighty < need.toolsAtOnce())) {
            if (eighty < there.eighty()) {
                eighty++;
                leftWh -= ChargeLevel.EIGHTY.share() * usableWh;
            } else if (full < there.full()) {
                full++;
                leftWh -= usableWh;
            } else {
                break;
            }
        }
        return new Ready(full, eighty);
    }

    /** Charges packs before the next trip: all to the full where there is time, otherwise as many to 80 % as it lacks; says how many. */
    private int atLunch(String family, int count, Trip next, int back) {
        FamilyChoice choice = families.get(family);
        Ready there = ready.get(family);
        Stay stay = new Stay(back, next.departure());
        String pool = problem.poolOf(crew.id());
        int full = chargers.atLunch(family, choice, pool, count, stay, ChargeLevel.FULL);
        if (full > 0) {
            ready.put(family, new Ready(there.full() + full, there.eighty()));
            return full;
        }
        int lacking = lacking(family, next, choice, there);
        int eighty = chargers.atLunch(family, choice, pool, Math.min(count, lacking), stay, ChargeLevel.EIGHTY);
        ready.put(family, new Ready(there.full(), there.eighty() + eighty));
        return eighty;
    }

    /** Packs at 80 % that the next trip wants beside the full ones that are there. */
    private int lacking(String family, Trip next, FamilyChoice choice, Ready there) {
        double wh = next.needs().stream()
                .filter(need -> need.family().equals(family))
                .mapToDouble(FamilyNeed::totalWh)
                .sum();
        double usableWh = problem.usableWh(choice.pack(), kind);
        double packs = (wh - there.full() * usableWh) / (ChargeLevel.EIGHTY.share() * usableWh);
        return Math.max(0, (int) Math.ceil(packs - ROUNDING_WH) - there.eighty());
    }

    private TripPlan plan(Trip trip, Map<String, Ready> taken) {
        List<Carried> carried = new ArrayList<>();
        taken.forEach((family, packs) ->
                carried.add(new Carried(families.get(family).pack().id(), packs.full(), packs.eighty())));
        return new TripPlan(
                trip.crew(),
                trip.number(),
                trip.leaveMinute(),
                trip.returnMinute(),
                List.copyOf(carried),
                List.of(),
                List.of());
    }
}
