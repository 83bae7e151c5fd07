package depot.optimizer.report.table;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.fixture.Planned;
import depot.optimizer.fixture.ScenarioText;
import depot.optimizer.fixture.VisitingCrew;
import depot.optimizer.report.table.SweepFigures.LossRow;
import depot.optimizer.sweep.SweepText;
import org.junit.jupiter.api.Test;

/** What tables say of a loss at a depot that charges packs of guests. */
class VisitLossWordsTest {

    private static LossRow swiftOut(ScenarioText text) {
        return SweepFigures.of(SweepText.run(Planned.load(text), "\"losses\": {\"charger_out\": \"yes\"}"))
                .losses()
                .stream()
                .filter(row -> row.result().loss().words().startsWith("1 swift"))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void theHomeThatFallsShortIsNamed() {
        LossRow row = swiftOut(VisitingCrew.quick(10));

        assertThat(row.status())
                .isEqualTo("does not hold: short on 150 of 300 depot days a year, 63.0 kWh, south included");
        assertThat(row.cure()).isEqualTo("buy 1 swift");
        assertThat(row.whose()).isEqualTo("days of this depot and of south");
    }

    @Test
    void theHomeThatDoesWithoutIsNamed() {
        LossRow row = swiftOut(VisitingCrew.forTheEnergy());

        assertThat(row.status()).isEqualTo("holds: south can do with fewer packs from here");
        assertThat(row.cure()).isEmpty();
        assertThat(row.held().orElseThrow().daysMet()).isEqualTo(300);
    }
}
