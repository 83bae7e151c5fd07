package depot.optimizer.report.table;

import depot.optimizer.advice.Answer;
import depot.optimizer.advice.Binding;
import depot.optimizer.advice.Difference;
import depot.optimizer.advice.FleetAdvice;
import depot.optimizer.advice.Loosening;
import depot.optimizer.advice.Piece;
import depot.optimizer.advice.ReplayedPlan;
import depot.optimizer.plan.DayPlan;
import depot.optimizer.plan.TripPlan;
import depot.optimizer.report.text.Amounts;
import depot.optimizer.report.text.Clock;
import depot.optimizer.report.text.DayNames;
import depot.optimizer.report.text.Figures;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Answers to questions about a plan in plain words. */
public record AdviceWords(Amounts amounts) {

    /** In place of a difference that the gap could hide. */
    public static final String NOT_TOLD = "nothing that can be told from the gap";

    /** Kind of a piece, as in purchases.csv. */
    public static String of(Piece.Kind kind) {
        return switch (kind) {
            case PACK -> Purchase.Kind.PACK.words();
            case CHARGER -> Purchase.Kind.CHARGER.words();
            case UNIT -> Purchase.Kind.SHARING_UNIT.words();
            case CIRCUIT -> Purchase.Kind.CIRCUIT.words();
            case SUPPLY -> Purchase.Kind.SUPPLY.words();
            case PORTABLE -> Purchase.Kind.PORTABLE_CHARGER.words();
            case BANK -> Purchase.Kind.POWER_BANK.words();
        };
    }

    static List<String> kinds() {
        return Stream.of(Piece.Kind.values()).map(AdviceWords::of).toList();
    }

    /** Such as "1 charger quick on bench". */
    public static String of(Piece piece) {
        String where =
                switch (piece.kind()) {
                    case CHARGER, UNIT -> " on " + piece.where();
                    case PORTABLE, BANK -> " of " + piece.where();
                    case PACK, CIRCUIT, SUPPLY -> "";
                };
        return "%s %s%s".formatted(Figures.count(piece.count(), of(piece.kind())), piece.item(), where);
    }

    /** How an answer ended. */
    public static String of(Answer.Ending ending) {
        return switch (ending) {
            case MET -> "met";
            case SHORT -> "short";
            case IMPOSSIBLE -> "impossible";
            case NO_PLAN -> "no plan";
            case NONE_WITH_OTHERS_HELD -> "no plan with the others held";
            case UNPROVEN -> "replay failed";
        };
    }

    static List<String> endings() {
        return Stream.of(Answer.Ending.values()).map(AdviceWords::of).toList();
    }

    /** What binds. */
    public static String of(Binding.Limit limit) {
        return switch (limit) {
            case PACKS_OUT -> "packs on the road at once";
            case BAYS -> "bays in use at once";
            case PLATES -> "plates on the circuit, in A";
            case CURRENT -> "current of the circuit, in A";
            case SUPPLY -> "current of the supply as it is, in A";
            case ON_THE_WAY -> "packs charged on the way";
        };
    }

    static List<String> bindings() {
        return Stream.of(Binding.Limit.values()).map(AdviceWords::of).toList();
    }

    /** What may be loosened. */
    public static String of(Loosening.Limit limit) {
        return switch (limit) {
            case CIRCUIT_AMPS -> "breaker of the circuit";
            case OUTLETS -> "outlets of the circuit";
            case PLACES -> "wall and bench places";
            case BAYS -> "bays of each charger of the type";
            case SUPPLY_AMPS -> "rating of the supply";
            case LUNCH_MINUTES -> "time of all crews at the depot in the middle of the day";
            case PACK_PLACES -> "pack places of each vehicle";
        };
    }

    static List<String> limits() {
        return Stream.of(Loosening.Limit.values()).map(AdviceWords::of).toList();
    }

