package depot.optimizer.sweep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import depot.optimizer.fixture.Planned;
import depot.optimizer.fixture.ScenarioText;
import depot.optimizer.fixture.VisitingCrew;
import depot.optimizer.plan.TripPlan.RoadCharge;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Cases that keep purchases where south's crew charges a pack in north at noon. */
class VisitKeptTest {

    private static FleetOutcome kept(ScenarioText text, String changes) {
        SweepResult sweep = SweepText.run(
                Planned.load(text),
                "\"cases\": [{\"name\": \"c\", \"purchases\": \"kept\", \"changes\": [%s]}]".formatted(changes));
        return sweep.cases().get(0).fleet().orElseThrow();
    }

    private static List<RoadCharge> visits(FleetOutcome fleet) {
        return fleet.of("south").get(0).days().stream()
                .flatMap(day -> day.trips().stream())
                .flatMap(trip -> trip.roadCharges().stream())
                .filter(charge -> charge.source().atAnotherDepot())
                .toList();
    }

    /** With more work the old days do not pass any more, and the new ones go on with the visit: 2 * 450 Wh and 450 Wh are enough for 1,346.4 Wh. */
    @Test
    void newDaysGoOnWithTheVisit() {
        FleetOutcome fleet = kept(VisitingCrew.pair(), """
                {"change": "work_hours", "of": "crew-2", "value": 1.02}
                """);

        assertThat(fleet.proven()).isTrue();
        assertThat(fleet.sum(DepotOutcome::shortKwh)).isZero();
        assertThat(visits(fleet)).extracting(RoadCharge::packs).containsExactly(1);
    }

    /** The swift charger takes 54 minutes for a pack, and the crew stays for 45; a dearer charger could still do it, but north has none. */
    @Test
    void aHostThatCannotChargeAnyMoreSendsItsGuestHomeEmpty() {
        ScenarioText text = VisitingCrew.quick(10)
                .rows("charger_types.csv", "turbo,1,1,1300,0.9,1,no,2000,8")
                .rows("charge_times.csv", "turbo,pack-500,20,30");
        FleetOutcome fleet = kept(text, """
                {"change": "charge_times", "of": "swift", "value": 1.5}
                """);

        assertThat(fleet.troubles()).isEmpty();
        assertThat(fleet.proven()).isTrue();
        assertThat(visits(fleet)).isEmpty();
        assertThat(fleet.depots().get(0).shortKwh()).isZero();
        assertThat(fleet.depots().get(1).shortKwh()).isCloseTo(0.42 * 150, within(0.01));
    }
}
