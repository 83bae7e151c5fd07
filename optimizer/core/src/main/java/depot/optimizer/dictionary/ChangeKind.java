package depot.optimizer.dictionary;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What a sweep can change in a scenario: each kind with what it is about, how its value is meant, unit, range, and which way is easier on a plan. What
 * a kind does to a scenario is written in package sweep.
 */
public enum ChangeKind {
    /** Price of an item, or of all items. */
    ITEM_PRICE(About.ITEM_OR_ALL, Form.FACTOR, "", Range.atLeast("0").atMost("10"), Easier.SAME, """
            price of an item, or of all packs, chargers, sharing units and power banks, quantity prices included"""),
    /** Price of installation and building work. */
    BUILDING_PRICE(About.NOTHING, Form.FACTOR, "", Range.above("0").atMost("10"), Easier.SAME, """
            price of mounting chargers and sharing units, of new circuits and of bigger supplies"""),
    /** What the fleet may spend in a phase. */
    BUDGET(About.PHASE, Form.VALUE, "", Range.atLeast("0").atMost("1000000000"), Easier.HIGHER, """
            what the fleet may spend in a phase, in the scenario's currency; without phases.csv, on what is bought now"""),
    /** What the fleet and its regions may spend in all phases. */
    ALL_BUDGETS(About.NOTHING, Form.FACTOR, "", Range.atLeast("0").atMost("100"), Easier.HIGHER, """
            every budget of the fleet and of its regions, in all phases that have one"""),
    /** Every amount of money. */
    ALL_MONEY(About.NOTHING, Form.FACTOR, "", Range.above("0").atMost("10"), Easier.SAME, """
            every amount of money in the tables, petrol, budgets and the price of shortage included"""),
    /** Price of energy. */
    ELECTRICITY_PRICE(About.TARIFF_OR_ALL, Form.FACTOR, "", Range.atLeast("0").atMost("10"), Easier.SAME, """
            price of a kWh at all times, of a tariff or of all"""),
    /** Price of demand. */
    DEMAND_PRICE(About.TARIFF_OR_ALL, Form.FACTOR, "", Range.atLeast("0").atMost("10"), Easier.SAME, """
            demand price of a tariff or of all"""),
    /** Yearly rise of electricity prices. */
    ELECTRICITY_GROWTH(
            About.NOTHING, Form.VALUE, "per year", Range.atLeast("-0.5").atMost("1"), Easier.SAME, """
            yearly rise of electricity prices; 0.02 is two per cent"""),
    /** Cost of petrol tools. */
    PETROL_PRICE(About.NOTHING, Form.FACTOR, "", Range.atLeast("0").atMost("10"), Easier.SAME, """
            yearly petrol cost of every crew; the plan stays as it is, what it saves in petrol changes"""),
    /** Price of energy not covered. */
    SHORTAGE_PRICE(About.NOTHING, Form.VALUE, "currency/kWh", Units.PRICE, Easier.SAME, """
            price of a kWh that packs do not deliver; a scenario that forbids shortage then allows it"""),
    /** Years over which costs are counted. */
    HORIZON(About.NOTHING, Form.WHOLE_VALUE, "years", Range.atLeast("1").atMost("40"), Easier.SAME, """
            years over which costs are counted"""),
    /** Discount rate. */
    DISCOUNT_RATE(About.NOTHING, Form.VALUE, "per year", Range.atLeast("0").atMost("1"), Easier.SAME, """
            yearly discount rate; 0.05 is five per cent"""),
    /** Share of days covered. */
    DEMAND_QUANTILE(About.NOTHING, Form.VALUE, "", Range.atLeast("0.5").below("1"), Easier.LOWER, """
            share of days whose energy need a plan must cover"""),
    /** Spread of the energy needs. */
    DEMAND_SPREAD(About.NOTHING, Form.VALUE, "", Range.atLeast("0").atMost("2"), Easier.LOWER, """
            standard deviation of the energy need of one stop, divided by its average"""),
    /** Energy that the work takes. */
    WORK_HOURS(About.CREW_OR_ALL, Form.FACTOR, "", Range.above("0").atMost("3"), Easier.LOWER, """
            hours that tools run at every stop, of a crew or of all; a tool still runs no longer than its stop lasts"""),
    /** More crews of a kind. */
    CREW_COPIES(About.CREW, Form.WHOLE_ADDED, "crews", Range.atLeast("0").atMost("50"), Easier.LOWER, """
            crews added that work, carry and drive like a given one; their packs have to be bought"""),
    /** Health of packs. */
    PACK_HEALTH(About.NOTHING, Form.VALUE, "", Units.SHARE, Easier.HIGHER, """
            share of the new capacity that packs are planned to have left"""),
    /** Life of packs. */
    PACK_LIFE(About.PACK_OR_ALL, Form.FACTOR, "", Range.atLeast("0.1").atMost("10"), Easier.NEITHER, """
            charges and years until a pack is replaced, of a pack type or of all"""),
    /** Cold. */
    SEASON_CAPACITY(About.SEASON_OR_ALL, Form.VALUE, "", Units.SHARE, Easier.HIGHER, """
            share of a pack's energy that is left at the season's temperature, in a season or in all"""),
    /** How long charging takes. */
    CHARGE_TIMES(About.CHARGER_OR_ALL, Form.FACTOR, "", Range.atLeast("0.1").atMost("10"), Easier.NEITHER, """
            minutes to 80 % and to full, of a charger type or of all, rounded up; below 1 the plate power rises as the times fall"""),
    /** Breaker of circuits. */
    CIRCUIT_AMPS(About.CIRCUIT_OR_DEPOT, Form.ADDED, "A", Range.atLeast("-1000").atMost("1000"), Easier.HIGHER, """
            rating of a circuit's breaker, or of every circuit of a depot; the plug's own limit stays"""),
    /** Supply of a depot. */
    SUPPLY_AMPS(About.DEPOT, Form.ADDED, "A", Range.atLeast("-1000").atMost("1000"), Easier.HIGHER, """
            rating of a depot's supply; the bigger supply on offer stays as it is"""),
    /** Places for chargers. */
    PLACES(About.DEPOT, Form.WHOLE_ADDED, "places", Range.atLeast("-1000").atMost("1000"), Easier.HIGHER, """
            wall or bench places of a depot"""),
    /** Length of the lunch stop. */
    LUNCH_MINUTES(
            About.CREW_OR_ALL, Form.WHOLE_ADDED, "min", Range.atLeast("-600").atMost("600"), Easier.HIGHER, """
            stay at the crew's own depot in the middle of its day: it leaves later (below 0: earlier), all other times stay"""),
    /** Coming back late. */
    LATE_RETURN(About.CREW_OR_ALL, Form.WHOLE_ADDED, "min", Range.atLeast("0").atMost("600"), Easier.LOWER, """
            last return of the crew's day, later by so much""");

