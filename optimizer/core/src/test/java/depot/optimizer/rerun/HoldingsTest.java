package depot.optimizer.rerun;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.fixture.Planned;
import depot.optimizer.fixture.ScenarioText;
import depot.optimizer.fleet.FleetPlanner;
import depot.optimizer.fleet.ProgressListener;
import depot.optimizer.fleet.SmallFleet;
import depot.optimizer.scenario.Owned;
import depot.optimizer.scenario.Scenario;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Whose pieces are there after a run: two depots, a crew each, packs of the crews' own, and a bigger supply that has to be bought. */
class HoldingsTest {

    private static final ScenarioText TEXT = SmallFleet.twice(ScenarioText.tiny()
            .replace("scenario.json", "\"pack_sharing\": \"depot\"", "\"pack_sharing\": \"crew\"")
            .replace("depots.csv", "supply_amps,places", "supply_amps,places,supply_upgrade_amps,supply_upgrade_cost")
            .replace("depots.csv", "3,63,10", "3,1,10,63,700"));

    private static final EarlierRun RUN = run();

    private static EarlierRun run() {
        Scenario scenario = Planned.load(TEXT);
        return new EarlierRun(
                new FleetPlanner(ProgressListener.SILENT)
                        .plan(scenario, new TreeMap<>())
                        .plan(),
                scenario,
                List.of());
    }

    @Test
    void piecesBelongToWhomTheyWereBoughtFor() {
        int packs = RUN.depot("north").orElseThrow().packs().get(0).count();
        assertThat(owned(TEXT)).contains(pack("north", "crew-1", packs), pack("south", "squad-1", packs));
        assertThat(owned(TEXT)).contains(new Owned("north", Optional.empty(), Optional.empty(), "duo", 1));
    }

    @Test
    void packsGoToTheNewCrewOfADepotWhoseCrewIsGone() {
        int packs = RUN.depot("north").orElseThrow().packs().get(0).count();
        assertThat(owned(SmallFleet.renamed(TEXT, "crew-1", "crew-9")))
                .contains(pack("north", "crew-9", packs))
                .noneMatch(row -> row.crew().equals(Optional.of("crew-1")));
    }

    @Test
    void packsGoWithACrewThatMoves() {
        int packs = RUN.depot("north").orElseThrow().packs().get(0).count();
        ScenarioText moved = TEXT.replace("crews.csv", "crew-1,north", "crew-1,south")
                .replace("stops.csv", "crew-1,1,north", "crew-1,1,south")
                .replace("stops.csv", "crew-1,3,north", "crew-1,3,south");
        assertThat(owned(moved))
                .contains(pack("south", "crew-1", packs))
                .doesNotContain(pack("north", "crew-1", packs));
    }

    @Test
    void packsAreTheDepotsWhereCrewsBeginToShareThem() {
        int packs = RUN.depot("north").orElseThrow().packs().get(0).count();
        ScenarioText shared =
                TEXT.replace("scenario.json", "\"pack_sharing\": \"crew\"", "\"pack_sharing\": \"depot\"");
        assertThat(owned(shared)).contains(new Owned("north", Optional.empty(), Optional.empty(), "pack-500", packs));
    }

    @Test
    void aSupplyIsThereOnceItIsBought() {
        assertThat(RUN.depot("north").orElseThrow().supplyUpgraded()).isTrue();
        Holdings same = Holdings.after(RUN, Planned.load(TEXT));
        assertThat(same.suppliesUpgraded()).containsExactlyInAnyOrder("north", "south");
        assertThat(same.scenario().depots()).allMatch(depot -> depot.supplyAmps() == 63 && !depot.upgradeOffered());

        ScenarioText other = TEXT.replace("depots.csv", "3,1,10,63,700", "3,1,10,80,900");
        assertThat(Holdings.after(RUN, Planned.load(other)).suppliesUpgraded()).isEmpty();
    }

    @Test
    void whatAPlanLeavesIsInStore() {
        Pieces bought = Pieces.bought(RUN.depot("north").orElseThrow());
        int packs = bought.count("crew-1", "pack-500");
        bought.add("crew-1", "pack-500", 2);

        assertThat(Store.of("north", bought, RUN.depot("north"))).containsExactly(pack("north", "crew-1", 2));
        assertThat(Store.of("north", bought, Optional.empty())).contains(pack("north", "crew-1", packs + 2));
    }

    @Test
    void piecesOfOneCrewCountForAnotherInTheDepot() {
        Pieces bought = new Pieces();
        bought.add("gone", "pack-500", 1);
        int packs = RUN.depot("north").orElseThrow().packs().get(0).count();
        bought.add("crew-1", "pack-500", packs - 1);

        assertThat(Store.of("north", bought, RUN.depot("north"))).isEmpty();
    }

    private static List<Owned> owned(ScenarioText text) {
        return Holdings.after(RUN, Planned.load(text)).scenario().owned();
    }

    private static Owned pack(String depot, String crew, int count) {
        return new Owned(depot, Optional.empty(), Optional.of(crew), "pack-500", count);
    }
}
