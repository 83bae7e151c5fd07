package depot.optimizer.model;

import depot.optimizer.mip.MipModel;
import depot.optimizer.mip.Var;
import depot.optimizer.model.TripVars.Carried;
import depot.optimizer.plan.TripPlan.RoadSource;
import depot.optimizer.problem.ChargeLevel;
import depot.optimizer.problem.ChargerOption;
import depot.optimizer.problem.ChargerOption.Fit;
import depot.optimizer.problem.DayKind;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.Trip;
import depot.optimizer.problem.Trip.TripStop;
import depot.optimizer.problem.Visit;
import depot.optimizer.problem.Visit.Service;
import depot.optimizer.scenario.Crew;
import depot.optimizer.scenario.PackType;
import java.util.ArrayList;
import java.util.List;

/** Declares the variables of the trips of one kind of day. */
final class TripDeclaration {

    /** A bound for the solver's sake; the vehicle's places are a row, which may be loosened. */
    static final int MOST_PACKS = 99;

    private final MipModel model;
    private final DepotProblem problem;
    private final CapacityVars capacity;
    private final DayKind day;
    private final String tag;
    private final ShortagePolicy policy;

    TripDeclaration(
            MipModel model,
            DepotProblem problem,
            CapacityVars capacity,
            DayKind day,
            String tag,
            ShortagePolicy policy) {
        this.capacity = capacity;
        this.policy = policy;
        this.model = model;
        this.problem = problem;
        this.day = day;
        this.tag = tag;
    }

    List<TripVars> declare() {
        return day.trips().stream().map(this::declare).toList();
    }

    private TripVars declare(Trip trip) {
        int w = crewIndex(trip);
        String key = trip.crew() + "_" + trip.number();
        List<Carried> carried = new ArrayList<>();
        for (int p = 0; p < problem.packTypes().size(); p++) {
            PackType pack = problem.packTypes().get(p);
            if (trip.needs().stream().anyMatch(need -> need.family().equals(pack.family()))) {
                double wh = problem.usableWh(pack, day);
                carried.add(new Carried(
                        p,
                        pack,
                        wh,
                        model.integer(name("full", key + "_" + pack.id()), 0, MOST_PACKS),
                        model.integer(name("eighty", key + "_" + pack.id()), 0, MOST_PACKS)));
            }
        }
        List<Var> shortWh = trip.needs().stream()
                .map(need -> model.continuous(
                        name("short", key + "_" + need.family()),
                        0,
                        policy == ShortagePolicy.REFUSE ? 0 : need.totalWh()))
                .toList();
        int pool = problem.pools().indexOf(problem.poolOf(trip.crew()));
        List<RoadLoad> roads = new ArrayList<>(roads(trip, key));
        addVisits(roads, trip, key);
        return new TripVars(trip, w, capacity.electric[w], pool, List.copyOf(carried), shortWh, List.copyOf(roads));
    }

    private int crewIndex(Trip trip) {
        for (int w = 0; w < problem.crews().size(); w++) {
            if (problem.crews().get(w).id().equals(trip.crew())) {
                return w;
            }
        }
        throw new IllegalStateException(
                "crew " + trip.crew() + " does not work from " + problem.depot().id());
    }

    private List<RoadLoad> roads(Trip trip, String key) {
        List<RoadLoad> roads = new ArrayList<>();
        List<TripStop> stops = trip.stops();
        for (int i = 1; i < stops.size(); i++) {
            TripStop site = stops.get(i);
            if (site.siteWatts() > 0 && i + 1 < stops.size()) {
                add(roads, key, trip, RoadSource.SITE, i - 1, i + 1, site.arriveMinute(), site.leaveMinute(), -1);
            }
        }
        boolean vehicle = RoadPower.vehicleWatts(problem, trip) > 0;
        for (int a = 0; a < stops.size(); a++) {
            for (int b = a + 1; b < stops.size(); b++) {
                int from = stops.get(a).leaveMinute();
                int to = stops.get(b).arriveMinute();
                if (vehicle) {
                    add(roads, key, trip, RoadSource.VEHICLE, a, b, from, to, -1);
                }
                for (int bank = 0; bank < problem.bankTypes().size(); bank++) {
                    Crew crew = problem.crews().get(crewIndex(trip));
                    if (RoadPower.rechargeable(
                            problem, crew.id(), problem.bankTypes().get(bank))) {
                        add(roads, key, trip, RoadSource.BANK, a, b, from, to, bank);
                    }
                }
            }
        }
        return roads;
    }

    /** Packs that bays of another depot fill while the crew is there. */
    private void addVisits(List<RoadLoad> roads, Trip trip, String tripKey) {
        List<Service> services = problem.services();
        for (int i = 0; i < services.size(); i++) {
            Visit visit = services.get(i).visit();
            if (day.visits().contains(visit) && visit.crew().equals(trip.crew()) && visit.trip() == trip.number()) {
                int stop = trip.indexOf(visit.stop());
                roads.add(RoadLoad.ofVisit(
                        services.get(i),
                        i,
                        stop,
                        model.integer(name("road", tripKey + "_VISIT_" + i), 0, visit.packPlaces())));
            }
        }
    }

    private void add(
            List<RoadLoad> roads,
            String tripKey,
            Trip trip,
            RoadSource source,
            int emptiedBy,
            int servesFrom,
            int from,
            int to,
            int bank) {
        for (int t = 0; t < problem.portableChargers().size(); t++) {
            ChargerOption option = problem.portableChargers().get(t);
            for (Fit fit : option.fits()) {
                int slots = option.slots(fit, ChargeLevel.FULL, to - from);
                boolean needed = trip.needs().stream()
                        .anyMatch(need -> need.family().equals(fit.pack().family()));
                if (slots > 0 && needed) {
                    String key = tripKey + "_" + source + (bank < 0 ? "" : bank) + "_" + emptiedBy + "_" + servesFrom
                            + "_t" + t + "_" + fit.pack().id();
                    roads.add(new RoadLoad(
                            source,
                            emptiedBy,
                            servesFrom,
                            from,
                            to,
                            bank,
                            t,
                            option,
                            fit,
                            slots,
                            model.integer(name("roadChargers", key), 0, 9),
                            model.integer(name("road", key), 0, 99),
                            RoadLoad.NO_SERVICE));
                }
            }
        }
    }

    private String name(String quantity, String key) {
        return quantity + "_" + key + "@" + tag;
    }
}
