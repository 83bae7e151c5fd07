package depot.optimizer.report;

import depot.optimizer.scenario.BaseLoad;
import depot.optimizer.scenario.ChargeTime;
import depot.optimizer.scenario.ChargerType;
import depot.optimizer.scenario.Circuit;
import depot.optimizer.scenario.Coupling;
import depot.optimizer.scenario.Crew;
import depot.optimizer.scenario.Depot;
import depot.optimizer.scenario.FinanceTerms;
import depot.optimizer.scenario.Owned;
import depot.optimizer.scenario.PackSharing;
import depot.optimizer.scenario.PackType;
import depot.optimizer.scenario.PowerBankType;
import depot.optimizer.scenario.PriceBand;
import depot.optimizer.scenario.RouteStop;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.scenario.Season;
import depot.optimizer.scenario.SharingUnitType;
import depot.optimizer.scenario.SolveSettings;
import depot.optimizer.scenario.TariffTerms;
import depot.optimizer.scenario.Tool;
import depot.optimizer.scenario.Work;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.ZoneId;
import java.util.Currency;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Two depots: a shared and a plain circuit, pooled packs, a mid-day trip, a power bank, two seasons. */
final class ScenarioFixture {

    /** Names that would be code where they are not escaped. */
    static final String HOSTILE_DEPOT = "Hill & Dale <script>alert(1)</script>";

    /** The id of a crew that a spreadsheet would run as a command. */
    static final String HOSTILE_CREW = "=cmd|' /C calc'!A0";

    private static final Set<DayOfWeek> WORKDAYS = EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY);
    private static final Set<DayOfWeek> ALL_DAYS = EnumSet.allOf(DayOfWeek.class);

    private ScenarioFixture() {}

    static Scenario friendly() {
        return named("Hill Road", "verge-1");
    }

    static Scenario hostile() {
        return named(HOSTILE_DEPOT, HOSTILE_CREW);
    }

    private static Scenario named(String secondDepot, String crew) {
        return new Scenario(
                "two yards",
                Currency.getInstance("EUR"),
                ZoneId.of("Europe/Berlin"),
                8,
                0.05,
                0.9,
                0.2,
                0.8,
                PackSharing.DEPOT,
                Optional.of(money("12")),
                0.01,
                SolveSettings.DEFAULT,
                List.of(new Season("summer", 30, 1), new Season("winter", 18, 0.8)),
                depots(secondDepot),
                circuits(),
                List.of(
                        new BaseLoad("yard", Optional.of("bench"), ALL_DAYS, 360, 1080, 2),
                        new BaseLoad("yard", Optional.empty(), ALL_DAYS, 0, 1440, 4)),
                List.of(
                        new PackType("B5", "bar", 98, 0.95, 1.2, money("139.90"), 800, 5),
                        new PackType("B10", "bar", 390, 0.95, 3.4, money("420"), 1000, 6)),
                List.of(
                        new ChargerType("four-bay", 4, 1, 500, 0.88, 1, false, 3, money("390"), money("25"), 8),
                        new ChargerType("travel", 1, 1, 300, 0.86, 0, true, 1.5, money("120"), money("0"), 6)),
                List.of(new ChargeTime("four-bay", "B5", 12, 20), new ChargeTime("four-bay", "B10", 40, 62)),
                List.of(new SharingUnitType("unit-16", 4, 12, 2, money("650"), money("180"), 12)),
                List.of(new PowerBankType("bank-2k", 2048, 1800, 0.9, 600, 240, 22, money("1490"), 7)),
                List.of(new Tool("blower", "bar", 900, OptionalDouble.of(1.1))),
                crews(crew),
                List.of(),
                stops(crew),
                work(crew),
                List.of(
                        new PriceBand("flat", Optional.empty(), ALL_DAYS, 0, 360, money("0.19")),
                        new PriceBand("flat", Optional.empty(), ALL_DAYS, 360, 1440, money("0.31"))),
                List.of(new TariffTerms("flat", money("0.35"), money("6.50"), 15)),
                List.of(new Owned("yard", Optional.empty(), Optional.empty(), "B10", 2)),
                Coupling.NONE,
                FinanceTerms.NONE);
    }

    private static List<Depot> depots(String second) {
        return List.of(
                new Depot(
                        "yard",
                        "Main yard",
                        Optional.of("north"),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        "flat",
                        400,
                        3,
                        40,
                        6,
                        Optional.of(420),
                        Optional.of(960),
                        Optional.of(120),
                        63,
                        money("2800")),
                new Depot(
                        "hill",
                        second,
                        Optional.of("north"),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        "flat",
                        230,
                        1,
                        32,
                        2,
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        0,
                        money("0")));
    }

    private static List<Circuit> circuits() {
        return List.of(
                circuit("bench", "yard", "0"),
                circuit("wall", "yard", "0"),
                circuit("annexe", "yard", "450"),
                circuit("shed", "hill", "0"));
    }

    private static Circuit circuit(String id, String depot, String cost) {
        return new Circuit(id, depot, 230, 1, 16, 4, OptionalDouble.of(10), 0.8, 0.95, money(cost));
    }

    private static List<Crew> crews(String second) {
        return List.of(
                new Crew("park-1", "yard", 12, 120, 600, money("3100")),
                new Crew("park-2", "yard", 8, 90, 0, money("2400")),
                new Crew(second, "hill", 6, 60, 0, money("1800")));
    }

    private static List<RouteStop> stops(String second) {
        return List.of(
                stop("park-1", 1, "yard", 405, 405),
                stop("park-1", 2, "Rose park", 430, 700),
                stop("park-1", 3, "yard", 730, 760),
                stop("park-1", 4, "Mill green", 790, 930),
                stop("park-1", 5, "yard", 955, 955),
                stop("park-2", 1, "yard", 420, 420),
                stop("park-2", 2, "Ring road", 450, 900),
                stop("park-2", 3, "yard", 935, 935),
                stop(second, 1, "hill", 450, 450),
                stop(second, 2, "Canal verge", 480, 840),
                stop(second, 3, "hill", 880, 880));
    }

    private static RouteStop stop(String crew, int stop, String place, int arrive, int leave) {
        return new RouteStop("summer", WORKDAYS, crew, stop, place, arrive, leave, 0);
    }

    private static List<Work> work(String second) {
        return List.of(
                new Work("summer", WORKDAYS, "park-1", 2, "blower", 2.5, 1),
                new Work("summer", WORKDAYS, "park-1", 4, "blower", 1.2, 1),
                new Work("summer", WORKDAYS, "park-2", 2, "blower", 2, 2),
                new Work("summer", WORKDAYS, second, 2, "blower", 2, 1));
    }

    private static BigDecimal money(String amount) {
        return new BigDecimal(amount);
    }
}
