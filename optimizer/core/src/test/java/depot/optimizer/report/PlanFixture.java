package depot.optimizer.report;

import depot.optimizer.plan.BankPlacement;
import depot.optimizer.plan.Certificate;
import depot.optimizer.plan.ChargerLoad;
import depot.optimizer.plan.ChargerLoad.Level;
import depot.optimizer.plan.ChargerLoad.Loaded;
import depot.optimizer.plan.ChargerPlacement;
import depot.optimizer.plan.CostLine;
import depot.optimizer.plan.CostLine.Category;
import depot.optimizer.plan.CrewKit;
import depot.optimizer.plan.DayPlan;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.EnergyUse;
import depot.optimizer.plan.ExplainedShortage;
import depot.optimizer.plan.PackStock;
import depot.optimizer.plan.Plan;
import depot.optimizer.plan.PlanSettings;
import depot.optimizer.plan.SeasonDay;
import depot.optimizer.plan.SolveStop;
import depot.optimizer.plan.TripPlan;
import depot.optimizer.plan.TripPlan.Carried;
import depot.optimizer.plan.TripPlan.RoadCharge;
import depot.optimizer.plan.TripPlan.RoadSource;
import depot.optimizer.plan.UnitFeed;
import depot.optimizer.plan.UnitPlacement;
import depot.optimizer.replay.LateReturns;
import depot.optimizer.replay.TrialReport;
import depot.optimizer.replay.TrialReport.DepotTrials;
import depot.optimizer.replay.TrialReport.Share;
import depot.optimizer.replay.TrialSettings;
import depot.optimizer.scenario.Scenario;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;

/** A plan for {@link ScenarioFixture} with every kind of entry; its numbers are made up, its sums are right. */
final class PlanFixture {

    private static final Certificate FLEET = Certificate.of(12_000, 11_950, 0.005);

    private PlanFixture() {}

    static Plan of(Scenario scenario) {
        String thirdCrew = scenario.crews().get(2).id();
        return new Plan(
                Plan.FORMAT_VERSION,
                scenario.name(),
                scenario.currency().getCurrencyCode(),
                Map.of("stops.csv", "00ff", "depots.csv", "12ab"),
                "solver 1.0",
                new PlanSettings(0.005, 20_000, 2, 1, 15),
                FLEET,
                List.of(yard(), hill(thirdCrew)));
    }

    /** The plan with other packs in its first depot. */
    static Plan withPacks(Plan plan, List<PackStock> packs) {
        DepotPlan first = plan.depots().get(0);
        DepotPlan changed = new DepotPlan(
                first.depot(),
                first.stop(),
                first.onPetrol(),
                first.supplyUpgraded(),
                first.circuitsBuilt(),
                first.units(),
                first.chargers(),
                first.banks(),
                packs,
                first.kits(),
                first.days(),
                first.costs());
        return new Plan(
                plan.formatVersion(),
                plan.scenario(),
                plan.currency(),
                plan.inputHashes(),
                plan.solver(),
                plan.settings(),
                plan.certificate(),
                List.of(changed, plan.depots().get(1)));
    }

    static List<ExplainedShortage> shortages(Scenario scenario) {
        return List.of(new ExplainedShortage(
                "hill",
                "now",
                new SeasonDay("summer", DayOfWeek.FRIDAY),
                scenario.crews().get(2).id(),
                1,
                "bar",
                212.4,
                30,
                OptionalDouble.of(610.25),
                "The vehicle holds 6 packs",
                "Hold 7 packs in the vehicle",
                OptionalDouble.of(-320.5)));
    }

    /** Days drawn at random: 190 of 200 met at either depot. */
    static TrialReport trials() {
        Share half = new Share(190, 200);
        SortedMap<String, Share> summer = new TreeMap<>(Map.of("summer", half));
        return new TrialReport(
                new TrialSettings(200, 7, LateReturns.DEFAULT),
                new Share(380, 400),
                new TreeMap<>(Map.of("summer", new Share(380, 400))),
                List.of(new DepotTrials("yard", half, summer), new DepotTrials("hill", half, summer)));
    }

    private static DepotPlan yard() {
        return new DepotPlan(
                "yard",
                new SolveStop("gap reached", Certificate.of(9_000, 8_960, 0.005), 2, 0, 5, 2, 1310, 980, 57),
                List.of(),
                false,
                List.of("annexe"),
                List.of(new UnitPlacement("wall", "unit-16", false)),
                List.of(
                        new ChargerPlacement("bench-01", "bench", "four-bay", 1, false, false, true),
                        new ChargerPlacement("wall-01", "wall", "four-bay", 1, true, true, false),
                        new ChargerPlacement("wall-02", "wall", "four-bay", 2, true, false, false)),
                List.of(new BankPlacement("park-1", "bank-2k", "annexe", 1)),
                List.of(new PackStock("yard", "B10", 14, 2, 2.5), new PackStock("yard", "B5", 4, 0, 0.8)),
                List.of(new CrewKit("park-1", "bank-2k", 1, 0), new CrewKit("park-1", "travel", 1, 0)),
                List.of(yardWeekdays(), yardSaturday()),
                yardCosts());
    }

