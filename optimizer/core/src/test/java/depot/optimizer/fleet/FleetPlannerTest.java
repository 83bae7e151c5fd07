package depot.optimizer.fleet;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.finance.PresentCost;
import depot.optimizer.fixture.TinyScenarios;
import depot.optimizer.plan.CostLine;
import depot.optimizer.plan.CostLine.Category;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.Plan;
import depot.optimizer.report.PlanJson;
import depot.optimizer.scenario.BaseLoad;
import depot.optimizer.scenario.ChargerType;
import depot.optimizer.scenario.Circuit;
import depot.optimizer.scenario.Crew;
import depot.optimizer.scenario.Depot;
import depot.optimizer.scenario.PackType;
import depot.optimizer.scenario.PriceBand;
import depot.optimizer.scenario.RouteStop;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.scenario.SharingUnitType;
import depot.optimizer.scenario.SolveSettings;
import depot.optimizer.scenario.TariffTerms;
import depot.optimizer.scenario.Work;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What has to hold for the plans of any fleet, on small ones. */
class FleetPlannerTest {

    /** 1e-6 of the cost: what engines leave open at gap 0. */
    private static final Percentage SAME = Percentage.withPercentage(1e-4);

    private static final double ALLOWED = 1e-6;
    private static final BigDecimal TEN = BigDecimal.TEN;
    /** Days of a mean year, leap days included: 365 and a quarter; common practice, no source. */
    private static final double DAYS_PER_YEAR = 365.25;

    private static final int FIRST = 1;
    private static final int SECOND = 2;
    private static final int THIRD = 3;

    @ParameterizedTest
    @ValueSource(ints = {FIRST, SECOND, THIRD})
    void plansRepeatByteForByte(int seed) {
        Scenario scenario = twice(exact(seed, 1));

        assertThat(PlanJson.write(plan(scenario))).isEqualTo(PlanJson.write(plan(scenario)));
    }

    @ParameterizedTest
    @ValueSource(ints = {FIRST, SECOND, THIRD})
    void plansDoNotDependOnThreads(int seed) {
        Plan alone = plan(twice(exact(seed, 1)));
        Plan sideBySide = plan(twice(exact(seed, 2)));

        assertThat(sideBySide.depots()).isEqualTo(alone.depots());
    }

    @ParameterizedTest
    @ValueSource(ints = {FIRST, SECOND, THIRD})
    void tenTimesTheMoneyIsTenTimesTheCost(int seed) {
        Scenario scenario = exact(seed, 1);

        assertThat(cost(inSmallerMoney(scenario))).isCloseTo(10 * cost(scenario), SAME);
    }

    @ParameterizedTest
    @ValueSource(ints = {FIRST, SECOND, THIRD})
    void depotWithoutCrewsAddsItsStandingChargeOnly(int seed) {
        Scenario scenario = exact(seed, 1);
        Depot depot = scenario.depots().get(0);

        Plan plan = plan(new Copy(scenario).with(both(scenario.depots(), copyOf(depot))));

        DepotPlan idle = plan.depots().get(1);
        double standing = scenario.tariffTerms().get(0).standingPerDay().doubleValue() * DAYS_PER_YEAR;
        assertThat(idle.stop().certificate().cost())
                .isCloseTo(standing * PresentCost.of(scenario).annuity(), SAME);
        assertThat(idle.costs().stream().filter(line -> line.presentCost() != 0))
                .extracting(CostLine::category)
                .containsOnly(Category.STANDING);
        assertThat(idle.chargers()).isEmpty();
        assertThat(plan.certificate().cost() - idle.stop().certificate().cost()).isCloseTo(cost(scenario), SAME);
    }

    @ParameterizedTest
    @ValueSource(ints = {FIRST, SECOND, THIRD})
    void twoEqualDepotsCostTwice(int seed) {
        Scenario scenario = exact(seed, 1);

        assertThat(cost(twice(scenario))).isCloseTo(2 * cost(scenario), SAME);
    }

