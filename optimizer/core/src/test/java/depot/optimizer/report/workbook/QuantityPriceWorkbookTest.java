package depot.optimizer.report.workbook;

import static depot.optimizer.report.workbook.RolloutWorkbookTest.CENT;
import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.finance.CashFlow;
import depot.optimizer.finance.FlowKind;
import depot.optimizer.fixture.Planned;
import depot.optimizer.fixture.ScenarioText;
import depot.optimizer.plan.FleetCost;
import depot.optimizer.plan.Plan;
import depot.optimizer.report.table.CashFlowTables;
import depot.optimizer.report.table.Catalog;
import depot.optimizer.report.table.RolloutTable;
import depot.optimizer.report.table.Words;
import depot.optimizer.scenario.Scenario;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The workbook of a taxed fleet with quantity prices, as an independent engine recalculates it, against finance, cash_flow.csv, the plan and closed formulas. */
class QuantityPriceWorkbookTest {

    /** Quantity prices that the first phase reaches, and the second for packs. */
    private static final ScenarioText TEXT =
            RolloutWorkbookTest.TEXT.table("price_tiers.csv", "item,from_count,price\npack-500,2,180\nduo,2,120\n");

    private static final Scenario SCENARIO = Planned.load(TEXT);

    /** With three spare packs on top, so that every kind of order is there. */
    private static final Plan PLAN = withSpare(RolloutWorkbookTest.plan(SCENARIO));

    private static Plan withSpare(Plan plan) {
        FleetCost spare = new FleetCost("second", FleetCost.Kind.SPARE_PIECES, "pack-500", 3, 300, 0);
        return plan.with(
                plan.certificate(),
                Stream.concat(plan.fleetCosts().stream(), Stream.of(spare)).toList(),
                plan.depots());
    }

    static Stream<RolloutWorkbookTest.Change> changes() {
        return RolloutWorkbookTest.changes();
    }

    @ParameterizedTest
    @MethodSource("changes")
    void recalculatesToWhatFinanceReckons(RolloutWorkbookTest.Change change) {
        Scenario changed = Planned.load(change.files().apply(TEXT));
        RolloutWorkbookTest.assertAgrees(
                change.cells().apply(Recalculated.of(PlanWorkbook.of(SCENARIO, PLAN))),
                CashFlow.of(changed, atThesePrices(changed)));
    }

    /** The workbook keeps what is paid for a piece at a quantity price when its own price changes, so that it takes off more or less. */
    private static Plan atThesePrices(Scenario changed) {
        List<FleetCost> costs = PLAN.fleetCosts().stream()
                .map(cost -> {
                    double own = new Catalog(changed).price(cost.item()).doubleValue();
                    double before = new Catalog(SCENARIO).price(cost.item()).doubleValue();
                    boolean spare = cost.kind() == FleetCost.Kind.SPARE_PIECES;
                    double price = spare ? own : cost.price() + own - before;
                    return new FleetCost(cost.phase(), cost.kind(), cost.item(), cost.pieces(), price, 0);
                })
                .toList();
        return PLAN.with(PLAN.certificate(), costs, PLAN.depots());
    }

    @Test
    void whatIsWrittenOffIsWhatEachPhaseSpends() {
        Recalculated workbook = Recalculated.of(PlanWorkbook.of(SCENARIO, PLAN));
        List<Double> books = workbook.yearly("Goes into the books");
        List<Double> replaced = workbook.yearly(Words.of(FlowKind.REPLACEMENTS));

        assertThat(books.get(0)).isCloseTo(workbook.spent("first"), CENT);
        assertThat(books.get(3) + replaced.get(3)).isCloseTo(workbook.spent("second"), CENT);
        assertThat(workbook.yearly(Words.of(FlowKind.FLEET_PURCHASES)).get(0)).isPositive();
    }