    private static DayPlan yardWeekdays() {
        return new DayPlan(
                IntStream.rangeClosed(1, 5)
                        .mapToObj(day -> new SeasonDay("summer", DayOfWeek.of(day)))
                        .toList(),
                150,
                405,
                List.of(
                        trip("park-1", 1, 405, 730, List.of(new Carried("B10", 6, 0)), List.of(roadCharge())),
                        trip("park-1", 2, 760, 955, List.of(new Carried("B10", 1, 2)), List.of()),
                        trip(
                                "park-2",
                                1,
                                420,
                                935,
                                List.of(new Carried("B10", 5, 0), new Carried("B5", 4, 0)),
                                List.of())),
                List.of(
                        new ChargerLoad("wall-01", 735, 945, List.of(new Loaded("B10", "yard", Level.FULL, 2))),
                        new ChargerLoad(
                                "bench-01",
                                945,
                                1845,
                                List.of(
                                        new Loaded("B10", "yard", Level.FULL, 3),
                                        new Loaded("B5", "yard", Level.FULL, 1))),
                        new ChargerLoad("wall-01", 960, 1845, List.of(new Loaded("B10", "yard", Level.FULL, 4))),
                        new ChargerLoad("wall-02", 960, 1845, List.of(new Loaded("B10", "yard", Level.FULL, 4)))),
                List.of(
                        new UnitFeed("wall", 735, 945, 850),
                        new UnitFeed("wall", 945, 1440, 0),
                        new UnitFeed("wall", 1440, 1800, 3400)),
                List.of(
                        new EnergyUse(735, 1440, 2.35, new BigDecimal("0.31")),
                        new EnergyUse(1440, 1800, 3.4, new BigDecimal("0.19"))),
                1.4);
    }

    private static DayPlan yardSaturday() {
        return new DayPlan(
                List.of(new SeasonDay("winter", DayOfWeek.SATURDAY)),
                18,
                405,
                List.of(trip("park-2", 1, 480, 800, List.of(new Carried("B10", 4, 0)), List.of())),
                List.of(new ChargerLoad("wall-01", 810, 1845, List.of(new Loaded("B10", "yard", Level.FULL, 4)))),
                List.of(new UnitFeed("wall", 810, 1440, 0), new UnitFeed("wall", 1440, 1800, 1680)),
                List.of(new EnergyUse(1440, 1800, 1.68, new BigDecimal("0.19"))),
                0.3);
    }

    private static RoadCharge roadCharge() {
        return new RoadCharge(RoadSource.BANK, 2, 3, 700, 730, "travel", "B5", 1);
    }

    private static TripPlan trip(
            String crew, int trip, int leave, int back, List<Carried> carried, List<RoadCharge> charges) {
        return new TripPlan(crew, trip, leave, back, carried, charges, List.of());
    }

    private static List<CostLine> yardCosts() {
        return List.of(
                line(Category.PACKS, "B10", 12, "piece", 150),
                line(Category.PACK_WEAR, "B10", 2.5, "piece/year", 800),
                line(Category.CHARGERS, "four-bay", 2, "piece", 400),
                line(Category.SHARING_UNITS, "unit-16", 1, "piece", 700),
                line(Category.POWER_BANKS, "bank-2k", 1, "piece", 1450),
                line(Category.CIRCUITS, "annexe", 1, "piece", 450),
                line(Category.ENERGY, "flat", 1000, "kWh/year", 1.6),
                line(Category.DEMAND, "flat", 1.25, "kW", 120),
                line(Category.STANDING, "flat", 1, "tariff", 50));
    }

    private static DepotPlan hill(String crew) {
        return new DepotPlan(
                "hill",
                new SolveStop("node limit", Certificate.of(3_000, 2_990, 0.005), 1, 0, 1, 1, 420, 300, 20_000),
                List.of(),
                false,
                List.of(),
                List.of(),
                List.of(new ChargerPlacement("shed-01", "shed", "four-bay", 1, false, false, false)),
                List.of(),
                List.of(new PackStock("hill", "B10", 6, 0, 1)),
                List.of(),
                List.of(new DayPlan(
                        List.of(new SeasonDay("summer", DayOfWeek.FRIDAY)),
                        30,
                        450,
                        List.of(new TripPlan(
                                crew,
                                1,
                                450,
                                880,
                                List.of(new Carried("B10", 4, 0)),
                                List.of(),
                                List.of(new TripPlan.Shortage("bar", 212.4)))),
                        List.of(new ChargerLoad(
                                "shed-01", 885, 1890, List.of(new Loaded("B10", "hill", Level.FULL, 4)))),
                        List.of(),
                        List.of(new EnergyUse(885, 1140, 1.68, new BigDecimal("0.31"))),
                        0.5)),
                List.of(
                        line(Category.PACKS, "B10", 6, "piece", 150),
                        line(Category.CHARGERS, "four-bay", 1, "piece", 415),
                        line(Category.ENERGY, "flat", 300, "kWh/year", 3.5825),
                        line(Category.SHORTAGE, crew, 6.1, "kWh/year", 100.0410)));
    }

    private static CostLine line(Category category, String item, double quantity, String unit, double each) {
        return new CostLine(category, item, quantity, unit, each, quantity * each);
    }
}
