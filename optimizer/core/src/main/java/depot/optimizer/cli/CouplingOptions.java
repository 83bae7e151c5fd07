package depot.optimizer.cli;

import depot.optimizer.generate.CouplingSettings;
import depot.optimizer.generate.CouplingSettings.Kind;
import java.util.EnumSet;
import java.util.OptionalDouble;
import java.util.Set;
import picocli.CommandLine.Option;

/** Options of what couples the depots of a made-up fleet. Without any of them its depots are independent. */
final class CouplingOptions {

    @Option(
            names = "--phases",
            paramLabel = "N",
            converter = Converters.Count.class,
            description = "Phases of the rollout, a year apart, up to " + CouplingSettings.MOST_PHASES
                    + ". Usually one: everything is bought now.")
    private int phases = 1;

    @Option(
            names = "--budget-share",
            paramLabel = "SHARE",
            converter = Converters.Share.class,
            description =
                    "Budget of each phase but the last, as a share of what all packs and chargers cost by a rough "
                            + "estimate, such as 30%%. Every second region has budgets of its own. Needs --phases and "
                            + "--conversions, or --optional.")
    private Double budgetShare;

    @Option(
            names = "--conversions",
            description = "Some crews may change from petrol to packs in a later phase, or stay on petrol.")
    private boolean conversions;

    @Option(
            names = "--optional",
            description = "Every crew may change from petrol to packs in any phase, or stay on petrol for good. With "
                    + "--budget-share every phase has a budget then, a single one too. In place of --conversions.")
    private boolean optional;

    @Option(names = "--tiers", description = "Packs and chargers are cheaper when the fleet buys many at once.")
    private boolean tiers;

    @Option(
            names = "--limits",
            description = "Only so many packs and chargers can be delivered in each phase but the last. Needs --phases "
                    + "and --conversions.")
    private boolean limits;

    @Option(
            names = "--moves",
            description = "Some depots own more than they need, which may be moved to others at a cost.")
    private boolean moves;

    @Option(names = "--bases", description = "Every second crew could work from another depot, at a cost.")
    private boolean bases;

    @Option(names = "--visits", description = "One crew in three has its lunch in another depot, and may charge there.")
    private boolean visits;

    /**
     * The settings.
     *
     * @throws IllegalArgumentException if they do not go together
     */
    CouplingSettings settings() {
        Set<Kind> kinds = EnumSet.noneOf(Kind.class);
        addIf(conversions, Kind.CONVERSIONS, kinds);
        addIf(optional, Kind.OPTIONAL, kinds);
        addIf(tiers, Kind.TIERS, kinds);
        addIf(limits, Kind.LIMITS, kinds);
        addIf(moves, Kind.MOVES, kinds);
        addIf(bases, Kind.BASES, kinds);
        addIf(visits, Kind.VISITS, kinds);
        OptionalDouble share = budgetShare == null ? OptionalDouble.empty() : OptionalDouble.of(budgetShare);
        return new CouplingSettings(phases, share, kinds);
    }

    private static void addIf(boolean asked, Kind kind, Set<Kind> kinds) {
        if (asked) {
            kinds.add(kind);
        }
    }
}
