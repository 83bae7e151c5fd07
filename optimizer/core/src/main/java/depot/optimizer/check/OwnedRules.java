package depot.optimizer.check;

import depot.optimizer.dictionary.Settings;
import depot.optimizer.dictionary.StoreTables.OwnedItems;
import depot.optimizer.scenario.ChargerType;
import depot.optimizer.scenario.Owned;
import depot.optimizer.scenario.PackSharing;
import depot.optimizer.scenario.SharingUnitType;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Rules of what is owned already. */
final class OwnedRules {
    private OwnedRules() {}

    /** An item is a pack, charger, sharing-unit or power-bank type. */
    static void knownItems(Drafts drafts, Findings findings) {
        Items items = new Items(drafts);
        drafts.owned.forEach(owned -> items.known(owned, OwnedItems.ITEM, findings));
    }

    /** The circuit is in the depot and exists already; the crew works from the depot, or may. */
    static void sameDepot(Drafts drafts, Findings findings) {
        for (Located<Owned> owned : drafts.owned) {
            String depot = owned.value().depot();
            owned.value()
                    .circuit()
                    .map(drafts.circuitsById::get)
                    .map(Located::value)
                    .ifPresent(circuit -> {
                        if (!circuit.depot().equals(depot)) {
                            findings.error(
                                    owned,
                                    OwnedItems.CIRCUIT,
                                    "the circuit is in depot " + circuit.depot() + ", not in " + depot,
                                    "name a circuit of the depot");
                        } else if (circuit.candidate()) {
                            findings.error(
                                    owned,
                                    OwnedItems.CIRCUIT,
                                    "the circuit is not built yet: it has an install_cost",
                                    "leave it blank while the item is in store");
                        }
                    });
            owned.value()
                    .crew()
                    .map(drafts.crewsById::get)
                    .map(crew -> crew.value().depot())
                    .filter(base -> !base.equals(depot) && !otherBase(drafts, owned.value()))
                    .ifPresent(base -> findings.error(
                            owned,
                            OwnedItems.CREW,
                            "the crew works from " + base + ", not from " + depot,
                            "name the crew's own depot"));
        }
    }

    private static boolean otherBase(Drafts drafts, Owned owned) {
        return drafts.crewBases.stream()
                .map(Located::value)
                .anyMatch(base -> owned.crew().filter(base.crew()::equals).isPresent()
                        && base.depot().equals(owned.depot()));
    }

    /** Only chargers and units are mounted on circuits; only what moves belongs to crews. */
    static void holders(Drafts drafts, Findings findings) {
        for (Located<Owned> owned : drafts.owned) {
            Kind kind = kind(drafts, owned.value().item());
            Optional<ChargerType> charger = charger(drafts, owned);
            if (owned.value().circuit().isPresent() && (kind == Kind.PACK || kind == Kind.BANK)) {
                findings.error(
                        owned,
                        OwnedItems.CIRCUIT,
                        "packs and power banks are not mounted on circuits",
                        "leave it blank");
            }
            if (owned.value().circuit().isPresent() && owned.value().crew().isPresent()) {
                findings.error(
                        owned,
                        OwnedItems.CREW,
                        "an item is mounted on a circuit or a crew's, not both",
                        "leave one blank");
            }
            boolean fixed =
                    kind == Kind.UNIT || (charger.isPresent() && !charger.get().portable());
            if (owned.value().crew().isPresent() && fixed) {
                findings.error(
                        owned, OwnedItems.CREW, "a crew cannot carry this item", "leave it blank: it is the depot's");
            }
            if (owned.value().crew().isPresent() && kind == Kind.PACK && pooled(drafts)) {
                findings.error(
                        owned,
                        OwnedItems.CREW,
                        "packs are shared by the depot's crews (pack_sharing in scenario.json)",
                        "leave it blank: they are the depot's");
            }
        }
    }

    /** A circuit holds one sharing unit at most, and no more chargers than it has outlets. */
    static void fitOnCircuit(Drafts drafts, Findings findings) {
        Map<String, Integer> units = new HashMap<>();
        Map<String, Integer> plugs = new HashMap<>();
        for (Located<Owned> owned : drafts.owned) {
            String id = owned.value().circuit().orElse("");
            Kind kind = kind(drafts, owned.value().item());
            if (kind == Kind.UNIT
                    && !id.isEmpty()
                    && units.merge(id, owned.value().count(), Integer::sum) > 1) {
                findings.error(
                        owned, OwnedItems.COUNT, "a circuit holds one sharing unit", "leave the others in store");
            }
            if (kind == Kind.CHARGER && drafts.circuitsById.containsKey(id)) {
                int outlets = outlets(drafts, id);
                int mounted = plugs.merge(id, owned.value().count(), Integer::sum);
                if (mounted > outlets) {
                    findings.error(
                            owned,
                            OwnedItems.COUNT,
                            mounted + " chargers on a circuit with " + outlets + " outlets",
                            "leave the others in store, or correct the outlets of the circuit or its unit");
                }
            }
        }
    }

    private enum Kind {
        PACK,
        CHARGER,
        UNIT,
        BANK,
        UNKNOWN
    }

    private static Kind kind(Drafts drafts, String item) {
        if (drafts.packTypesById.containsKey(item)) {
            return Kind.PACK;
        }
        if (drafts.chargerTypesById.containsKey(item)) {
            return Kind.CHARGER;
        }
        if (drafts.sharingUnitTypes.stream().anyMatch(unit -> unit.value().id().equals(item))) {
            return Kind.UNIT;
        }
        boolean bank = drafts.powerBankTypes.stream()
                .anyMatch(type -> type.value().id().equals(item));
        return bank ? Kind.BANK : Kind.UNKNOWN;
    }

    /** Outlets of the unit on a circuit, or of the circuit itself when it has none. */
    private static int outlets(Drafts drafts, String circuit) {
        Set<String> mounted = drafts.owned.stream()
                .map(Located::value)
                .filter(owned -> owned.circuit().filter(circuit::equals).isPresent())
                .map(Owned::item)
                .collect(Collectors.toSet());
        return drafts.sharingUnitTypes.stream()
                .map(Located::value)
                .filter(unit -> mounted.contains(unit.id()))
                .map(SharingUnitType::outlets)
                .findFirst()
                .orElseGet(() -> drafts.circuitsById.get(circuit).value().outlets());
    }

    private static boolean pooled(Drafts drafts) {
        return drafts.settings
                .flatMap(row -> row.find(Settings.PACK_SHARING))
                .filter(PackSharing.DEPOT::equals)
                .isPresent();
    }

    private static Optional<ChargerType> charger(Drafts drafts, Located<Owned> owned) {
        return Optional.ofNullable(drafts.chargerTypesById.get(owned.value().item()))
                .map(Located::value);
    }
}
