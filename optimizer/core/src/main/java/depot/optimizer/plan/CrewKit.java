package depot.optimizer.plan;

/** Portable chargers or power banks of one type that a crew carries on every trip. */
public record CrewKit(String crew, String item, int count, int owned) {}
