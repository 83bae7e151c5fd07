package depot.optimizer.report.table;

/** Columns that several tables of a run have. */
final class CommonColumns {
    static final OutputColumn PHASE = OutputColumn.words("phase", "key of the phase; now: the only one");
    static final OutputColumn DEPOT = OutputColumn.words("depot", "key of the depot");
    static final OutputColumn KIND_OF_DAY = OutputColumn.count(
            "kind_of_day", "", "number of the kind of day of the depot, from 1, the same in all tables");
    static final OutputColumn SEASON_DAYS =
            OutputColumn.words("season_days", "days that run alike, such as summer Mon-Fri; winter Mon");
    static final OutputColumn DAYS_PER_YEAR =
            OutputColumn.number("days_per_year", "days", "how many days of a year that is");
    static final OutputColumn CREW = OutputColumn.words("crew", "key of the crew");
    static final OutputColumn TRIP = OutputColumn.count("trip", "", "number of the crew's trip on that day, from 1");
    static final OutputColumn CIRCUIT = OutputColumn.words("circuit", "key of the circuit");
    static final OutputColumn CHARGER =
            OutputColumn.words("charger", "name of the charger in the plan, as in placement.csv");
    static final OutputColumn CHARGER_TYPE = OutputColumn.words("charger_type", "key of the charger type");
    static final OutputColumn PACK_TYPE = OutputColumn.words("pack_type", "key of the pack type");
    static final OutputColumn CURRENCY = OutputColumn.words("currency", "ISO 4217 code of the row's amounts");

    private CommonColumns() {}
}
