package depot.optimizer.replay;

import static depot.optimizer.replay.Replays.change;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Costs of a plan, right and wrong by a cent. */
class CostReplayTest {
    private static final String SCENARIO = "settings horizon=10 rate=0.08\n"
            + change(Replays.SCENARIO, "pack P wh=100", "pack P wh=100 price=50 years=5")
                    .replace("charger Q", "charger Q price=200 install=30 life=10")
            + "works_from A cost=100\nterms standing=0.5 minutes=30\n";

    /** v^10 = 0.463193, P/A = 6.710081; energy 0.4 kWh * 0.20 * 364 days; 0.8 packs wear out a year. */
    private static final String PLAN = change(Replays.PLAN, "stock D P 4", "stock D P 4 worn=0.8") + """
            cost PACKS P quantity=4 each=26.840326
            cost PACK_WEAR P quantity=0.8 each=335.504070
            cost CHARGERS Q quantity=1 each=230
            cost ENERGY flat quantity=145.6 each=1.342016
            cost STANDING flat quantity=365.25 each=3.355041
            cost CREW_BASES A quantity=1 each=671.008140
            total 2697.60
            """;

    @Test
    void aRightPlanAgreesToTheCent() {
        CostCheck costs = Replays.run(SCENARIO, PLAN).costs();

        assertThat(costs.differences()).isEmpty();
        assertThat(costs.total().doubleValue()).isCloseTo(2697.60, within(0.01));
        assertThat(costs.energyPerYear().doubleValue()).isCloseTo(29.12, within(1e-9));
        assertThat(Replays.run(SCENARIO, PLAN).proven()).isTrue();
    }

    @Test
    void aWrongPriceOfOnePieceIsFound() {
        assertThat(Replays.run(SCENARIO, change(PLAN, "each=230", "each=230.02"))
                        .costs()
                        .differences())
                .anyMatch(d -> d.startsWith("CHARGERS Q: one costs 230.00"))
                .anyMatch(d -> d.startsWith("CHARGERS costs 230.00"));
    }

    @Test
    void aMissingLineIsFound() {
        String less = change(PLAN, "cost CREW_BASES A quantity=1 each=671.008140\n", "");

        assertThat(Replays.run(SCENARIO, less).costs().differences())
                .singleElement()
                .asString()
                .startsWith("CREW_BASES costs 671.01");
    }

    @Test
    void aWrongTotalIsFound() {
        DepotReplay replay = Replays.run(SCENARIO, change(PLAN, "2697.60", "2600"));

        assertThat(replay.allViolations()).isEmpty();
        assertThat(replay.costs().differences()).singleElement().asString().startsWith("the plan costs 2697.60");
        assertThat(replay.proven()).isFalse();
    }

    @Test
    void aWrongProductIsFound() {
        assertThat(Replays.run(SCENARIO, change(PLAN, "each=230", "each=230 cost=231"))
                        .costs()
                        .differences())
                .anyMatch(d -> d.startsWith("CHARGERS Q: quantity times"));
    }

    @Test
    void wearBelowAgeOrUseIsFound() {
        String slow = change(PLAN, "worn=0.8", "worn=0.7").replace("quantity=0.8", "quantity=0.7");

        assertThat(Replays.run(SCENARIO, slow).costs().differences())
                .anyMatch(d -> d.startsWith("0.80 packs P wear out"));
        // 4 * 364 loads a year of 1,000 loads each are faster than four packs in five years.
        String used = change(SCENARIO, "years=5", "years=5 cycles=1000");
        assertThat(Replays.run(used, PLAN).costs().differences()).anyMatch(d -> d.startsWith("1.46 packs P wear out"));
    }

    @Test
    void energyHasThePriceOfItsHour() {
        String night = SCENARIO + "price 00:00 20:00 0.20\nprice 20:00 24:00 0.10\n";

        assertThat(Replays.run(night, PLAN).costs().differences())
                .anyMatch(d -> d.startsWith("day 0: energy from 08:00 to 32:00"));
    }

    @Test
    void ownedPiecesAreNeitherBoughtNorInstalled() {
        String owned = SCENARIO + "owned Q\n";
        String plan = change(change(PLAN, "C Q\n", "C Q owned\n"), "each=230", "each=0")
                .replace("2697.60", "2467.60");

        assertThat(Replays.run(owned, plan).costs().differences()).isEmpty();
    }
}