    @ParameterizedTest
    @ValueSource(ints = {FIRST, SECOND, THIRD})
    void biggerBreakersNeverCostMore(int seed) {
        Scenario scenario = exact(seed, 1);
        double before = cost(scenario);
        for (double factor : new double[] {1.25, 2}) {
            Copy copy = new Copy(scenario);
            copy.circuits = each(scenario.circuits(), c -> circuit(c, c.depot(), c.id(), factor, BigDecimal.ONE));
            double after = cost(copy.with(scenario.depots()));

            assertThat(after).isLessThanOrEqualTo(before * (1 + ALLOWED));
            before = after;
        }
    }

    private static Scenario exact(int seed, int threads) {
        return TinyScenarios.random(seed).withSolve(new SolveSettings(0, 100_000, 60, threads, 1, 15));
    }

    private static Plan plan(Scenario scenario) {
        return new FleetPlanner(ProgressListener.SILENT)
                .plan(scenario, new TreeMap<>())
                .plan();
    }

    private static double cost(Scenario scenario) {
        return plan(scenario).certificate().cost();
    }

    private static String copied(String id) {
        return id + "-b";
    }

    private static Depot copyOf(Depot d) {
        return new Depot(
                copied(d.id()),
                d.name(),
                d.region(),
                d.latitude(),
                d.longitude(),
                d.tariff(),
                d.supplyVolts(),
                d.supplyPhases(),
                d.supplyAmps(),
                d.places(),
                d.staffedFromMinute(),
                d.staffedToMinute(),
                d.swapMinutes(),
                d.supplyUpgradeAmps(),
                d.supplyUpgradeCost());
    }

    private static Circuit circuit(Circuit c, String depot, String id, double ampsFactor, BigDecimal priceFactor) {
        return new Circuit(
                id,
                depot,
                c.volts(),
                c.phases(),
                c.breakerAmps() * ampsFactor,
                c.outlets(),
                c.plugAmps(),
                c.continuousFactor(),
                c.powerFactor(),
                c.installCost().multiply(priceFactor));
    }

    /** The scenario with a second depot like its only one, with circuits, loads and crews of its own. */
    private static Scenario twice(Scenario scenario) {
        Depot depot = scenario.depots().get(0);
        Copy copy = new Copy(scenario);
        for (Circuit c : scenario.circuits()) {
            copy.circuits = both(copy.circuits, circuit(c, copied(c.depot()), copied(c.id()), 1, BigDecimal.ONE));
        }
        for (BaseLoad load : scenario.baseLoads()) {
            copy.baseLoads = both(
                    copy.baseLoads,
                    new BaseLoad(
                            copied(load.depot()),
                            load.circuit().map(FleetPlannerTest::copied),
                            load.days(),
                            load.fromMinute(),
                            load.toMinute(),
                            load.amps()));
        }
        for (Crew c : scenario.crews()) {
            copy.crews = both(
                    copy.crews,
                    new Crew(
                            copied(c.id()),
                            copied(c.depot()),
                            c.packPlaces(),
                            c.payloadKg(),
                            c.vehicleWatts(),
                            c.petrolCostPerYear()));
        }
        for (RouteStop s : scenario.stops()) {
            String place = s.place().equals(depot.id()) ? copied(s.place()) : s.place();
            copy.stops = both(
                    copy.stops,
                    new RouteStop(
                            s.season(),
                            s.days(),
                            copied(s.crew()),
                            s.stop(),
                            place,
                            s.arriveMinute(),
                            s.leaveMinute(),
                            s.siteWatts()));
        }
        for (Work w : scenario.work()) {
            copy.work = both(
                    copy.work,
                    new Work(w.season(), w.days(), copied(w.crew()), w.stop(), w.tool(), w.hours(), w.toolsAtOnce()));
        }
        return copy.with(both(scenario.depots(), copyOf(depot)));
    }

