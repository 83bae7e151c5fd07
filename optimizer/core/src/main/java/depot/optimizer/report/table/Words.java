package depot.optimizer.report.table;

import depot.optimizer.plan.CostLine.Category;
import depot.optimizer.plan.TripPlan.RoadSource;
import depot.optimizer.replay.DayReplay;
import depot.optimizer.replay.Violation;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** Plain words for the plan's own codes. */
public final class Words {

    private Words() {}

    /** Where power comes from on the road. */
    public static String of(RoadSource source) {
        return switch (source) {
            case SITE -> "mains on site";
            case VEHICLE -> "vehicle";
            case BANK -> "power bank";
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
            case ENERGY -> "Energy";
            case DEMAND -> "Demand charges";
            case STANDING -> "Standing charges";
            case CREW_BASES -> "Crew bases";
            case PETROL -> "Petrol of crews that stay on it";
            case SHORTAGE -> "Energy not covered";
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
