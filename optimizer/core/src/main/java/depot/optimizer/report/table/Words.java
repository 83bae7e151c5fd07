package depot.optimizer.report.table;

import depot.optimizer.finance.FlowKind;
import depot.optimizer.finance.ReturnRate;
import depot.optimizer.plan.CostLine.Category;
import depot.optimizer.plan.TripPlan.RoadSource;
import depot.optimizer.replay.DayReplay;
import depot.optimizer.replay.Violation;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** Plain words for the plan's own codes. */
public final class Words {

    /** Why nothing is said against petrol. */
    public static final String NO_PETROL = "nothing is known of what petrol would cost";

    /** Why there is no payback. */
    public static final String NEVER = "not within the horizon";

    private Words() {}

    /** Where power comes from on the road. */
    public static String of(RoadSource source) {
        return switch (source) {
            case SITE -> "mains on site";
            case VEHICLE -> "vehicle";
            case BANK -> "power bank";
            case VISIT -> "bay of another depot";
            case VISIT_EIGHTY -> "bay of another depot, to 80 %";
        };
    }

    /** A kind of cost. */
    public static String of(Category category) {
        return switch (category) {
            case PACKS -> "Packs bought";
            case PACK_WEAR -> "Packs replaced as they wear";
            case CHARGERS -> "Chargers";
            case SHARING_UNITS -> "Load-sharing units";
            case POWER_BANKS -> "Power banks";
            case CIRCUITS -> "New circuits";
            case SUPPLY -> "Bigger supplies";
            case MOVES -> "Owned pieces moved";
            case ENERGY -> "Energy";
            case DEMAND -> "Demand charges";
            case STANDING -> "Standing charges";
            case CREW_BASES -> "Crew bases";
            case PETROL -> "Petrol of crews that stay on it";
            case SHORTAGE -> "Energy not covered";
        };
    }

    /** A kind of yearly flow. */
    public static String of(FlowKind kind) {
        return switch (kind) {
            case PURCHASES -> "Purchases";
            case FLEET_PURCHASES -> "Spare pieces less quantity reductions";
            case INSTALLATION -> "Installation, circuits, supplies";
            case REPLACEMENTS -> "Replaced at the end of life";
            case PACK_REPLACEMENT -> "Packs replaced as they wear";
            case VALUE_AT_END -> "Value at the end";
            case ENERGY -> "Energy";
            case DEMAND -> "Demand charges";
            case STANDING -> "Standing charges";
            case CREW_BASES -> "Crew bases";
            case PETROL -> "Petrol of crews that stay on it";
            case SHORTAGE -> "Energy not covered";
            case PETROL_EITHER_WAY -> "The same petrol without the plan";
            case PETROL_SAVED -> "Petrol saved";
            case CARBON_SAVED -> "Carbon saved";
            case TAX_SHIELD -> "Tax saved by depreciation";
            case TAX_ON_SAVING -> "Tax on what is saved and sold";
        };
    }

    /** Why there is an internal rate of return, or none. */
    public static String of(ReturnRate.Finding finding) {
        return switch (finding) {
            case FOUND -> "the rate at which the present value against petrol is 0";
            case NO_CHANGE_OF_SIGN -> "none: the yearly flows are never both above and below 0";
            case OUT_OF_RANGE -> "none between -99 % and 10,000 % a year";
            case SEVERAL -> "more than one rate fits: the yearly flows change their sign more than once";
        };
    }

    /** How a day ended. */
    public static String of(DayReplay.Outcome outcome) {
        return switch (outcome) {
            case MET -> "met";
            case SHORT -> "short as planned";
            case FAILED -> "failed";
        };
    }

    /** A rule, such as "circuit current". */
    public static String of(Violation.Kind kind) {
        return kind.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    static List<String> categories() {
        return Stream.of(Category.values()).map(Words::of).toList();
    }

    static List<String> outcomes() {
        return Stream.of(DayReplay.Outcome.values()).map(Words::of).toList();
    }

    static List<String> rules() {
        return Stream.of(Violation.Kind.values()).map(Words::of).toList();
    }

    static List<String> roadSources() {
        return Stream.of(RoadSource.values()).map(Words::of).toList();
    }
}
