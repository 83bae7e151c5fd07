package depot.optimizer.check;

import depot.optimizer.dictionary.EquipmentTables.ChargerTypes;
import depot.optimizer.dictionary.EquipmentTables.PackTypes;
import depot.optimizer.dictionary.Field;
import depot.optimizer.dictionary.StoreTables.PowerBanks;
import depot.optimizer.dictionary.StoreTables.SharingUnits;
import depot.optimizer.dictionary.Table;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What tables name as an item: any pack, charger, sharing-unit or power-bank type. */
final class Items {
    private final Drafts drafts;
    private final Set<String> keys = new HashSet<>();
    private final Map<String, BigDecimal> prices = new HashMap<>();
    private boolean complete = true;

    Items(Drafts drafts) {
        this.drafts = drafts;
        add(PackTypes.TABLE, PackTypes.PACK_TYPE, PackTypes.PRICE);
        add(ChargerTypes.TABLE, ChargerTypes.CHARGER_TYPE, ChargerTypes.PRICE);
        add(SharingUnits.TABLE, SharingUnits.UNIT_TYPE, SharingUnits.PRICE);
        add(PowerBanks.TABLE, PowerBanks.BANK_TYPE, PowerBanks.PRICE);
    }

    private void add(Table table, Field<String> key, Field<BigDecimal> price) {
        complete &= drafts.table(table).complete();
        for (TypedRow row : drafts.table(table).rows()) {
            row.find(key).ifPresent(item -> {
                keys.add(item);
                row.find(price).ifPresent(amount -> prices.put(item, amount));
            });
        }
    }

    /** Reports an item that is no type of any kind. */
    void known(Located<?> located, Field<String> field, Findings findings) {
        String item = located.row().get(field);
        if (complete && !keys.contains(item)) {
            findings.error(
                    located,
                    field,
                    "no pack, charger, sharing-unit or power-bank type has this key",
                    NearestKey.hint(item, keys));
        }
    }

    /** The price of one piece, empty: no such item, or its price is bad, which was reported. */
    Optional<BigDecimal> price(String item) {
        return Optional.ofNullable(prices.get(item));
    }
}