    /** What a change is about. */
    public enum About {
        /** The whole scenario. */
        NOTHING("nothing: it is about the whole scenario"),
        /** An item; left out: all. */
        ITEM_OR_ALL("a pack, charger, sharing unit or power bank; left out: all"),
        /** A pack type; left out: all. */
        PACK_OR_ALL("a pack type; left out: all"),
        /** A charger type; left out: all. */
        CHARGER_OR_ALL("a charger type; left out: all"),
        /** A tariff; left out: all. */
        TARIFF_OR_ALL("a tariff; left out: all"),
        /** A season; left out: all. */
        SEASON_OR_ALL("a season; left out: all"),
        /** A crew; left out: all. */
        CREW_OR_ALL("a crew; left out: all"),
        /** A crew. */
        CREW("a crew"),
        /** A circuit or a depot. */
        CIRCUIT_OR_DEPOT("a circuit, or a depot for all of its circuits"),
        /** A depot. */
        DEPOT("a depot"),
        /** A phase; left out: the only one. */
        PHASE("a phase; left out: the only one");

        private final String words;

        About(String words) {
            this.words = words;
        }

        /** What may be named, in plain words. */
        public String words() {
            return words;
        }

        /** Whether nothing may be named. */
        public boolean none() {
            return this == NOTHING;
        }

        /** Whether something has to be named. */
        public boolean required() {
            return this == CREW || this == CIRCUIT_OR_DEPOT || this == DEPOT;
        }
    }

    /** How the value is meant. */
    public enum Form {
        /** Times what the tables say. */
        FACTOR("times what the tables say"),
        /** In place of what the tables say. */
        VALUE("in place of what the tables say"),
        /** In place of what the tables say, a whole number. */
        WHOLE_VALUE("in place of what the tables say, a whole number"),
        /** Added to what the tables say. */
        ADDED("added to what the tables say"),
        /** Added to what the tables say, a whole number. */
        WHOLE_ADDED("added to what the tables say, a whole number");

        private final String words;

        Form(String words) {
            this.words = words;
        }

        /** In plain words. */
        public String words() {
            return words;
        }

        /** Whether the value counts something. */
        public boolean whole() {
            return this == WHOLE_VALUE || this == WHOLE_ADDED;
        }
    }

    /** Which values are easier on a plan: a plan for one value serves every easier one. */
    public enum Easier {
        /** Lower ones. */
        LOWER,
        /** Higher ones. */
        HIGHER,
        /** All are alike: only what a plan costs depends on the value. */
        SAME,
        /** A plan for one value need not serve another. */
        NEITHER
    }

    private final About about;
    private final Form form;
    private final String unit;

    /** Immutable, though nothing says so to the compiler's checks: a record of decimals. */
    @SuppressWarnings("ImmutableEnumChecker")
    private final Range range;

    private final Easier easier;
    private final String meaning;

    ChangeKind(About about, Form form, String unit, Range range, Easier easier, String meaning) {
        this.about = about;
        this.form = form;
        this.unit = unit;
        this.range = range;
        this.easier = easier;
        this.meaning = meaning;
    }

    /** Name in a sweep's file, such as "item_price". */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** What it can be about. */
    public About about() {
        return about;
    }

    /** How its value is meant. */
    public Form form() {
        return form;
    }

    /** Unit of the value, empty: it has none. */
    public String unit() {
        return unit;
    }

    /** Allowed values. */
    public Range range() {
        return range;
    }

    /** Which values are easier on a plan. */
    public Easier easier() {
        return easier;
    }

    /** What is changed, for people who write sweeps. */
    public String meaning() {
        return meaning;
    }

    /** The kind with a name. */
    public static Optional<ChangeKind> of(String word) {
        return Arrays.stream(values()).filter(kind -> kind.word().equals(word)).findFirst();
    }

    /** The names of all kinds. */
    public static List<String> words() {
        return Arrays.stream(values()).map(ChangeKind::word).toList();
    }
}
