package depot.optimizer.model;

import depot.optimizer.mip.Expr;
import depot.optimizer.mip.MipModel;
import depot.optimizer.mip.Var;
import depot.optimizer.problem.ChargeLevel;
import depot.optimizer.problem.ChargerOption;
import depot.optimizer.problem.ChargerOption.Fit;
import depot.optimizer.problem.DayKind;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.Slice;
import depot.optimizer.problem.Trip;
import depot.optimizer.problem.Visit;
import depot.optimizer.problem.Visit.Charge;
import depot.optimizer.problem.Visit.Service;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.IntStream;

/** Declares the variables of one kind of day. */
final class DayDeclaration {

    private final MipModel model;
    private final DepotProblem problem;
    private final CapacityVars capacity;
    private final DayKind day;
    private final String tag;
    private final ShortagePolicy policy;
    private final SpanMenu menu;
    private final PlainPrice price;
    private final Map<BatchSpan, List<Load>> loads = new LinkedHashMap<>();
    private final Map<BatchSpan, List<Filling>> fillings = new LinkedHashMap<>();
    private final List<Batch> batches = new ArrayList<>();

    DayDeclaration(
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
        menu = new SpanMenu(day);
        price = new PlainPrice(day);
    }

    DayVars declare() {
        List<TripVars> trips = new TripDeclaration(model, problem, capacity, day, tag, policy).declare();
        for (int i = 0; i < problem.chargers().size(); i++) {
            int c = i;
            ChargerOption charger = problem.chargers().get(c);
            menu.plainSpans(charger).forEach(span -> declareSpan(Feed.PLAIN, span, c, charger));
            if (!problem.unitTypes().isEmpty()) {
                menu.prioritySpans(charger).forEach(span -> declareSpan(Feed.PRIORITY, span, c, charger));
                menu.waitingSpans(charger).forEach(span -> declareSpan(Feed.WAITING, span, c, charger));
            }
        }
        for (int g = 0; g < day.guests().size(); g++) {
            declareGuest(g);
        }
        return new DayVars(
                day,
                tag,
                trips,
                List.copyOf(batches),
                loads,
                fillings,
                declareEnergy(),
                new ArrayList<>(),
                new Expr(),
                problem.packTypes().stream().map(p -> new Expr()).toList());
    }

    private void declareSpan(Feed feed, SpanMenu.Span times, int c, ChargerOption charger) {
        BatchSpan span = BatchSpan.own(feed, c, times.from(), times.to());
        Map<PackKind, Integer> slotsOf = new LinkedHashMap<>();
        for (Fit fit : charger.fits()) {
            for (ChargeLevel level : ChargeLevel.values()) {
                int slots = charger.usefulSlots(fit, level, span.minutes());
                if (slots > 0 && used(fit)) {
                    slotsOf.put(new PackKind(fit, level), slots);
                }
            }
        }
        List<Integer> pools = IntStream.range(0, problem.pools().size())
                .filter(q -> span.from() >= firstArrival(q))
                .boxed()
                .toList();
        declareSpan(span, charger, slotsOf, kind -> pools);
    }

    /** A visiting crew is there to hand packs in and to collect them, so that its packs are in one span of its own for each charger and feed. */
    private void declareGuest(int guest) {
        Visit visit = day.guests().get(guest);
        for (int c = 0; c < problem.chargers().size(); c++) {
            declareGuest(new BatchSpan(Feed.PLAIN, c, visit.arrival(), visit.departure(), guest));
            if (!problem.unitTypes().isEmpty()) {
                declareGuest(new BatchSpan(Feed.PRIORITY, c, visit.arrival(), visit.departure(), guest));
            }
        }
    }

    private void declareGuest(BatchSpan span) {
        Visit visit = day.guests().get(span.guest());
        ChargerOption charger = problem.chargers().get(span.charger());
        Map<PackKind, Integer> slotsOf = new LinkedHashMap<>();
        for (Charge charge : visit.charges()) {
            for (Fit fit : charger.fits()) {
                int slots = charger.usefulSlots(fit, charge.level(), span.minutes());
                if (fit.pack().equals(charge.pack()) && slots > 0) {
                    slotsOf.put(new PackKind(fit, charge.level()), slots);
                }
            }
        }
        declareSpan(
                span,
                charger,
                slotsOf,
                kind -> List.of(problem.pools().size()
                        + problem.guestServices()
                                .indexOf(
                                        new Service(visit, new Charge(kind.fit().pack(), kind.level())))));
    }

