package depot.optimizer.replay;

import depot.optimizer.scenario.BaseLoad;
import depot.optimizer.scenario.ChargeTime;
import depot.optimizer.scenario.ChargerType;
import depot.optimizer.scenario.Circuit;
import depot.optimizer.scenario.Coupling;
import depot.optimizer.scenario.Crew;
import depot.optimizer.scenario.CrewBase;
import depot.optimizer.scenario.CrewConversion;
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
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A scenario drawn in text, one row per line. Whatever a line does not say is neutral: no spread, no losses, no cost, no limit that binds.
 * Depot D, season year and tariff flat are what rows refer to unless they say otherwise.
 */
final class ScenarioText {
    private final List<Season> seasons = new ArrayList<>();
    private final List<Depot> depots = new ArrayList<>();
    private final List<Circuit> circuits = new ArrayList<>();
    private final List<BaseLoad> baseLoads = new ArrayList<>();
    private final List<PackType> packs = new ArrayList<>();
    private final List<ChargerType> chargers = new ArrayList<>();
    private final List<ChargeTime> times = new ArrayList<>();
    private final List<SharingUnitType> units = new ArrayList<>();
    private final List<PowerBankType> banks = new ArrayList<>();
    private final List<Tool> tools = new ArrayList<>();
    private final List<Crew> crews = new ArrayList<>();
    private final List<CrewBase> bases = new ArrayList<>();
    private final List<CrewConversion> conversions = new ArrayList<>();
    private final List<RouteStop> stops = new ArrayList<>();
    private final List<Work> work = new ArrayList<>();
    private final List<PriceBand> bands = new ArrayList<>();
    private final List<TariffTerms> terms = new ArrayList<>();
    private final List<Owned> owned = new ArrayList<>();
    private Words settings = new Words("settings");

    private ScenarioText() {}

    static Scenario read(String text) {
        ScenarioText reader = new ScenarioText();
        text.lines().filter(line -> !line.isBlank()).map(Words::new).forEach(reader::row);
        return reader.scenario();
    }

    private void row(Words w) {
        switch (w.kind()) {
            case "settings" -> settings = w;
            case "season" -> seasons.add(new Season(w.at(1), w.number("weeks", 52), w.number("factor", 1)));
            case "depot" -> depots.add(depot(w));
            case "circuit" -> circuits.add(circuit(w));
            case "base" ->
                baseLoads.add(new BaseLoad(
                        "D",
                        Optional.ofNullable(w.text("circuit", null)),
                        w.days(),
                        Words.time(w.at(1)),
                        Words.time(w.at(2)),
                        w.number("amps", 0)));
            case "pack" -> packs.add(pack(w));
            case "charger" -> chargers.add(charger(w));
            case "fits" ->
                times.add(new ChargeTime(w.at(1), w.at(2), Integer.parseInt(w.at(3)), Integer.parseInt(w.at(4))));
            case "unit" ->
                units.add(new SharingUnitType(
                        w.at(1),
                        w.whole("outlets", 12),
                        w.number("amps", 100),
                        w.whole("priority", 0),
                        money(w, "price"),
                        money(w, "install"),
                        w.number("life", 10)));
            case "bank" -> banks.add(bank(w));
            case "owned" ->
                owned.add(new Owned(
                        "D",
                        Optional.empty(),
                        Optional.ofNullable(w.text("crew", null)),
                        w.at(1),
                        w.whole("count", 1)));
            default -> routeOrTariff(w);
        }
    }

