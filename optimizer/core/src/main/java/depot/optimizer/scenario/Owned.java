package depot.optimizer.scenario;

import java.util.Optional;

/**
 * Equipment that is there already.
 *
 * @param circuit where a charger or a sharing unit is mounted, empty: in store
 * @param crew whose it is (packs when they are not pooled, portable chargers, power banks), empty: the depot's
 * @param item id of a pack, charger, sharing-unit or power-bank type
 */
public record Owned(String depot, Optional<String> circuit, Optional<String> crew, String item, int count) {}