    @Test
    void theTableOfYearsHasTheSameAmounts() {
        Recalculated workbook = Recalculated.of(PlanWorkbook.of(SCENARIO, PLAN));
        List<String> rows = CashFlowTables.yearly(CashFlow.of(SCENARIO, PLAN), "EUR")
                .content()
                .lines()
                .toList();
        List<String> heads = List.of(rows.get(0).split(",", -1));

        for (FlowKind kind : FlowKind.values()) {
            int column = heads.indexOf(kind.name().toLowerCase(Locale.ROOT));
            List<Double> amounts = rows.stream()
                    .skip(1)
                    .map(row -> Double.valueOf(row.split(",", -1)[column]))
                    .toList();
            RolloutWorkbookTest.assertYears(workbook.yearly(Words.of(kind)), amounts, kind.name());
        }
    }

    @Test
    void quantityPricesAreReckonedLiveAndAgreeWithThePlan() {
        Plan plan = RolloutWorkbookTest.plan(SCENARIO);
        FleetCost packs = plan.fleetCosts().stream()
                .filter(cost -> cost.item().equals("pack-500") && cost.kind() == FleetCost.Kind.QUANTITY_PRICE)
                .findFirst()
                .orElseThrow();
        Recalculated workbook = Recalculated.of(PlanWorkbook.of(SCENARIO, plan));
        double before = workbook.result("Present cost of the plan");

        assertThat(before).isCloseTo(plan.certificate().cost(), CENT);
        assertThat(workbook.result("Difference")).isZero();
        for (RolloutTable.Step step : RolloutTable.steps(new Catalog(SCENARIO), plan)) {
            assertThat(workbook.spent(step.phase().id())).isCloseTo(step.spent().doubleValue(), CENT);
        }
        // By hand: packs whose price falls by 10 more cost 10 less each when they are bought, and are worth 10 less
        // each after ten years.
        int year = SCENARIO.coupling().phase(packs.phase()).year();
        double factor = Math.pow(1.06, -year) - Math.pow(1.06, -10);
        workbook.set(4, 170, "Quantity price", "pack-500");
        assertThat(workbook.result("Present cost of the plan")).isCloseTo(before - 10 * packs.pieces() * factor, CENT);
    }

    /** By hand: a piece that lasts longer than the plan is worth its remaining share at the end, one that is followed is not. */
    @Test
    void aCheaperPieceIsWorthLessAtTheEndOnlyWhereNoOtherFollowsIt() {
        Plan plan = PLAN.with(
                PLAN.certificate(),
                List.of(new FleetCost("first", FleetCost.Kind.QUANTITY_PRICE, "duo", 2, 80, -160)),
                PLAN.depots());
        Plan without = PLAN.with(PLAN.certificate(), List.of(), PLAN.depots());
        Recalculated reduced = Recalculated.of(PlanWorkbook.of(SCENARIO, plan));
        Recalculated full = Recalculated.of(PlanWorkbook.of(SCENARIO, without));

        // A duo lasts 3.5 years: within ten years others follow it.
        assertThat(reduced.yearly(Words.of(FlowKind.FLEET_PURCHASES)).get(0)).isCloseTo(160, CENT);
        assertThat(atEnd(reduced)).isCloseTo(atEnd(full), CENT);
        reduced.set(4, 16, "Chargers", "duo");
        full.set(4, 16, "Chargers", "duo");
        // Of 16 years 10 are used up: of 80 saved, 80 x 6/16 are missing at the end.
        assertThat(reduced.yearly(Words.of(FlowKind.FLEET_PURCHASES)).get(0)).isCloseTo(160, CENT);
        assertThat(atEnd(reduced)).isCloseTo(atEnd(full) - 2 * 80 * 6 / 16.0, CENT);
    }

    private static double atEnd(Recalculated workbook) {
        return workbook.yearly(Words.of(FlowKind.VALUE_AT_END)).get(10);
    }

    @Test
    void derivedCellsAreFormulasThatAllWork() {
        Recalculated workbook = Recalculated.of(PlanWorkbook.of(SCENARIO, PLAN));

        assertThat(workbook.formulas()).hasSizeGreaterThan(1_000);
        assertThat(workbook.workbook().getNumberOfSheets()).isEqualTo(7);
    }
}
