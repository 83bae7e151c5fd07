package depot.optimizer.dictionary;

import static depot.optimizer.dictionary.Field.defaulted;
import static depot.optimizer.dictionary.Field.optional;
import static depot.optimizer.dictionary.Field.required;

import java.math.BigDecimal;
import java.util.List;

/** The members of a sweep's file, object by object. Values of changes are checked against {@link ChangeKind} as well. */
public final class SweepFields {
    /** Whether a case may buy something else than the base plan did. */
    public enum Purchases {
        /** Planned anew, at least cost. */
        ANEW,
        /** What the base plan buys is kept, the days are planned anew. */
        KEPT
    }

    private static final Range ANY = Range.atLeast("-1000000000").atMost("1000000000");

    public static final Field<String> SCHEMA = optional(
            "$schema", ValueType.text(), Units.NONE, "path of sweep.schema.json, for editors; not read otherwise");
    public static final Field<String> NAME = required(
            "name",
            ValueType.key(),
            Units.NONE,
            "name of the sweep; its results go to a folder of this name, unless the command names another");

    public static final Field<String> CHANGE = required(
            "change", ValueType.oneOfWords(ChangeKind.words()), Units.NONE, "what is changed; see the kinds below");
    public static final Field<String> OF = optional(
            "of", ValueType.key(), Units.NONE, "key of what the change is about, where the kind names something");
    public static final Field<BigDecimal> VALUE =
            required("value", ValueType.money(ANY), Units.NONE, "in the way and the unit of the kind");
    public static final Field<BigDecimal> LOW =
            required("low", ValueType.money(ANY), Units.NONE, "one end, in the way and the unit of the kind");
    public static final Field<BigDecimal> HIGH =
            required("high", ValueType.money(ANY), Units.NONE, "the other end, above the first");
    public static final Field<BigDecimal> STEP = required(
            "values",
            ValueType.money(ANY),
            Units.NONE,
            "two values or more, rising, in the way and the unit of the kind");

    public static final Field<Purchases> PURCHASES = defaulted(
            "purchases",
            ValueType.choice(Purchases.class),
            Units.NONE,
            "anew",
            "anew: each case is planned anew; kept: what the base plan buys is kept and only the days are planned anew");
    public static final Field<String> PART_NAME = required(
            "name", ValueType.key(), Units.NONE, "name, unlike that of any other line, frontier, grid or case");

    public static final Field<Boolean> CHARGER_OUT = defaulted(
            "charger_out",
            ValueType.yesNo(),
            Units.NONE,
            "no",
            "yes: at each depot one charger is out of order, each kind of charger on each circuit in turn");
    public static final Field<Integer> PACK_IN = optional(
            "one_pack_in",
            ValueType.integer(Range.atLeast("2").atMost("1000")),
            "packs",
            "at each depot one pack of each type in so many is lost, rounded up in every pool");
    public static final Field<Integer> LATE_MINUTES = optional(
            "late_minutes",
            ValueType.integer(Range.atLeast("1").atMost("600")),
            Units.MINUTES,
            "at each depot all crews are back later by so much on every day");

    /** The file itself; its other members are the objects below. */
    static final List<Field<?>> ROOT = List.of(SCHEMA, NAME);
    /** A change in a case. */
    static final List<Field<?>> CHANGES = List.of(CHANGE, OF, VALUE);
    /** What a frontier may change. */
    public static final List<ChangeKind> FRONTIER_KINDS = List.of(ChangeKind.BUDGET, ChangeKind.ALL_BUDGETS);

    /** A range of the tornado. */
    static final List<Field<?>> RANGES = List.of(CHANGE, OF, LOW, HIGH);
    /** An axis of a grid. */
    static final List<Field<?>> AXES = List.of(CHANGE, OF);
    /** The losses. */
    static final List<Field<?>> LOSSES = List.of(CHARGER_OUT, PACK_IN, LATE_MINUTES);

    private SweepFields() {}
}
