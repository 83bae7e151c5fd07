package depot.optimizer.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import depot.optimizer.fixture.Planned;
import depot.optimizer.fixture.ScenarioText;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.replay.FleetReplay;
import depot.optimizer.solve.DepotSolver;
import depot.optimizer.solve.Effort;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** A charger behind a unit is fed whole or not at all, where demand is billed and the base load leaves little room below its own peak. */
class WholeChargersTest {

    private static final double KW = 1e-6;

    /** First stage of the charger of two bays: 80 % of 500 Wh in 42 minutes. */
    private static final double CHARGER_KW = 0.4 * 60 / 42;

    private static final Tightening WHOLE = new Tightening(Map.of(), 1, Map.of(), true);

    /** Two packs, 1 kWh a night, cheap from 22:00; what burns by day on another circuit is billed in any case, and by night there is as much room. */
    private static ScenarioText unitAtNight(String dayAmps) {
        return ScenarioText.tiny()
                .table("tariffs.csv", """
                        tariff,days,from,to,price_per_kwh
                        flat,Mon-Sun,00:00,16:00,0.10
                        flat,Mon-Sun,16:00,22:00,0.40
                        flat,Mon-Sun,22:00,24:00,0.10
                        """)
                .table(
                        "tariff_terms.csv",
                        "tariff,standing_per_day,demand_price_per_kw_month,demand_minutes\nflat,0,10,15\n")
                .table("sharing_units.csv", """
                        unit_type,outlets,amps,priority_outlets,price,life_years
                        unit,4,16,0,100,10
                        """)
                .table(
                        "base_load.csv",
                        "depot,circuit,days,from,to,amps\nnorth,,Mon-Sun,06:00,18:00," + dayAmps + "\n");
    }

    private static DepotPlan tightened(Planned planned) {
        DepotProblem problem = planned.problem();
        List<Tightening> whole = Collections.nCopies(problem.days().size(), WHOLE);
        DepotSolver solver = new DepotSolver(problem);
        solver.solve();
        return solver.tightened(whole).solveRollout(Effort.ALL).phases().get(0);
    }

    @Test
    void aChargerThatHasNoRoomIsNeverFed() {
        Planned planned = Planned.of(unitAtNight("0.6"));

        // The fluid of the model takes a trickle all night, which no charger can live on.
        assertThat(planned.plan().units()).hasSize(1);
        assertThat(planned.plan().days().get(0).demandKw()).isCloseTo(0, within(KW));
        assertThat(FleetReplay.runDepot(planned.scenario(), planned.plan()).proven())
                .isFalse();
    }

    @Test
    void roomForOneIsPaidForWhenThatIsFound() {
        Planned planned = Planned.of(unitAtNight("0.6"));
        DepotPlan plan = tightened(planned);

        double room = planned.problem().tariff().basePeakKw();
        assertThat(plan.days().get(0).demandKw()).isGreaterThanOrEqualTo(CHARGER_KW - room - KW);
        assertThat(FleetReplay.runDepot(planned.scenario(), plan).proven()).isTrue();
    }

    @Test
    void whereThereIsRoomNothingIsPaidFor() {
        DepotPlan plan = tightened(Planned.of(unitAtNight("2")));

        assertThat(plan.units()).hasSize(1);
        assertThat(plan.days().get(0).demandKw()).isCloseTo(0, within(KW));
    }
}
