package depot.optimizer.solve;

import depot.optimizer.problem.SharedLimit;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.BiConsumer;

/** A price for a unit of each shared limit, present cost. Limits without a price cost nothing. */
public record SharedPrices(Map<SharedLimit, Double> byLimit) {

    /** Nothing has a price. */
    public static final SharedPrices NONE = new SharedPrices(Map.of());

    /** Copies the map and keeps its order. */
    public SharedPrices {
        byLimit = Collections.unmodifiableMap(new LinkedHashMap<>(byLimit));
    }

    /** The price of a limit. */
    public double of(SharedLimit limit) {
        return byLimit.getOrDefault(limit, 0.0);
    }

    /** Hands out the limits that have a price. */
    public void forEach(BiConsumer<SharedLimit, Double> taker) {
        byLimit.forEach((limit, price) -> {
            if (price != 0) {
                taker.accept(limit, price);
            }
        });
    }

    /** What a use costs at these prices. */
    public double of(Map<SharedLimit, Double> use) {
        double cost = 0;
        for (Map.Entry<SharedLimit, Double> entry : use.entrySet()) {
            cost += of(entry.getKey()) * entry.getValue();
        }
        return cost;
    }
}
