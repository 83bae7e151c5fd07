package depot.optimizer.rerun;

/**
 * Something of a fleet's plan that changes in one of its phases.
 *
 * @param depot that it is about; for a crew its home
 * @param subject item, circuit, crew, or crew and pack type
 * @param before in the earlier plan, in words or as a number; empty: nothing
 * @param after the same now
 */
public record FleetChange(String phase, String depot, What what, String subject, String before, String after) {

    /** What changes. */
    public enum What {
        /** Pieces, circuits or a supply that the phase buys. */
        PURCHASE("bought in the phase"),
        /** Where a crew works, and whether with packs. */
        CREW("crew works"),
        /** Owned pieces that come from other depots, or go there. */
        MOVE("moved here"),
        /** Packs that a crew gets charged at another depot, of all its visits in a week of each season. */
        VISIT("packs charged on visits");

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
