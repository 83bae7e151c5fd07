package depot.optimizer.replay;

import depot.optimizer.plan.PackStock;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Every pack of a depot, on shelves by pool and type. */
final class PackRoom {
    private final Map<Key, PackShelf> shelves = new LinkedHashMap<>();

    private record Key(String pool, String packType) {}

    /** Stocks of types that the scenario lacks are left out: the stock rules report them. */
    PackRoom(DepotTables tables, List<PackStock> stocks) {
        for (PackStock stock : stocks) {
            Optional.ofNullable(tables.packTypes().get(stock.packType())).ifPresent(type -> {
                Key key = new Key(stock.pool(), stock.packType());
                PackShelf shelf = shelves.get(key);
                if (shelf == null) {
                    shelves.put(key, new PackShelf(stock.pool(), type, stock.count()));
                } else {
                    shelf.add(stock.count());
                }
            });
        }
    }

    void reset() {
        shelves.values().forEach(PackShelf::reset);
    }

    Optional<PackShelf> shelf(String pool, String packType) {
        return Optional.ofNullable(shelves.get(new Key(pool, packType)));
    }

    Collection<PackShelf> shelves() {
        return shelves.values();
    }
}