    /**
     * Declares a span.
     *
     * @param slotsOf packs that one charger may hold, by kind
     * @param owners whose packs may be of a kind: pools or services of guests
     */
    private void declareSpan(
            BatchSpan span,
            ChargerOption charger,
            Map<PackKind, Integer> slotsOf,
            Function<PackKind, List<Integer>> owners) {
        List<Load> here = new ArrayList<>();
        // Slot count -> longest time until a charger loaded to that count is done.
        TreeMap<Integer, Integer> classes = new TreeMap<>();
        slotsOf.forEach((kind, slots) -> {
            int rounds = -Math.floorDiv(-slots, charger.type().chargingAtOnce());
            classes.merge(slots, rounds * kind.minutes(), Math::max);
        });
        List<Filling> mixed = mixed(span, charger, slotsOf, classes.keySet());
        slotsOf.forEach((kind, slots) -> owners.apply(kind)
                .forEach(owner ->
                        here.add(load(span, kind, owner, slots, mixed.isEmpty() ? turns(span, charger, slots) : 1))));
        classes.forEach((slots, busy) -> batches.add(new Batch(
                span,
                slots,
                model.integer(name("chargers", span.key() + "_m" + slots), 0, mostPacks(span)),
                span.waits() ? span.minutes() : busy)));
        if (!here.isEmpty()) {
            loads.put(span, here);
            if (!mixed.isEmpty()) {
                fillings.put(span, mixed);
            }
        }
    }

    /** Where packs of several kinds take turns while the price changes, all that a charger may hold; otherwise turns are enough, or nothing. */
    private List<Filling> mixed(
            BatchSpan span, ChargerOption charger, Map<PackKind, Integer> slotsOf, Collection<Integer> classes) {
        boolean turns = slotsOf.values().stream().anyMatch(slots -> turns(span, charger, slots) > 1);
        if (!turns || slotsOf.size() < 2) {
            return List.of();
        }
        FillingMenu menu = new FillingMenu(span.from(), charger.type().chargingAtOnce(), price, slotsOf);
        List<Filling> mixed = new ArrayList<>();
        for (FillingMenu.Choice choice : menu.choices(classes).orElse(List.of())) {
            String key = span.key() + "_m" + choice.slots() + "_" + mixed.size();
            mixed.add(new Filling(
                    choice.slots(),
                    choice.order(),
                    choice.energyCost(),
                    model.integer(name("filled", key), 0, mostPacks(span))));
        }
        return List.copyOf(mixed);
    }

    /** Packs that crews can have brought back when the span begins. */
    private int mostPacks(BatchSpan span) {
        if (span.guests()) {
            return day.guests().get(span.guest()).packPlaces();
        }
        return TripDeclaration.MOST_PACKS
                * (int) day.trips().stream()
                        .filter(trip -> trip.arrival() <= span.from())
                        .count();
    }

    private boolean used(Fit fit) {
        return day.trips().stream().flatMap(trip -> trip.needs().stream()).anyMatch(need -> need.family()
                .equals(fit.pack().family()));
    }

    private Load load(BatchSpan span, PackKind kind, int q, int slots, int turns) {
        Fit fit = kind.fit();
        String key = span.key() + "_" + fit.pack().id() + "_" + kind.level() + "_q" + q;
        List<Var> rounds = new ArrayList<>();
        for (int r = 0; r < turns; r++) {
            rounds.add(model.integer(name("load", key + "_r" + r), 0, mostPacks(span)));
        }
        return new Load(span, kind, q, problem.packTypes().indexOf(fit.pack()), slots, List.copyOf(rounds));
    }

    /** One variable per turn only where the price changes while the turns follow each other. */
    private int turns(BatchSpan span, ChargerOption charger, int slots) {
        int atOnce = charger.type().chargingAtOnce();
        boolean flat = span.waits() || slots <= atOnce || price.flat(span.from(), span.to());
        return flat ? 1 : -Math.floorDiv(-slots, atOnce);
    }

    private int firstArrival(int pool) {
        String id = problem.pools().get(pool);
        return day.trips().stream()
                .filter(trip -> problem.poolOf(trip.crew()).equals(id))
                .mapToInt(Trip::arrival)
                .min()
                .orElse(Integer.MAX_VALUE);
    }

    private Var[][] declareEnergy() {
        int circuits = problem.unitTypes().isEmpty() ? 0 : problem.circuits().size();
        int firstWaiting = loads.keySet().stream()
                .filter(BatchSpan::waits)
                .mapToInt(BatchSpan::from)
                .min()
                .orElse(Integer.MAX_VALUE);
        Var[][] energy = new Var[circuits][day.slices().size()];
        for (int k = 0; k < circuits; k++) {
            for (int s = 0; s < energy[k].length; s++) {
                Slice slice = day.slices().get(s);
                double most = slice.fromMinute() < firstWaiting ? 0 : MipModel.INFINITY;
                energy[k][s] = model.continuous(name("energy", "k" + k + "_" + slice.fromMinute()), 0, most);
            }
        }
        return energy;
    }

    private String name(String quantity, String key) {
        return quantity + "_" + key + "@" + tag;
    }
}
