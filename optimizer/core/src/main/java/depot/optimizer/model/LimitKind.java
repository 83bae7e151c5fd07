package depot.optimizer.model;

/** A limit that can be loosened to find out what stands in the way of a plan. */
public enum LimitKind {
    /** Wall or bench places of the depot. */
    PLACES("wall and bench places", "places"),
    /** Rating of the depot's supply. */
    SUPPLY("the supply's rating", "A"),
    /** Rating of the circuits' breakers. */
    BREAKER("the circuits' breakers", "A"),
    /** Outlets of the circuits. */
    OUTLETS("the circuits' outlets", "outlets"),
    /** Pack places of the crews' vehicles. */
    PACK_PLACES("pack places in the crews' vehicles", "pack places"),
    /** Payload of the crews' vehicles. */
    PAYLOAD("payload of the crews' vehicles", "kg");

    private final String words;
    private final String unit;

    LimitKind(String words, String unit) {
        this.words = words;
        this.unit = unit;
    }

    /** What the limit is, in plain words. */
    public String words() {
        return words;
    }

    /** Unit of its size. */
    public String unit() {
        return unit;
    }
}
