package depot.optimizer.check;

import static depot.optimizer.fixture.ScenarioText.tiny;

import depot.optimizer.fixture.ScenarioText;
import org.junit.jupiter.api.Test;

class OwnedRulesTest {
    private static ScenarioText owned(String... rows) {
        return tiny().rows("depots.csv", "south,South yard,flat,400,3,63,10")
                .rows("circuits.csv", "south-1,south,230,1,16,4")
                .column("circuits.csv", "install_cost", "0")
                .rows("circuits.csv", "north-2,north,230,1,16,4,900")
                .rows("crews.csv", "crew-2,south,8,60")
                .rows(
                        "stops.csv",
                        "summer,Mon,crew-2,1,south,,07:00",
                        "summer,Mon,crew-2,2,park,08:00,09:00",
                        "summer,Mon,crew-2,3,south,10:00,")
                .table(
                        "sharing_units.csv",
                        "unit_type,outlets,amps,priority_outlets,price,life_years\nshare,6,16,1,500,10\n")
                .table("owned.csv", "depot,circuit,crew,item,count\n")
                .rows("owned.csv", rows);
    }

    @Test
    void ownedItemsAreTaken() {
        Breach.in(owned("north,north-1,,duo,4", "north,,,pack-500,3", "south,,,share,2", "south,,,duo,1"))
                .isNone();
    }

    @Test
    void anItemIsKnown() {
        Breach.in(owned("north,,,due,1"))
                .isOnlyError("owned.csv:2:item", "due", "no pack, charger, sharing-unit or power-bank type");
    }

    @Test
    void circuitAndCrewAreOfTheDepot() {
        Breach.in(owned("north,south-1,,duo,1")).isOnlyError("owned.csv:2:circuit", "south-1", "in depot south");
        Breach.in(owned("north,north-2,,duo,1")).isOnlyError("owned.csv:2:circuit", "north-2", "not built yet");
        Breach.in(owned("north,north-9,,share,1"))
                .isOnlyError("owned.csv:2:circuit", "north-9", "no such circuit in circuits.csv");
        Breach.in(owned("north,,crew-2,pack-500,1").replace("scenario.json", "\"depot\"", "\"crew\""))
                .isOnlyError("owned.csv:2:crew", "crew-2", "works from south");
    }

    @Test
    void holdersFitTheItem() {
        Breach.in(owned("north,north-1,,pack-500,1")).isOnlyError("owned.csv:2:circuit", "north-1", "not mounted");
        Breach.in(owned("north,,crew-1,pack-500,1")).isOnlyError("owned.csv:2:crew", "crew-1", "shared by");
        Breach.in(owned("north,,crew-1,pack-500,1").replace("scenario.json", "\"depot\"", "\"crew\""))
                .isNone();
        Breach.in(owned("north,,crew-1,duo,1")).isOnlyError("owned.csv:2:crew", "crew-1", "cannot carry");
        Breach.in(owned("north,,crew-1,share,1")).isOnlyError("owned.csv:2:crew", "crew-1", "cannot carry");
        Breach.in(owned("north,north-1,crew-1,duo,1").replace("charger_types.csv", ",no,", ",yes,"))
                .isOnlyError("owned.csv:2:crew", "crew-1", "not both");
    }

    @Test
    void aCircuitHoldsWhatFits() {
        Breach.in(owned("north,north-1,,duo,5"))
                .isOnlyError("owned.csv:2:count", "5", "5 chargers on a circuit with 4");
        Breach.in(owned("north,north-1,,share,1", "north,north-1,,duo,6")).isNone();
        Breach.in(owned("north,north-1,,share,1", "north,north-1,,duo,7"))
                .isOnlyError("owned.csv:3:count", "7", "with 6 outlets");
        Breach.in(owned("north,north-1,,share,2")).isOnlyError("owned.csv:2:count", "2", "one sharing unit");
    }

    @Test
    void rowsAreUnique() {
        Breach.in(owned("north,,,duo,1", "north,,,duo,2"))
                .isOnlyError("owned.csv:3:item", "duo", "same depot, circuit, crew, item is on line 2");
    }
}