    private void routeOrTariff(Words w) {
        switch (w.kind()) {
            case "tool" ->
                tools.add(new Tool(w.at(1), w.text("family", "F"), w.number("watts", 100), OptionalDouble.empty()));
            case "crew" ->
                crews.add(new Crew(
                        w.at(1),
                        "D",
                        w.whole("places", 100),
                        w.number("payload", 1000),
                        w.number("vehicle", 0),
                        BigDecimal.ZERO));
            case "may_stay" -> conversions.add(new CrewConversion(w.at(1), "now", Optional.empty()));
            case "works_from" -> bases.add(new CrewBase(w.at(1), "D", money(w, "cost")));
            case "stop" ->
                stops.add(new RouteStop(
                        w.text("season", "year"),
                        w.days(),
                        w.at(1),
                        Integer.parseInt(w.at(2)),
                        w.at(3),
                        Words.time(w.at(4)),
                        Words.time(w.at(w.count() - 1)),
                        w.number("site", 0)));
            case "work" ->
                work.add(new Work(
                        w.text("season", "year"),
                        w.days(),
                        w.at(1),
                        Integer.parseInt(w.at(2)),
                        w.at(3),
                        w.number("hours", 1),
                        w.whole("at_once", 0)));
            case "price" ->
                bands.add(new PriceBand(
                        w.text("tariff", "flat"),
                        Optional.ofNullable(w.text("season", null)),
                        w.days(),
                        Words.time(w.at(1)),
                        Words.time(w.at(2)),
                        new BigDecimal(w.at(3))));
            case "terms" ->
                terms.add(new TariffTerms("flat", money(w, "standing"), money(w, "demand"), w.whole("minutes", 30)));
            default -> throw new IllegalArgumentException("no row of kind " + w.kind());
        }
    }

    private static BigDecimal money(Words w, String name) {
        return new BigDecimal(w.text(name, "0"));
    }

    private static Depot depot(Words w) {
        return new Depot(
                w.at(1),
                "the depot",
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                w.text("tariff", "flat"),
                w.number("volts", 230),
                w.whole("phases", 1),
                w.number("amps", 1000),
                w.whole("places", 100),
                Optional.ofNullable(w.text("staffed_from", null)).map(Words::time),
                Optional.ofNullable(w.text("staffed_to", null)).map(Words::time),
                w.has("swap") ? Optional.of(w.whole("swap", 60)) : Optional.empty(),
                w.number("upgrade", 0),
                money(w, "upgrade_cost"));
    }

    private static Circuit circuit(Words w) {
        return new Circuit(
                w.at(1),
                "D",
                w.number("volts", 230),
                w.whole("phases", 1),
                w.number("breaker", 100),
                w.whole("outlets", 10),
                w.has("plug") ? OptionalDouble.of(w.number("plug", 0)) : OptionalDouble.empty(),
                w.number("continuous", 0.8),
                w.number("pf", 1),
                money(w, "install"));
    }

    private static PackType pack(Words w) {
        return new PackType(
                w.at(1),
                w.text("family", "F"),
                w.number("wh", 100),
                w.number("usable", 1),
                w.number("kg", 1),
                money(w, "price"),
                w.number("cycles", 1_000_000),
                w.number("years", 1_000_000));
    }

    private static ChargerType charger(Words w) {
        return new ChargerType(
                w.at(1),
                w.whole("bays", 1),
                w.whole("at_once", 1),
                w.number("plate", 100),
                w.number("efficiency", 1),
                w.whole("places", 1),
                w.says("portable"),
                w.number("kg", 1),
                money(w, "price"),
                money(w, "install"),
                w.number("life", 10));
    }

    private static PowerBankType bank(Words w) {
        return new PowerBankType(
                w.at(1),
                w.number("wh", 2000),
                w.number("output", 1000),
                w.number("efficiency", 1),
                w.number("recharge", 500),
                w.whole("minutes", 240),
                w.number("kg", 1),
                money(w, "price"),
                w.number("life", 10));
    }

    private Scenario scenario() {
        if (seasons.isEmpty()) {
            seasons.add(new Season("year", 52, 1));
        }
        if (depots.isEmpty()) {
            depots.add(depot(new Words("depot D")));
        }
        if (bands.isEmpty()) {
            row(new Words("price 00:00 24:00 0.20"));
        }
        return new Scenario(
                "fixture",
                Currency.getInstance("EUR"),
                ZoneId.of("UTC"),
                settings.whole("horizon", 1),
                settings.number("rate", 0),
                settings.number("quantile", 0.5),
                settings.number("spread", 0),
                settings.number("health", 1),
                settings.says("per_crew") ? PackSharing.CREW : PackSharing.DEPOT,
                Optional.ofNullable(settings.text("shortage", null)).map(BigDecimal::new),
                settings.number("growth", 0),
                SolveSettings.DEFAULT,
                seasons,
                depots,
                circuits,
                baseLoads,
                packs,
                chargers,
                times,
                units,
                banks,
                tools,
                crews,
                bases,
                stops,
                work,
                bands,
                terms,
                owned,
                new Coupling(List.of(), List.of(), conversions, List.of(), List.of(), List.of()),
                FinanceTerms.NONE);
    }
}
