package depot.optimizer.replay;

import depot.optimizer.plan.PackStock;
import depot.optimizer.scenario.PackType;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Every pack of a depot, on shelves by pool and type. */
final class PackRoom {
    private final Map<Key, PackShelf> shelves = new LinkedHashMap<>();
    private final Map<Key, PackShelf> guests = new LinkedHashMap<>();

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
        guests.clear();
    }

    Optional<PackShelf> shelf(String pool, String packType) {
        Key key = new Key(pool, packType);
        return Optional.ofNullable(shelves.getOrDefault(key, guests.get(key)));
    }

    /** A visiting crew hands in depleted packs. They are its own, and not among the depot's shelves. */
    void handInGuests(String crew, PackType type, int count) {
        PackShelf shelf = guests.computeIfAbsent(new Key(crew, type.id()), key -> new PackShelf(crew, type, 0));
        for (int i = 0; i < count; i++) {
            shelf.handIn(new PackState(shelf));
        }
    }

    Collection<PackShelf> shelves() {
        return shelves.values();
    }
}