    /** All prices times ten. */
    private static Scenario inSmallerMoney(Scenario scenario) {
        Copy copy = new Copy(scenario);
        copy.shortage = TEN;
        copy.circuits = each(scenario.circuits(), c -> circuit(c, c.depot(), c.id(), 1, TEN));
        copy.packs = each(
                scenario.packTypes(),
                p -> new PackType(
                        p.id(),
                        p.family(),
                        p.capacityWh(),
                        p.usableShare(),
                        p.weightKg(),
                        p.price().multiply(TEN),
                        p.cycleLife(),
                        p.calendarYears()));
        copy.chargers = each(
                scenario.chargerTypes(),
                c -> new ChargerType(
                        c.id(),
                        c.bays(),
                        c.chargingAtOnce(),
                        c.plateWatts(),
                        c.efficiency(),
                        c.places(),
                        c.portable(),
                        c.weightKg(),
                        c.price().multiply(TEN),
                        c.installCost().multiply(TEN),
                        c.lifeYears()));
        copy.units = each(
                scenario.sharingUnitTypes(),
                u -> new SharingUnitType(
                        u.id(),
                        u.outlets(),
                        u.amps(),
                        u.priorityOutlets(),
                        u.price().multiply(TEN),
                        u.installCost().multiply(TEN),
                        u.lifeYears()));
        copy.bands = each(
                scenario.priceBands(),
                b -> new PriceBand(
                        b.tariff(),
                        b.season(),
                        b.days(),
                        b.fromMinute(),
                        b.toMinute(),
                        b.pricePerKwh().multiply(TEN)));
        copy.terms = each(
                scenario.tariffTerms(),
                t -> new TariffTerms(
                        t.tariff(),
                        t.standingPerDay().multiply(TEN),
                        t.demandPricePerKwMonth().multiply(TEN),
                        t.demandMinutes()));
        return copy.with(scenario.depots());
    }

    private static <T> List<T> each(List<T> rows, Function<T, T> edit) {
        return rows.stream().map(edit).toList();
    }

    private static <T> List<T> both(List<T> rows, T added) {
        return Stream.concat(rows.stream(), Stream.of(added)).toList();
    }

    /** A scenario with some of its tables changed. */
    private static final class Copy {
        private final Scenario from;
        private BigDecimal shortage = BigDecimal.ONE;
        private List<Circuit> circuits;
        private List<BaseLoad> baseLoads;
        private List<PackType> packs;
        private List<ChargerType> chargers;
        private List<SharingUnitType> units;
        private List<Crew> crews;
        private List<RouteStop> stops;
        private List<Work> work;
        private List<PriceBand> bands;
        private List<TariffTerms> terms;

        private Copy(Scenario from) {
            this.from = from;
            circuits = new ArrayList<>(from.circuits());
            baseLoads = from.baseLoads();
            packs = from.packTypes();
            chargers = from.chargerTypes();
            units = from.sharingUnitTypes();
            crews = from.crews();
            stops = from.stops();
            work = from.work();
            bands = from.priceBands();
            terms = from.tariffTerms();
        }

        private Scenario with(List<Depot> depots) {
            return new Scenario(
                    from.name(),
                    from.currency(),
                    from.timeZone(),
                    from.horizonYears(),
                    from.discountRate(),
                    from.demandQuantile(),
                    from.demandSpread(),
                    from.packHealth(),
                    from.packSharing(),
                    from.shortageCostPerKwh().map(cost -> cost.multiply(shortage)),
                    from.electricityPriceGrowth(),
                    from.solve(),
                    from.seasons(),
                    depots,
                    circuits,
                    baseLoads,
                    packs,
                    chargers,
                    from.chargeTimes(),
                    units,
                    from.powerBankTypes(),
                    from.tools(),
                    crews,
                    from.crewBases(),
                    stops,
                    work,
                    bands,
                    terms,
                    from.owned(),
                    from.coupling(),
                    from.finance());
        }
    }
}
