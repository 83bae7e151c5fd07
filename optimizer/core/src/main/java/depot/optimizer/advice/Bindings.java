package depot.optimizer.advice;

import depot.optimizer.advice.Binding.Limit;
import depot.optimizer.plan.ChargerLoad;
import depot.optimizer.plan.ChargerPlacement;
import depot.optimizer.plan.DayPlan;
import depot.optimizer.plan.TripPlan;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.DepotProblem.CircuitSite;
import depot.optimizer.replay.DayReplay;
import depot.optimizer.replay.DayReplay.Peak;
import depot.optimizer.scenario.ChargerType;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Finds the moment at which each piece of a plan is needed most, from the plan's days and their replay. */
final class Bindings {

    private final DepotProblem problem;
    private final ReplayedPlan planned;
    private final Map<String, ChargerType> types;

    Bindings(DepotProblem problem, ReplayedPlan planned) {
        this.problem = problem;
        this.planned = planned;
        types = problem.chargers().stream()
                .collect(Collectors.toMap(option -> option.type().id(), option -> option.type()));
    }

    /** The moment, the first of those that are alike; empty: the plan's days do not use the piece. */
    Optional<Binding> of(Piece piece) {
        List<Binding> moments = new ArrayList<>();
        for (int d = 0; d < planned.plan().days().size(); d++) {
            DayPlan day = planned.plan().days().get(d);
            moments.addAll(
                    switch (piece.kind()) {
                        case PACK -> packsOut(day, piece);
                        case CHARGER -> bays(day, piece);
                        case UNIT -> plates(d, piece);
                        case CIRCUIT -> peaks(d, piece.item(), Limit.CURRENT);
                        case SUPPLY -> supply(d);
                        case PORTABLE, BANK -> onTheWay(day, piece);
                    });
        }
        double most = moments.stream().mapToDouble(Binding::used).max().orElse(0);
        return moments.stream()
                .filter(moment -> moment.used() > 0 && moment.used() >= most)
                .findFirst();
    }

    private static List<Binding> packsOut(DayPlan day, Piece piece) {
        List<Binding> moments = new ArrayList<>();
        for (TripPlan leaving : day.trips()) {
            int at = leaving.leaveMinute();
            List<TripPlan> out = day.trips().stream()
                    .filter(trip -> trip.leaveMinute() <= at && at < trip.returnMinute() && carried(trip, piece) > 0)
                    .toList();
            int back = out.stream().mapToInt(TripPlan::returnMinute).min().orElse(at);
            int packs = out.stream().mapToInt(trip -> carried(trip, piece)).sum();
            moments.add(new Binding(Limit.PACKS_OUT, day.occurrences(), crews(out), at, back, packs, piece.count()));
        }
        return moments;
    }

    private static int carried(TripPlan trip, Piece piece) {
        return trip.carried().stream()
                .filter(packs -> packs.packType().equals(piece.item()))
                .mapToInt(packs -> packs.full() + packs.at80())
                .sum();
    }

    private static List<String> crews(Collection<TripPlan> trips) {
        return trips.stream().map(TripPlan::crew).distinct().toList();
    }

    private List<Binding> bays(DayPlan day, Piece piece) {
        Set<String> ids = planned.plan().chargers().stream()
                .filter(charger -> charger.circuit().equals(piece.where())
                        && charger.chargerType().equals(piece.item()))
                .map(ChargerPlacement::id)
                .collect(Collectors.toCollection(LinkedHashSet::new));
        int bays = piece.count() * types.get(piece.item()).bays();
        List<ChargerLoad> loads = day.loads().stream()
                .filter(load -> ids.contains(load.charger()))
                .toList();
        List<Binding> moments = new ArrayList<>();
        for (ChargerLoad loaded : loads) {
            int at = loaded.loadMinute();
            List<ChargerLoad> in = loads.stream()
                    .filter(load -> load.loadMinute() <= at && at < load.collectMinute())
                    .toList();
            int packs = in.stream()
                    .flatMap(load -> load.packs().stream())
                    .mapToInt(ChargerLoad.Loaded::count)
                    .sum();
            int collected =
                    in.stream().mapToInt(ChargerLoad::collectMinute).min().orElse(at);
            moments.add(new Binding(Limit.BAYS, day.occurrences(), List.of(), at, collected, packs, bays));
        }
        return moments;
    }

    private List<Binding> plates(int d, Piece piece) {
        CircuitSite site = problem.circuits().stream()
                .filter(each -> each.circuit().id().equals(piece.where()))
                .findFirst()
                .orElseThrow();
        double plates = planned.plan().chargers().stream()
                .filter(charger -> charger.circuit().equals(piece.where()))
                .mapToDouble(charger -> types.get(charger.chargerType()).plateWatts() / site.wattsPerAmp())
                .sum();
        double usable = site.usableAmps(site.peakBaseAmps());
        return peaks(d, piece.where(), Limit.PLATES).stream()
                .map(moment -> new Binding(
                        Limit.PLATES,
                        moment.days(),
                        moment.crews(),
                        moment.fromMinute(),
                        moment.toMinute(),
                        plates,
                        usable))
                .toList();
    }

    private List<Binding> supply(int d) {
        double share = problem.depot().supplyAmps() / problem.depot().supplyUpgradeAmps();
        return peaks(d, DayReplay.SUPPLY, Limit.SUPPLY).stream()
                .map(moment -> new Binding(
                        Limit.SUPPLY,
                        moment.days(),
                        moment.crews(),
                        moment.fromMinute(),
                        moment.toMinute(),
                        moment.used(),
                        moment.there() * share))
                .toList();
    }

    private List<Binding> peaks(int d, String circuit, Limit limit) {
        return planned.replays().get(0).days().stream()
                .filter(run -> run.day() == d)
                .flatMap(run -> run.peaks().stream()
                        .filter(peak -> peak.circuit().equals(circuit))
                        .map(peak -> peak(run, peak, limit)))
                .toList();
    }

    private static Binding peak(DayReplay run, Peak peak, Limit limit) {
        return new Binding(
                limit, run.occurrences(), List.of(), peak.minute(), peak.minute() + 1, peak.amps(), peak.limitAmps());
    }

    private static List<Binding> onTheWay(DayPlan day, Piece piece) {
        return day.trips().stream()
                .filter(trip -> trip.crew().equals(piece.where()))
                .map(trip -> onTheWay(day, trip))
                .toList();
    }

    private static Binding onTheWay(DayPlan day, TripPlan trip) {
        int recharged =
                trip.roadCharges().stream().mapToInt(TripPlan.RoadCharge::packs).sum();
        int taken = trip.carried().stream()
                .mapToInt(packs -> packs.full() + packs.at80())
                .sum();
        return new Binding(
                Limit.ON_THE_WAY,
                day.occurrences(),
                List.of(trip.crew()),
                trip.leaveMinute(),
                trip.returnMinute(),
                recharged,
                taken);
    }
}
