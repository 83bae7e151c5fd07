package depot.optimizer.replay;

import depot.optimizer.plan.BankPlacement;
import depot.optimizer.plan.Certificate;
import depot.optimizer.plan.ChargerLoad;
import depot.optimizer.plan.ChargerLoad.Level;
import depot.optimizer.plan.ChargerLoad.Loaded;
import depot.optimizer.plan.ChargerPlacement;
import depot.optimizer.plan.CostLine;
import depot.optimizer.plan.CrewKit;
import depot.optimizer.plan.DayPlan;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.EnergyUse;
import depot.optimizer.plan.PackStock;
import depot.optimizer.plan.SeasonDay;
import depot.optimizer.plan.SolveStop;
import depot.optimizer.plan.TripPlan;
import depot.optimizer.plan.TripPlan.Carried;
import depot.optimizer.plan.TripPlan.RoadCharge;
import depot.optimizer.plan.TripPlan.RoadSource;
import depot.optimizer.plan.TripPlan.Shortage;
import depot.optimizer.plan.UnitFeed;
import depot.optimizer.plan.UnitPlacement;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * The plan of depot D drawn in text, one thing per line. One day serves every weekday of season year, unless a line
 * "day Mon-Fri start=06:00 per_year=260" says otherwise and starts another day.
 */
final class PlanText {
    private final List<String> onPetrol = new ArrayList<>();
    private final List<String> built = new ArrayList<>();
    private final List<UnitPlacement> units = new ArrayList<>();
    private final List<ChargerPlacement> chargers = new ArrayList<>();
    private final List<BankPlacement> banks = new ArrayList<>();
    private final List<PackStock> packs = new ArrayList<>();
    private final List<CrewKit> kits = new ArrayList<>();
    private final List<CostLine> costs = new ArrayList<>();
    private final List<DayPlan> days = new ArrayList<>();
    private double cost;
    private boolean upgraded;
    private Day day = new Day();

    /** A day while it is read. */
    private static final class Day {
        private final List<SeasonDay> occurrences = new ArrayList<>();
        private final List<TripPlan> trips = new ArrayList<>();
        private final List<ChargerLoad> loads = new ArrayList<>();
        private final List<UnitFeed> feeds = new ArrayList<>();
        private final List<EnergyUse> energy = new ArrayList<>();
        private double perYear = 364;
        private int start = 480;
        private double demandKw;
    }

    private PlanText() {}

    static DepotPlan read(String text) {
        PlanText reader = new PlanText();
        text.lines().filter(line -> !line.isBlank()).map(Words::new).forEach(reader::row);
        reader.closeDay();
        return reader.plan();
    }

    private void row(Words w) {
        switch (w.kind()) {
            case "petrol" -> onPetrol.add(w.at(1));
            case "built" -> built.add(w.at(1));
            case "upgraded" -> upgraded = true;
            case "unit" -> units.add(new UnitPlacement(w.at(1), w.at(2), w.says("owned")));
            case "charger" ->
                chargers.add(new ChargerPlacement(
                        w.at(1),
                        w.at(2),
                        w.at(3),
                        w.whole("outlet", chargers.size() + 1),
                        w.says("shared"),
                        w.says("priority"),
                        w.says("owned")));
            case "bank" -> banks.add(new BankPlacement(w.at(1), w.at(2), w.at(3), w.whole("outlet", 1)));
            case "stock" ->
                packs.add(new PackStock(
                        w.at(1), w.at(2), Integer.parseInt(w.at(3)), w.whole("owned", 0), w.number("worn", 0)));
            case "kit" -> kits.add(new CrewKit(w.at(1), w.at(2), Integer.parseInt(w.at(3)), w.whole("owned", 0)));
            case "cost" ->
                costs.add(new CostLine(
                        CostLine.Category.valueOf(w.at(1)),
                        w.at(2),
                        w.number("quantity", 1),
                        "piece",
                        w.number("each", 0),
                        w.number("cost", w.number("quantity", 1) * w.number("each", 0))));
            case "total" -> cost = Double.parseDouble(w.at(1));
            default -> dayRow(w);
        }
    }

