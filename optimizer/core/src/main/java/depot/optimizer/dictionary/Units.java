package depot.optimizer.dictionary;

/** Units, and ranges that many fields share. Upper ends are there to catch slips of unit or of the decimal point. */
final class Units {
    static final String NONE = "";
    static final String MONEY = "currency";
    static final String WATTS = "W";
    static final String WATT_HOURS = "Wh";
    static final String AMPS = "A";
    static final String VOLTS = "V";
    static final String MINUTES = "min";
    static final String HOURS = "h";
    static final String YEARS = "years";
    static final String KILOGRAMS = "kg";
    static final String TIME = "HH:MM";

    /** End of the day that a row is about. */
    static final int MIDNIGHT = 24 * 60;

    /** Routes may end on the next morning. */
    static final int NEXT_MORNING = 30 * 60;

    static final Range PRICE = Range.atLeast("0").atMost("1000000000");
    static final Range SHARE = Range.above("0").atMost("1");
    static final Range COUNT = Range.atLeast("1").atMost("1000");
    static final Range CURRENT = Range.above("0").atMost("10000");
    static final Range VOLTAGE = Range.atLeast("50").atMost("1000");
    static final Range POWER = Range.above("0").atMost("100000");
    static final Range POWER_OR_NONE = Range.atLeast("0").atMost("100000");
    static final Range ENERGY = Range.above("0").atMost("1000000");
    static final Range WEIGHT = Range.above("0").atMost("10000");
    static final Range LIFE = Range.above("0").atMost("100");
    static final Range DAY_MINUTES = Range.atLeast("1").atMost("1440");

    private Units() {}
}
