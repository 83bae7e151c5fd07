package depot.optimizer.dictionary;

import static depot.optimizer.dictionary.Field.defaulted;
import static depot.optimizer.dictionary.Field.optional;
import static depot.optimizer.dictionary.Field.required;

import java.time.DayOfWeek;
import java.util.List;
import java.util.Set;

/** The year and the working days: {@code seasons.csv}, {@code stops.csv}, {@code work.csv}. */
public final class RouteTables {
    private static final Range STOP_NUMBER = Range.atLeast("1").atMost("1000");

    private RouteTables() {}

    /** {@code seasons.csv}. */
    public static final class Seasons {
        public static final Field<String> SEASON = required("season", ValueType.key(), Units.NONE, "key of the season");
        public static final Field<Double> WEEKS_PER_YEAR = required(
                "weeks_per_year",
                ValueType.decimal(Range.above("0").atMost("53")),
                "weeks",
                "weeks of a year that belong to it; at most 53 over all seasons");
        public static final Field<Double> PACK_CAPACITY_FACTOR = defaulted(
                "pack_capacity_factor",
                ValueType.decimal(Units.SHARE),
                Units.NONE,
                "1",
                "share of a pack's usable energy that is left at the season's temperature");

        public static final Table TABLE = new Table(
                "seasons.csv",
                Presence.REQUIRED,
                "part of the year in which working days look alike",
                List.of(SEASON),
                List.of(SEASON, WEEKS_PER_YEAR, PACK_CAPACITY_FACTOR));

        private Seasons() {}
    }

    /** {@code stops.csv}. */
    public static final class Stops {
        public static final Field<String> SEASON = required(
                "season", ValueType.referenceTo(Seasons.SEASON), Units.NONE, "season in which the stop is made");
        public static final Field<Set<DayOfWeek>> DAYS =
                required("days", ValueType.days(), Units.NONE, "days on which the stop is made");
        public static final Field<String> CREW =
                required("crew", ValueType.referenceTo(CrewTables.Crews.CREW), Units.NONE, "who makes it");
        public static final Field<Integer> STOP = required(
                "stop",
                ValueType.integer(STOP_NUMBER),
                Units.NONE,
                "number of the stop within the day; the day runs in the order of the numbers");
        public static final Field<String> PLACE = required(
                "place",
                ValueType.text(),
                Units.NONE,
                "key of a depot, or the name of a site; a day begins and ends at the crew's own depot in crews.csv, which "
                        + "stands for its base, wherever that is; at another depot it may use that depot's bays");
        public static final Field<Integer> ARRIVE = optional(
                "arrive",
                ValueType.timeUpTo(Units.NEXT_MORNING),
                Units.TIME,
                "time of arrival, past 24:00 on the next day; blank on the first stop of a day");
        public static final Field<Integer> LEAVE = optional(
                "leave",
                ValueType.timeUpTo(Units.NEXT_MORNING),
                Units.TIME,
                "time of departure, past 24:00 on the next day; blank on the last stop of a day");
        public static final Field<Double> SITE_WATTS = defaulted(
                "site_watts",
                ValueType.decimal(Units.POWER_OR_NONE),
                Units.WATTS,
                "0",
                "mains power that the crew may use on site; 0: none");

        public static final Table TABLE = new Table(
                "stops.csv",
                Presence.REQUIRED,
                "season, days, crew and stop of its day",
                List.of(SEASON, CREW, STOP, DAYS),
                List.of(SEASON, DAYS, CREW, STOP, PLACE, ARRIVE, LEAVE, SITE_WATTS));

        private Stops() {}
    }

    /** {@code work.csv}. */
    public static final class WorkRows {
        public static final Field<String> SEASON =
                required("season", ValueType.referenceTo(Seasons.SEASON), Units.NONE, "season of the stop");
        public static final Field<Set<DayOfWeek>> DAYS =
                required("days", ValueType.days(), Units.NONE, "days on which the work is done");
        public static final Field<String> CREW =
                required("crew", ValueType.referenceTo(CrewTables.Crews.CREW), Units.NONE, "who does it");
        public static final Field<Integer> STOP =
                required("stop", ValueType.integer(STOP_NUMBER), Units.NONE, "number of the stop, as in stops.csv");
        public static final Field<String> TOOL =
                required("tool", ValueType.referenceTo(CrewTables.Tools.TOOL), Units.NONE, "tool used");
        public static final Field<Double> HOURS = required(
                "hours",
                ValueType.decimal(Range.above("0").atMost("24")),
                Units.HOURS,
                "running time of each of the tools; at most as long as the stop");
        public static final Field<Integer> TOOLS_AT_ONCE = defaulted(
                "tools_at_once",
                ValueType.integer(Range.atLeast("0").atMost("100")),
                Units.NONE,
                "1",
                "tools of this kind that run together; 0: one, by turns with the other tools of the stop");

        public static final Table TABLE = new Table(
                "work.csv",
                Presence.REQUIRED,
                "tool work at a stop",
                List.of(SEASON, CREW, STOP, TOOL, DAYS),
                List.of(SEASON, DAYS, CREW, STOP, TOOL, HOURS, TOOLS_AT_ONCE));

        private WorkRows() {}
    }
}
