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
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

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
        BatchSpan span = new BatchSpan(feed, c, times.from(), times.to());
        List<Load> here = new ArrayList<>();
        Map<PackKind, Integer> slotsOf = new LinkedHashMap<>();
        // Slot count -> longest time until a charger loaded to that count is done.
        TreeMap<Integer, Integer> classes = new TreeMap<>();
        for (Fit fit : charger.fits()) {
            for (ChargeLevel level : ChargeLevel.values()) {
                int slots = SpanMenu.usefulSlots(charger, fit, level, span.minutes());
                if (slots > 0 && used(fit)) {
                    slotsOf.put(new PackKind(fit, level), slots);
                    int rounds = -Math.floorDiv(-slots, charger.type().chargingAtOnce());
                    classes.merge(slots, rounds * fit.minutes(level), Math::max);
                }
            }
        }
        List<Filling> mixed = mixed(span, charger, slotsOf, classes.keySet());
        slotsOf.forEach(
                (kind, slots) -> addLoads(here, span, kind, slots, mixed.isEmpty() ? turns(span, charger, slots) : 1));
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
        return TripDeclaration.MOST_PACKS
                * (int) day.trips().stream()
                        .filter(trip -> trip.arrival() <= span.from())
                        .count();
    }

    private boolean used(Fit fit) {
        return day.trips().stream().flatMap(trip -> trip.needs().stream()).anyMatch(need -> need.family()
                .equals(fit.pack().family()));
    }

    private void addLoads(List<Load> here, BatchSpan span, PackKind kind, int slots, int turns) {
        Fit fit = kind.fit();
        for (int q = 0; q < problem.pools().size(); q++) {
            if (span.from() >= firstArrival(q)) {
                String key = span.key() + "_" + fit.pack().id() + "_" + kind.level() + "_q" + q;
                List<Var> rounds = new ArrayList<>();
                for (int r = 0; r < turns; r++) {
                    rounds.add(model.integer(name("load", key + "_r" + r), 0, mostPacks(span)));
                }
                here.add(new Load(span, kind, q, problem.packTypes().indexOf(fit.pack()), slots, List.copyOf(rounds)));
            }
        }
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
