package depot.optimizer.tariff;

import depot.optimizer.dictionary.BadValueException;
import depot.optimizer.dictionary.Field;
import depot.optimizer.dictionary.TariffTables.Tariffs;
import depot.optimizer.dictionary.TariffTables.Terms;
import depot.optimizer.read.JsonValue;
import depot.optimizer.scenario.PriceBand;
import depot.optimizer.scenario.TariffTerms;
import depot.optimizer.tariff.ImportedTariff.Rows;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;

/** Turns a record of the open format into a tariff of a scenario. */
public final class TariffImport {
    private static final String CURRENCY = "USD";

    private final ImportRequest request;
    private final Remarks remarks;

    private TariffImport(ImportRequest request) {
        this.request = request;
        this.remarks = new Remarks(request.record().toString());
    }

    /** The tariff and the new tables, or everything that is in its way; bad input never raises an exception. */
    public static ImportedTariff run(ImportRequest request) {
        TariffImport run = new TariffImport(request);
        Optional<Rows> rows = run.rows();
        return new ImportedTariff(run.remarks.all(), run.remarks.anyError() ? Optional.empty() : rows);
    }

    private Optional<Rows> rows() {
        boolean named = isName(request.tariff());
        Optional<ScenarioTables> scenario = ScenarioTables.read(request.scenario(), remarks);
        scenario.ifPresent(tables -> new TariffFiles(request, tables, remarks).requireNew());
        Optional<BigDecimal> perDollar = scenario.flatMap(this::perDollar);
        Optional<SeasonMonths> months =
                scenario.flatMap(tables -> SeasonMonths.parse(request.seasonMonths(), tables.seasons(), remarks));
        Optional<JsonValue> record = RecordChoice.read(request.record(), request.label(), remarks);
        if (record.isEmpty()) {
            return Optional.empty();
        }
        // Without a scenario's months the whole year is looked at, so that the record's own faults are told all the
        // same.
        SeasonMonths known = months.orElse(new SeasonMonths(Map.of()));
        RateFields fields = new RateFields(record.get(), remarks);
        RecordPart.check(fields, request.leftOut());
        Optional<EnergyPrices> prices = EnergyPrices.read(fields, known.used());
        Optional<DemandCharge> demand = DemandReader.read(fields, known.used(), request.kilovoltAmperes());
        Optional<BigDecimal> standing = StandingCharge.perDay(fields);
        if (scenario.isEmpty() || months.isEmpty() || prices.isEmpty()) {
            return Optional.empty();
        }
        List<String> seasons = scenario.get().seasons();
        BigDecimal rate = perDollar.orElse(BigDecimal.ONE);
        Optional<List<PriceBand>> bands = BandMaker.bands(request.tariff(), prices.get(), known, seasons, rate, fields);
        if (!named || perDollar.isEmpty() || bands.isEmpty() || demand.isEmpty() || standing.isEmpty()) {
            return Optional.empty();
        }
        TariffTerms terms = new TariffTerms(
                request.tariff(),
                Amounts.plain(standing.get().multiply(rate)),
                Amounts.plain(demand.get().usdPerKwMonth().multiply(rate)),
                demand.get().minutes());
        requireFit(bands.get(), terms, fields);
        return files(scenario.get(), bands.get(), terms)
                .map(files -> new Rows(source(fields), bands.get(), terms, files));
    }

    private Optional<SortedMap<String, String>> files(
            ScenarioTables scenario, List<PriceBand> bands, TariffTerms terms) {
        return new TariffFiles(request, scenario, remarks).texts(bands, terms);
    }

    /** Records of this database have their prices in US dollars. */
    private Optional<BigDecimal> perDollar(ScenarioTables scenario) {
        String currency = scenario.currency();
        boolean dollars = currency.equals(CURRENCY);
        if (dollars
                && request.perDollar()
                        .filter(rate -> rate.compareTo(BigDecimal.ONE) != 0)
                        .isPresent()) {
            String value = request.perDollar().get().toPlainString();
            remarks.errorOfOption(
                    "--exchange-rate", value, "the scenario counts in US dollars", "leave the option out");
            return Optional.empty();
        }
        if (!dollars && request.perDollar().isEmpty()) {
            remarks.errorOfFile(
                    scenario.path("scenario.json"),
                    0,
                    "currency",
                    currency,
                    "the record's prices are in US dollars, the scenario's in another currency",
                    "--exchange-rate says what a US dollar is worth in it; 1 takes the numbers as they are");
            return Optional.empty();
        }
        return Optional.of(request.perDollar().orElse(BigDecimal.ONE));
    }

    private boolean isName(String tariff) {
        try {
            Tariffs.TARIFF.type().parse(tariff);
            return true;
        } catch (BadValueException bad) {
            remarks.errorOfOption("--name", tariff, bad.getMessage(), bad.hint());
            return false;
        }
    }

    private void requireFit(List<PriceBand> bands, TariffTerms terms, RateFields fields) {
        bands.stream()
                .map(PriceBand::pricePerKwh)
                .distinct()
                .forEach(price -> requireFit(Tariffs.PRICE_PER_KWH, price, EnergyPrices.STRUCTURE, fields));
        requireFit(Terms.STANDING_PER_DAY, terms.standingPerDay(), StandingCharge.FIRST_METER, fields);
        requireFit(Terms.DEMAND_PRICE_PER_KW_MONTH, terms.demandPricePerKwMonth(), DemandReader.FLAT, fields);
    }

    /** What the checker would say to a cell, said before it is written. */
    private void requireFit(Field<BigDecimal> column, BigDecimal amount, String source, RateFields fields) {
        try {
            column.type().parse(amount.toPlainString());
        } catch (BadValueException bad) {
            String message = "%s is %s for %s".formatted(amount.toPlainString(), bad.getMessage(), column.name());
            remarks.error(source, fields.line(source), message, bad.hint());
        }
    }

    private static String source(RateFields fields) {
        String utility = fields.text("utility").orElse("");
        String name = fields.text("name").orElse("");
        return utility.isEmpty() || name.isEmpty() ? utility + name : utility + ": " + name;
    }
}