    /** Such as "8 of 8 packs on the road at once: year Mon-Fri, 13:00 to 16:00; town, east, west". */
    public static String of(Binding binding) {
        String crews = binding.crews().isEmpty() ? "" : "; " + String.join(", ", binding.crews());
        String when = binding.toMinute() - binding.fromMinute() > 1
                ? Clock.time(binding.fromMinute()) + " to " + Clock.time(binding.toMinute())
                : Clock.time(binding.fromMinute());
        return "%s of %s, %s: %s, %s%s"
                .formatted(
                        Figures.plain(binding.used(), 1),
                        Figures.plain(binding.there(), 1),
                        of(binding.limit()),
                        DayNames.of(binding.days()),
                        when,
                        crews);
    }

    /** What a depot that may do less costs more. */
    public String costs(Answer answer) {
        return words(answer, "costs %s more", "at least %s, at most %s", answer.difference(), "costs nothing more");
    }

    /** What one more of a shared limit would save at most, or what a step of it saves in the fleet planned anew. */
    public String price(FleetAdvice.LimitUse use) {
        boolean pieces = use.measure() == FleetAdvice.Measure.PIECES;
        if (use.more().isPresent()) {
            FleetAdvice.More more = use.more().get();
            String step = Figures.read(more.step(), 0) + " " + (pieces ? "piece" : amounts.code());
            return step + " more: " + saves(more.answer());
        }
        String one = pieces ? "1 piece" : "1 " + amounts.code();
        return use.price()
                .map(price -> price == 0
                        ? "more of it saves nothing beyond what the gap leaves open"
                        : "%s more saves at most %s %s beyond what the gap leaves open"
                                .formatted(one, Figures.read(price, 4), amounts.code()))
                .orElse("not asked: the plan has no prices; one made as one model is planned anew by --ask worth");
    }

    /** What a depot that may do more saves. */
    public String saves(Answer answer) {
        Optional<Difference> saving = answer.difference().map(AdviceWords::turned);
        return words(answer, "saves %s", "at least %s, at most %s", saving, "saves nothing");
    }

    /** The other way round: what is saved. */
    public static Difference turned(Difference difference) {
        return new Difference(0.0 - difference.found(), 0.0 - difference.most(), 0.0 - difference.least());
    }

    private String words(Answer answer, String told, String span, Optional<Difference> difference, String nothing) {
        return switch (answer.ending()) {
            case MET, SHORT ->
                amount(difference.orElseThrow(), told, span, nothing)
                        + answer.plan()
                                .filter(plan -> !plan.covered())
                                .map(plan -> "; " + lacking(plan))
                                .orElse("");
            case IMPOSSIBLE ->
                "no plan meets every day: "
                        + answer.plan().map(AdviceWords::lacking).orElse("");
            case NO_PLAN -> "no plan was found within the limits";
            case NONE_WITH_OTHERS_HELD -> "no plan was found while the other depots go on as they are";
            case UNPROVEN -> "the plan that was found fails its replay: " + answer.trouble();
        };
    }

    private String amount(Difference difference, String told, String span, String nothing) {
        String between = span.formatted(known(difference.least()), known(difference.most()));
        if (difference.surelyNone()) {
            return nothing;
        }
        if (!difference.told()) {
            return NOT_TOLD + "; " + between;
        }
        String found = told.formatted(money(difference.found()));
        boolean exact = known(difference.least()).equals(known(difference.most()));
        return exact ? found : found + "; " + between;
    }

    private String known(double amount) {
        return Double.isFinite(amount) ? money(amount) : "not known";
    }

    private String money(double amount) {
        return amounts.show(amounts.rounded(amount));
    }

    /** Such as "about 190.0 kWh a year short, such as 760 Wh of crew town on year Mon-Fri". */
    private static String lacking(ReplayedPlan plan) {
        String all = "about " + Figures.read(plan.shortKwhPerYear(), 1) + " kWh a year short";
        for (DayPlan day :
                plan.plans().stream().flatMap(phase -> phase.days().stream()).toList()) {
            for (TripPlan trip : day.trips()) {
                for (TripPlan.Shortage shortage : trip.shortages()) {
                    return "%s, such as %s Wh of crew %s on %s"
                            .formatted(
                                    all,
                                    Figures.read(shortage.wattHours(), 0),
                                    trip.crew(),
                                    DayNames.of(day.occurrences()));
                }
            }
        }
        return all;
    }
}
