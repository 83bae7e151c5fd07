package depot.optimizer.model;

/** How a charger gets its power. */
public enum Feed {
    /** On a circuit without a load-sharing unit: it draws from the moment it is loaded. */
    PLAIN,
    /** Behind a unit, on a priority outlet, collected before the end of the cycle: it draws from the moment it is loaded. */
    PRIORITY,
    /** Behind a unit until the end of the cycle: it waits whenever the unit has no room or power is dear. */
    WAITING;

    /** Whether it draws from the moment it is loaded until it is done. */
    public boolean atOnce() {
        return this != WAITING;
    }
}
