package depot.optimizer.check;

import depot.optimizer.dictionary.CrewTables.Tools;
import depot.optimizer.dictionary.DepotTables.Circuits;
import depot.optimizer.dictionary.EquipmentTables.ChargeTimes;
import depot.optimizer.dictionary.EquipmentTables.ChargerTypes;
import depot.optimizer.dictionary.EquipmentTables.PackTypes;
import depot.optimizer.dictionary.Field;
import depot.optimizer.dictionary.StoreTables.PowerBanks;
import depot.optimizer.dictionary.StoreTables.SharingUnits;
import depot.optimizer.dictionary.Table;
import depot.optimizer.scenario.ChargeTime;
import depot.optimizer.scenario.ChargerType;
import depot.optimizer.scenario.Circuit;
import depot.optimizer.scenario.PackType;
import depot.optimizer.scenario.SharingUnitType;
import depot.optimizer.scenario.Tool;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Rules of packs, chargers, sharing units, power banks and tools. */
final class EquipmentRules {
    private EquipmentRules() {}

    /** A charger charges no more packs at once than it has bays. */
    static void bays(Drafts drafts, Findings findings) {
        for (Located<ChargerType> charger : drafts.chargerTypes) {
            if (charger.value().chargingAtOnce() > charger.value().bays()) {
                findings.error(
                        charger,
                        ChargerTypes.CHARGING_AT_ONCE,
                        "more than its " + charger.value().bays() + " bays",
                        "at most as many as bays");
            }
        }
    }

    /** A unit has no more priority outlets than outlets. */
    static void priorityOutlets(Drafts drafts, Findings findings) {
        for (Located<SharingUnitType> unit : drafts.sharingUnitTypes) {
            if (unit.value().priorityOutlets() > unit.value().outlets()) {
                findings.error(
                        unit,
                        SharingUnits.PRIORITY_OUTLETS,
                        "more than its " + unit.value().outlets() + " outlets",
                        "at most as many as outlets");
            }
        }
    }

    /** Eighty per cent comes before full. */
    static void timesRise(Drafts drafts, Findings findings) {
        for (Located<ChargeTime> time : drafts.chargeTimes) {
            if (time.value().minutesTo80() >= time.value().minutesToFull()) {
                findings.error(
                        time,
                        ChargeTimes.MINUTES_TO_80,
                        "not below minutes_to_full, " + time.value().minutesToFull(),
                        "a pack reaches 80 % before it is full");
            }
        }
    }

    /** Some charger takes each pack; a charger that takes none is noticed. */
    static void packsAndChargersFit(Drafts drafts, Findings findings) {
        if (!drafts.whole(ChargeTimes.TABLE)) {
            return;
        }
        Set<String> packs =
                drafts.chargeTimes.stream().map(time -> time.value().packType()).collect(Collectors.toSet());
        Set<String> chargers = drafts.chargeTimes.stream()
                .map(time -> time.value().chargerType())
                .collect(Collectors.toSet());
        for (Located<PackType> pack : drafts.packTypes) {
            if (!packs.contains(pack.value().id())) {
                findings.error(
                        pack, PackTypes.PACK_TYPE, "no charger takes this pack", "add a row to charge_times.csv");
            }
        }
        for (Located<ChargerType> charger : drafts.chargerTypes) {
            if (!chargers.contains(charger.value().id())) {
                findings.notice(charger, ChargerTypes.CHARGER_TYPE, "no pack fits this charger", "it is not used");
            }
        }
    }

    /** Each tool's family has a pack. */
    static void packForEachTool(Drafts drafts, Findings findings) {
        if (!drafts.whole(PackTypes.TABLE)) {
            return;
        }
        Set<String> families =
                drafts.packTypes.stream().map(pack -> pack.value().family()).collect(Collectors.toSet());
        for (Located<Tool> tool : drafts.tools) {
            if (!families.contains(tool.value().family())) {
                findings.error(
                        tool,
                        Tools.FAMILY,
                        "no pack of this family in pack_types.csv",
                        NearestKey.hint(tool.value().family(), families));
            }
        }
    }

    /** A charger that no circuit can carry is noticed. */
    static void somewhereToPlug(Drafts drafts, Findings findings) {
        if (!drafts.whole(Circuits.TABLE)) {
            return;
        }
        for (Located<ChargerType> charger : drafts.chargerTypes) {
            boolean fits = drafts.circuits.stream()
                    .map(Located::value)
                    .anyMatch(circuit -> amps(charger.value(), circuit) <= plugLimit(circuit));
            if (!fits && !charger.value().portable()) {
                findings.notice(
                        charger,
                        ChargerTypes.PLATE_WATTS,
                        "no circuit's plug or breaker carries this charger",
                        "it is not used; are the unit watts and the circuits complete?");
            }
        }
    }

    /** P = V I pf on one phase, sqrt(3) V I pf on three. */
    private static double amps(ChargerType charger, Circuit circuit) {
        double phaseFactor = circuit.phases() == 3 ? Math.sqrt(3) : 1;
        return charger.plateWatts() / (circuit.volts() * circuit.powerFactor() * phaseFactor);
    }

    private static double plugLimit(Circuit circuit) {
        return Math.min(
                circuit.plugAmps().orElse(Double.MAX_VALUE), circuit.breakerAmps() * circuit.continuousFactor());
    }

    /** Keys of packs, chargers, units and banks differ, because other tables name any of them as an item. */
    static void itemKeys(Drafts drafts, Findings findings) {
        Map<Table, Field<String>> keys = new LinkedHashMap<>();
        keys.put(PackTypes.TABLE, PackTypes.PACK_TYPE);
        keys.put(ChargerTypes.TABLE, ChargerTypes.CHARGER_TYPE);
        keys.put(SharingUnits.TABLE, SharingUnits.UNIT_TYPE);
        keys.put(PowerBanks.TABLE, PowerBanks.BANK_TYPE);
        Map<String, Table> seen = new HashMap<>();
        keys.forEach((table, key) -> {
            List<TypedRow> rows = drafts.table(table).rows();
            for (TypedRow row : rows) {
                row.find(key)
                        .map(id -> seen.putIfAbsent(id, table))
                        .filter(other -> !other.equals(table))
                        .ifPresent(other -> findings.error(
                                row,
                                key,
                                other.file() + " has an item with the same key",
                                "packs, chargers, units and banks need keys that differ"));
            }
        });
    }
}
