package depot.optimizer.report.table;

import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.UnitPlacement;
import depot.optimizer.scenario.ChargerType;
import depot.optimizer.scenario.Circuit;
import depot.optimizer.scenario.Crew;
import depot.optimizer.scenario.Depot;
import depot.optimizer.scenario.PackType;
import depot.optimizer.scenario.PowerBankType;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.scenario.SharingUnitType;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/** A scenario's records by their ids. Getters of one record fail, with the id in the message, when the scenario does not list it. */
public final class Catalog {

    private final Scenario scenario;
    private final Map<String, Depot> depots;
    private final Map<String, Crew> crews;
    private final Map<String, PackType> packTypes;
    private final Map<String, ChargerType> chargerTypes;
    private final Map<String, SharingUnitType> unitTypes;
    private final Map<String, PowerBankType> bankTypes;
    private final Map<String, Map<String, Circuit>> circuits = new LinkedHashMap<>();

    /** Indexes the scenario. */
    public Catalog(Scenario scenario) {
        this.scenario = scenario;
        depots = index(scenario.depots(), Depot::id);
        crews = index(scenario.crews(), Crew::id);
        packTypes = index(scenario.packTypes(), PackType::id);
        chargerTypes = index(scenario.chargerTypes(), ChargerType::id);
        unitTypes = index(scenario.sharingUnitTypes(), SharingUnitType::id);
        bankTypes = index(scenario.powerBankTypes(), PowerBankType::id);
        for (Circuit circuit : scenario.circuits()) {
            circuits.computeIfAbsent(circuit.depot(), depot -> new LinkedHashMap<>())
                    .put(circuit.id(), circuit);
        }
    }

    /** The scenario itself. */
    public Scenario scenario() {
        return scenario;
    }

    /** A depot by its id. */
    public Depot depot(String id) {
        return found(depots, id, "depot");
    }

    /** A crew by its id. */
    public Crew crew(String id) {
        return found(crews, id, "crew");
    }

    /** A pack type by its id. */
    public PackType packType(String id) {
        return found(packTypes, id, "pack type");
    }

    /** A charger type by its id. */
    public ChargerType chargerType(String id) {
        return found(chargerTypes, id, "charger type");
    }

    /** A portable charger by its id, empty when the id is that of something else a crew carries. */
    public Optional<ChargerType> portableCharger(String id) {
        return Optional.ofNullable(chargerTypes.get(id));
    }

    /** A sharing-unit type by its id. */
    public SharingUnitType unitType(String id) {
        return found(unitTypes, id, "sharing-unit type");
    }

    /** A power-bank type by its id. */
    public PowerBankType bankType(String id) {
        return found(bankTypes, id, "power-bank type");
    }

    /** Price of a piece of a type by itself. */
    public BigDecimal price(String item) {
        if (packTypes.containsKey(item)) {
            return packType(item).price();
        }
        if (chargerTypes.containsKey(item)) {
            return chargerType(item).price();
        }
        return unitTypes.containsKey(item)
                ? unitType(item).price()
                : bankType(item).price();
    }

    /** Years until a piece of a type is replaced; empty: it is a pack, whose stock is kept whole. */
    public OptionalDouble lifeYears(String item) {
        if (packTypes.containsKey(item)) {
            return OptionalDouble.empty();
        }
        if (chargerTypes.containsKey(item)) {
            return OptionalDouble.of(chargerType(item).lifeYears());
        }
        return OptionalDouble.of(
                unitTypes.containsKey(item)
                        ? unitType(item).lifeYears()
                        : bankType(item).lifeYears());
    }

    /** A depot's circuits, in the order of the table. */
    public List<Circuit> circuits(String depot) {
        return List.copyOf(circuits.getOrDefault(depot, Map.of()).values());
    }

    /** A circuit of a depot. */
    public Circuit circuit(String depot, String id) {
        return found(circuits.getOrDefault(depot, Map.of()), id, "circuit of depot '" + depot + "' with the id");
    }

    /** The load-sharing unit that the plan puts on a circuit. */
    public static Optional<UnitPlacement> unitOn(DepotPlan plan, String circuit) {
        return plan.units().stream()
                .filter(unit -> unit.circuit().equals(circuit))
                .findFirst();
    }

    /** What a unit on a circuit is set to, in amps: its own rating, its plug's, and what the breaker carries for hours. */
    public static double settingAmps(Circuit circuit, SharingUnitType unit) {
        double carried = Math.min(
                circuit.breakerAmps() * circuit.continuousFactor(),
                circuit.plugAmps().orElse(circuit.breakerAmps()));
        return Math.min(unit.amps(), carried);
    }

    /** Current of a load on a circuit, in amps. */
    public static double amps(Circuit circuit, double watts) {
        double phaseFactor = circuit.phases() == 3 ? Math.sqrt(3) : 1;
        return watts / (circuit.volts() * circuit.powerFactor() * phaseFactor);
    }

    private static <T> Map<String, T> index(List<T> rows, Function<T, String> id) {
        Map<String, T> byId = new LinkedHashMap<>();
        rows.forEach(row -> byId.put(id.apply(row), row));
        return byId;
    }

    private static <T> T found(Map<String, T> byId, String id, String kind) {
        T record = byId.get(id);
        if (record == null) {
            throw new IllegalArgumentException("The plan names %s '%s', which the scenario does not list. "
                    .formatted(kind, id)
                    .concat("Maybe the tables changed after the plan was made."));
        }
        return record;
    }
}
