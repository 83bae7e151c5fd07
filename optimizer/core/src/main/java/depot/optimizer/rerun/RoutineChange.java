package depot.optimizer.rerun;

import depot.optimizer.plan.SeasonDay;
import java.util.List;

/**
 * A line of a depot's daily routine that is new, gone, or says something else.
 *
 * @param days season days on which it changes like this
 * @param subject charger, or crew
 * @param minute when the charger is loaded or the trip leaves; as before for a line that is gone
 * @param before what was done, empty: nothing
 * @param after what is done, empty: nothing
 */
public record RoutineChange(
        String depot, List<SeasonDay> days, What what, String subject, int minute, String before, String after) {

    /** Copies the list. */
    public RoutineChange {
        days = List.copyOf(days);
    }

    /** What the lines of a routine are about. */
    public enum What {
        /** One loading of a charger. */
        LOAD("charger is loaded"),
        /** Packs that a crew takes on a trip. */
        KIT("crew takes packs");

        private final String words;

        What(String words) {
            this.words = words;
        }

        /** In plain words. */
        public String words() {
            return words;
        }
    }
}
