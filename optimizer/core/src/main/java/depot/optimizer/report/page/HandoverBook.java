package depot.optimizer.report.page;

import depot.optimizer.plan.BankPlacement;
import depot.optimizer.plan.ChargerLoad;
import depot.optimizer.plan.ChargerPlacement;
import depot.optimizer.plan.DayPlan;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.TripPlan;
import depot.optimizer.report.page.Handover.Step;
import depot.optimizer.report.text.Clock;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * A day's work in the depot, handover by handover. At each, in this order: collect what is charged, take in what comes back, load
 * chargers, give out what leaves.
 */
final class HandoverBook {

    private final Map<String, ChargerPlacement> chargers;
    private final DepotPlan plan;
    private final int rounding;
    private final Map<Integer, Map<Deed, List<Step>>> steps = new TreeMap<>();

    private enum Deed {
        COLLECT,
        TAKE_IN,
        LOAD,
        PLUG_IN,
        GIVE_OUT
    }

    private HandoverBook(DepotPlan plan, int handoverMinutes) {
        this.chargers = plan.chargers().stream().collect(Collectors.toMap(ChargerPlacement::id, charger -> charger));
        this.plan = plan;
        this.rounding = handoverMinutes;
    }

    /** Trips leave at the handover before their time and are back at the one after. */
    static List<Handover> of(DepotPlan plan, DayPlan day, int handoverMinutes) {
        HandoverBook book = new HandoverBook(plan, handoverMinutes);
        day.loads().forEach(book::load);
        day.trips().forEach(book::trip);
        plan.banks().forEach(bank -> book.bank(bank, day));
        List<Handover> handovers = new ArrayList<>();
        book.steps.forEach((minute, deeds) -> handovers.add(new Handover(
                Clock.time(minute),
                deeds.values().stream().flatMap(List::stream).toList())));
        return handovers;
    }

    private void load(ChargerLoad load) {
        ChargerPlacement charger = chargers.get(load.charger());
        String place = charger == null
                ? ""
                : "circuit %s, %soutlet %d"
                        .formatted(charger.circuit(), charger.shared() ? "unit " : "", charger.outlet());
        String packs = load.packs().stream().map(this::words).collect(Collectors.joining(", then "));
        String ready = "stays until " + Clock.time(load.collectMinute());
        add(load.loadMinute(), Deed.LOAD, new Step("Load", load.charger(), place, packs, ready));
        String collected = load.packs().stream()
                .map(group -> group.count() + " x " + group.packType())
                .collect(Collectors.joining(", "));
        String since = "loaded at " + Clock.time(load.loadMinute());
        add(load.collectMinute(), Deed.COLLECT, new Step("Collect", load.charger(), place, collected, since));
    }

    private String words(ChargerLoad.Loaded group) {
        String level = group.level() == ChargerLoad.Level.FULL ? "" : " to 80 %";
        String of = plan.visitor(group.pool()) ? " of the visiting " : " of ";
        String owner = group.pool().equals(plan.depot()) ? "" : of + group.pool();
        return group.count() + " x " + group.packType() + owner + level;
    }

    private void trip(TripPlan trip) {
        int out = Math.floorDiv(trip.leaveMinute(), rounding) * rounding;
        int back = roundedUp(trip.returnMinute());
        String given = trip.carried().stream().map(HandoverBook::words).collect(Collectors.joining(", "));
        String returned = trip.carried().stream()
                .map(carried -> carried.full() + carried.at80() + " x " + carried.packType())
                .collect(Collectors.joining(", "));
        String who = trip.crew() + ", trip " + trip.trip();
        String leaves = "leaves at " + Clock.time(trip.leaveMinute());
        add(out, Deed.GIVE_OUT, new Step("Give out", who, "", given.isEmpty() ? "none" : given, leaves));
        String arrives = "back at " + Clock.time(trip.returnMinute());
        add(back, Deed.TAKE_IN, new Step("Take in", who, "", returned.isEmpty() ? "none" : returned, arrives));
    }

    /** A crew's power bank recharges from its last return of the day. */
    private void bank(BankPlacement bank, DayPlan day) {
        day.trips().stream()
                .filter(trip -> trip.crew().equals(bank.crew()))
                .mapToInt(TripPlan::returnMinute)
                .max()
                .ifPresent(back -> add(
                        roundedUp(back),
                        Deed.PLUG_IN,
                        new Step(
                                "Plug in",
                                "power bank of " + bank.crew(),
                                "circuit %s, outlet %d".formatted(bank.circuit(), bank.outlet()),
                                bank.bankType(),
                                "until the crew leaves again")));
    }

    private int roundedUp(int minute) {
        return -Math.floorDiv(-minute, rounding) * rounding;
    }

    private static String words(TripPlan.Carried carried) {
        if (carried.at80() == 0) {
            return carried.full() + " x " + carried.packType();
        }
        return "%d x %s full and %d at 80 %%".formatted(carried.full(), carried.packType(), carried.at80());
    }

    private void add(int minute, Deed deed, Step step) {
        steps.computeIfAbsent(minute, any -> new EnumMap<>(Deed.class))
                .computeIfAbsent(deed, any -> new ArrayList<>())
                .add(step);
    }
}
