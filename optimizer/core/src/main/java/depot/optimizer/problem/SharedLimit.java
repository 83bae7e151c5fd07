package depot.optimizer.problem;

/**
 * Something that the depots of a fleet share: what they use of it together is at most a number, or exactly that.
 *
 * @param phase id of the phase; empty for moves, which have no phase
 * @param subject item, region, crew, or {@link Visit.Service#key()}; empty for the fleet's budget
 * @param equation whether all of it must be used
 * @param most what the depots may use together
 */
public record SharedLimit(Kind kind, String phase, String subject, boolean equation, double most) {

    /** What is shared, and what a depot uses of it. */
    public enum Kind {
        /** Capital of the fleet in a phase: prices and installation of what is bought. */
        BUDGET("budget"),
        /** Capital of a region's depots in a phase. */
        REGION_BUDGET("region budget"),
        /** Pieces of an item that can be delivered in a phase. */
        DELIVERY("delivery"),
        /** Pieces of an item bought in a phase, which count towards its quantity price: a depot uses minus what it buys. */
        QUANTITY("quantity"),
        /** Owned pieces of an item: a depot uses those that come less those that go. */
        MOVES("moves"),
        /** A crew in a phase: a depot uses 1 if the crew works from it with packs. */
        CREW("crew"),
        /**
         * Packs of a type that a visiting crew gets charged on a kind of day: its home uses those that it counts on, the host minus those that it
         * charges.
         */
        VISIT("visit");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        /** In words. */
        public String words() {
            return words;
        }
    }

    /** A name that no other limit of the fleet has. */
    public String name() {
        return String.join(" ", kind.words(), phase, subject).trim().replaceAll(" +", " ");
    }
}
