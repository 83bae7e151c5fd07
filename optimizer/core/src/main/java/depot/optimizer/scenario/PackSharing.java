package depot.optimizer.scenario;

/** Who may use a pack: every crew of the depot, or only the crew it belongs to. */
public enum PackSharing {
    /** Packs are pooled: any crew of the depot may take any full pack. */
    DEPOT,
    /** Each crew has packs of its own. */
    CREW
}
