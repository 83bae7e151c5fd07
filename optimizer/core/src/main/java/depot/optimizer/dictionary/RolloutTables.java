package depot.optimizer.dictionary;

import static depot.optimizer.dictionary.Field.optional;
import static depot.optimizer.dictionary.Field.required;

import java.math.BigDecimal;
import java.util.List;

/** The order in which a fleet changes to packs: {@code phases.csv}, {@code region_budgets.csv}, {@code crew_phases.csv}. */
public final class RolloutTables {
    private RolloutTables() {}

    /** {@code phases.csv}. */
    public static final class Phases {
        public static final Field<String> PHASE = required("phase", ValueType.key(), Units.NONE, "key of the phase");
        public static final Field<Integer> YEAR = required(
                "year",
                ValueType.integer(Range.atLeast("0").atMost("100")),
                Units.YEARS,
                "when the phase begins, in years from now: 0 is now; later than the row before, before the horizon ends");
        public static final Field<BigDecimal> BUDGET = optional(
                "budget",
                ValueType.money(Units.PRICE),
                Units.MONEY,
                "capital that the whole fleet may spend in the phase; blank: no limit");

        public static final Table TABLE = new Table(
                "phases.csv",
                Presence.OPTIONAL,
                "phase of the rollout, in order of time; without the table everything is bought now, without a limit; the first phase begins in year 0",
                List.of(PHASE),
                List.of(PHASE, YEAR, BUDGET));

        private Phases() {}
    }

    /** {@code region_budgets.csv}. */
    public static final class RegionBudgets {
        public static final Field<String> PHASE =
                required("phase", ValueType.referenceTo(Phases.PHASE), Units.NONE, "the phase");
        public static final Field<String> REGION =
                required("region", ValueType.text(), Units.NONE, "a region that depots.csv names");
        public static final Field<BigDecimal> BUDGET = required(
                "budget",
                ValueType.money(Units.PRICE),
                Units.MONEY,
                "capital that the depots of the region together may spend in the phase; it counts in the fleet's too");

        public static final Table TABLE = new Table(
                "region_budgets.csv",
                Presence.OPTIONAL,
                "phase and region with a budget of its own; other regions share the fleet's",
                List.of(PHASE, REGION),
                List.of(PHASE, REGION, BUDGET));

        private RegionBudgets() {}
    }

    /** {@code crew_phases.csv}. */
    public static final class CrewPhases {
        public static final Field<String> CREW =
                required("crew", ValueType.referenceTo(CrewTables.Crews.CREW), Units.NONE, "the crew");
        public static final Field<String> EARLIEST_PHASE = optional(
                "earliest_phase",
                ValueType.referenceTo(Phases.PHASE),
                Units.NONE,
                "first phase in which it may change from petrol to packs; blank: the first of all");
        public static final Field<String> LATEST_PHASE = optional(
                "latest_phase",
                ValueType.referenceTo(Phases.PHASE),
                Units.NONE,
                "last phase in which it may change; blank: it may stay on petrol for good. A crew that need not change in the "
                        + "first phase has a petrol_cost_per_year in crews.csv");

        public static final Table TABLE = new Table(
                "crew_phases.csv",
                Presence.OPTIONAL,
                "crew that need not change to packs in the first phase; crews that are not listed do",
                List.of(CREW),
                List.of(CREW, EARLIEST_PHASE, LATEST_PHASE));

        private CrewPhases() {}
    }
}