    private void dayRow(Words w) {
        switch (w.kind()) {
            case "day" -> {
                if (!day.trips.isEmpty() || !day.occurrences.isEmpty()) {
                    closeDay();
                }
                startDay(w);
            }
            case "trip" -> day.trips.add(trip(w));
            case "road" -> road(w);
            case "short" ->
                amendLastTrip(trip -> new TripPlan(
                        trip.crew(),
                        trip.trip(),
                        trip.leaveMinute(),
                        trip.returnMinute(),
                        trip.carried(),
                        trip.roadCharges(),
                        List.of(new Shortage(w.at(1), Double.parseDouble(w.at(2))))));
            case "load" -> day.loads.add(load(w));
            case "feed" ->
                day.feeds.add(
                        new UnitFeed(w.at(1), Words.time(w.at(2)), Words.time(w.at(3)), Double.parseDouble(w.at(4))));
            case "energy" ->
                day.energy.add(new EnergyUse(
                        Words.time(w.at(1)),
                        Words.time(w.at(2)),
                        w.number("kwh", 0),
                        new BigDecimal(w.text("price", "0.20"))));
            case "demand" -> day.demandKw = Double.parseDouble(w.at(1));
            default -> throw new IllegalArgumentException("no line of kind " + w.kind());
        }
    }

    private void startDay(Words w) {
        day = new Day();
        day.start = Words.time(w.text("start", "08:00"));
        for (DayOfWeek weekday : Words.range(w.at(1))) {
            day.occurrences.add(new SeasonDay(w.text("season", "year"), weekday));
        }
        day.perYear = w.number("per_year", 52.0 * day.occurrences.size());
    }

    /** trip A 1 08:00 12:30 P:2 P:1@80. */
    private static TripPlan trip(Words w) {
        List<Carried> carried = new ArrayList<>();
        for (int i = 5; i < w.count(); i++) {
            String[] parts = w.at(i).split("[:@]", -1);
            int count = Integer.parseInt(parts[1]);
            carried.add(parts.length > 2 ? new Carried(parts[0], 0, count) : new Carried(parts[0], count, 0));
        }
        return new TripPlan(
                w.at(1),
                Integer.parseInt(w.at(2)),
                Words.time(w.at(3)),
                Words.time(w.at(4)),
                carried,
                List.of(),
                List.of());
    }

    /** road SITE 2 3 09:00 10:00 Q P 2, on the trip before it. */
    private void road(Words w) {
        RoadCharge charge = new RoadCharge(
                RoadSource.valueOf(w.at(1)),
                Integer.parseInt(w.at(2)),
                Integer.parseInt(w.at(3)),
                Words.time(w.at(4)),
                Words.time(w.at(5)),
                w.at(6),
                w.at(7),
                Integer.parseInt(w.at(8)));
        amendLastTrip(trip -> {
            List<RoadCharge> charges = new ArrayList<>(trip.roadCharges());
            charges.add(charge);
            return new TripPlan(
                    trip.crew(),
                    trip.trip(),
                    trip.leaveMinute(),
                    trip.returnMinute(),
                    trip.carried(),
                    charges,
                    trip.shortages());
        });
    }

    private void amendLastTrip(UnaryOperator<TripPlan> change) {
        int last = day.trips.size() - 1;
        day.trips.set(last, change.apply(day.trips.get(last)));
    }

    /** load Q-1 12:30 32:00 P:3 P:1@80, packs of pool D or of the one named by pool=. */
    private static ChargerLoad load(Words w) {
        List<Loaded> items = new ArrayList<>();
        for (int i = 4; i < w.count(); i++) {
            String[] parts = w.at(i).split("[:@]", -1);
            Level level = parts.length > 2 ? Level.EIGHTY : Level.FULL;
            items.add(new Loaded(parts[0], w.text("pool", "D"), level, Integer.parseInt(parts[1])));
        }
        return new ChargerLoad(w.at(1), Words.time(w.at(2)), Words.time(w.at(3)), items);
    }

    private void closeDay() {
        if (day.occurrences.isEmpty()) {
            for (DayOfWeek weekday : DayOfWeek.values()) {
                day.occurrences.add(new SeasonDay("year", weekday));
            }
        }
        days.add(new DayPlan(
                day.occurrences, day.perYear, day.start, day.trips, day.loads, day.feeds, day.energy, day.demandKw));
    }

    private DepotPlan plan() {
        Certificate certificate = Certificate.of(cost, cost, 0);
        return new DepotPlan(
                "D",
                new SolveStop("gap reached", certificate, 1, 0, 1, 1, 1, 1, 1),
                onPetrol,
                upgraded,
                built,
                units,
                chargers,
                banks,
                packs,
                kits,
                days,
                costs);
    }
}
