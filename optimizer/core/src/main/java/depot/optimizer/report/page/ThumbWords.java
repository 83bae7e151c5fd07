package depot.optimizer.report.page;

import depot.optimizer.advice.thumb.ThumbSettings;
import depot.optimizer.report.text.Figures;
import java.util.List;

/** The rules of thumb in plain words. */
final class ThumbWords {
    private ThumbWords() {}

    static List<String> of(ThumbSettings settings) {
        String full =
                switch (settings.breaker()) {
                    case FULL ->
                        "their plates add up to the number on the breaker; what the circuit feeds already, and that charging goes on for "
                                + "hours, is not looked at";
                    case USABLE ->
                        "their plates add up to what the breaker may carry for hours beside what the circuit feeds already";
                };
        return List.of(
                "One type of pack for each family, the biggest that a charger of the depot takes.",
                "Each crew gets packs of its own: tool hours of its longest day over the hours that a new pack lasts, rounded up, and "
                        + Figures.percent(settings.spareShare())
                        + " more, rounded up. For crews that are back at lunch, the longest part of the day counts.",
                "Each pack gets a bay for the night: in the quickest charger for crews that are back at lunch, in the one cheapest per bay for "
                        + "all others.",
                "Chargers are plugged in, circuit by circuit, until " + full
                        + ". When all are full, new circuits are built, the cheapest first.",
                "Crews take as many packs as the day asks for, put them in when they come back, and in the quick chargers at lunch.");
    }
}
