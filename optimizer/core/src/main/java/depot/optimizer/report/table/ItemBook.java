package depot.optimizer.report.table;

import depot.optimizer.report.table.Purchase.Kind;
import depot.optimizer.scenario.ChargerType;
import depot.optimizer.scenario.Scenario;
import java.math.BigDecimal;
import java.util.Map;
import java.util.TreeMap;

/** Kinds and prices of everything that can be owned, by the key of its type. */
final class ItemBook {

    /**
     * A type of equipment.
     *
     * @param price of a piece, without installation
     */
    record Entry(Kind kind, BigDecimal price, BigDecimal installCost) {}

    private final Map<String, Entry> entries = new TreeMap<>();

    /**
     * Types of a scenario, and of an earlier one where this one no longer lists them.
     */
    ItemBook(Scenario scenario, Scenario earlier) {
        enter(earlier);
        enter(scenario);
    }

    private void enter(Scenario scenario) {
        scenario.packTypes().forEach(type -> enter(type.id(), Kind.PACK, type.price(), BigDecimal.ZERO));
        for (ChargerType type : scenario.chargerTypes()) {
            Kind kind = type.portable() ? Kind.PORTABLE_CHARGER : Kind.CHARGER;
            enter(type.id(), kind, type.price(), type.installCost());
        }
        scenario.sharingUnitTypes()
                .forEach(type -> enter(type.id(), Kind.SHARING_UNIT, type.price(), type.installCost()));
        scenario.powerBankTypes().forEach(type -> enter(type.id(), Kind.POWER_BANK, type.price(), BigDecimal.ZERO));
    }

    private void enter(String item, Kind kind, BigDecimal price, BigDecimal installCost) {
        entries.put(item, new Entry(kind, price, installCost));
    }

    /** What an item is. */
    Entry of(String item) {
        Entry entry = entries.get(item);
        if (entry == null) {
            throw new IllegalArgumentException(
                    "The run has pieces of '%s', which is in no table of it and of the scenario.".formatted(item));
        }
        return entry;
    }
}
