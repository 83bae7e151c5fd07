package depot.optimizer.cli;

import depot.optimizer.check.Finding;
import depot.optimizer.check.Finding.Severity;
import depot.optimizer.report.text.Figures;
import depot.optimizer.scenario.TariffTerms;
import depot.optimizer.tariff.ImportRequest;
import depot.optimizer.tariff.ImportRequest.KilovoltAmperes;
import depot.optimizer.tariff.ImportRequest.Target;
import depot.optimizer.tariff.ImportedTariff;
import depot.optimizer.tariff.RecordPart;
import depot.optimizer.tariff.TariffImport;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code optimizer import-tariff}: a published utility rate as a tariff of a scenario. */
@Command(
        name = "import-tariff",
        header = "Adds a published utility rate to the tariffs of a scenario.",
        description = "%nReads a record of the open utility-rate database (OpenEI, JSON, format versions 3 to 8, all "
                + "details) and writes its prices into tariffs.csv and its standing and demand charge into tariff_terms.csv. "
                + "Weekend prices hold on Saturday and Sunday, weekday prices on the other days, holidays included. "
                + "Every other row of the two tables stays as it is. What a tariff of a scenario cannot say is refused, "
                + "all of it at once, and then nothing is written.%n",
        footer = {
            "%nPrices that differ by month need to know which months each season of the scenario has:",
            "  optimizer import-tariff rate.json --scenario inputs/mine --name day-night \\",
            "            --season summer=Jun-Sep --season winter=Oct-May",
            "%nThe record's prices are in US dollars. A scenario in another currency needs --exchange-rate."
        })
final class ImportTariffCommand implements Callable<Integer> {

    private final Terminal terminal;

    @Parameters(paramLabel = "RECORD.json", description = "The record, or the database's answer that holds it.")
    private Path record;

    @Option(
            names = "--scenario",
            paramLabel = "DIR",
            required = true,
            description = "Folder with the scenario's tables.")
    private Path scenario;

    @Option(
            names = "--name",
            paramLabel = "TARIFF",
            required = true,
            description = "What the scenario calls the tariff.")
    private String name;

    @Option(
            names = "--season",
            paramLabel = "SEASON=MONTHS",
            description = "Months of a season, such as winter=Oct-Mar or winter=Jan,Feb,Dec. Once for each season.")
    private List<String> seasons = new ArrayList<>();

    @Option(names = "--label", paramLabel = "LABEL", description = "Which record, when the file has several.")
    private String label;

    @Option(
            names = "--exchange-rate",
            paramLabel = "N",
            converter = Converters.Amount.class,
            description = "What a US dollar is worth in the scenario's currency; 1 takes the numbers as they are.")
    private BigDecimal exchangeRate;

    @Option(
            names = "--kva-as-kw",
            description = "Take a demand price per kVA as one per kW, which is right at a power factor of 1.")
    private boolean kvaAsKw;

    @Option(
            names = "--leave-out",
            paramLabel = "PART",
            split = ",",
            description =
                    "Go on without a part of the record that a tariff cannot say: sell (prices for energy fed back), "
                            + "coincident (demand at the grid's own peak), ratchet (demand billed in later months too), reactive "
                            + "(reactive power), minimum (a least amount of the bill).")
    private Set<RecordPart> leftOut = new LinkedHashSet<>();

    @Option(
            names = "--replace",
            description = "Put the rows in the place of those that a tariff of this name has in the scenario.")
    private boolean replace;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "Write the two tables into this new folder, with this tariff only; leave the scenario alone.")
    private Path out;

    ImportTariffCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws IOException {
        if (replace && out != null) {
            String hint = "--out leaves the scenario as it is, so there is nothing to replace.";
            throw new UserError(ExitStatus.BAD_INPUT, "--replace and --out exclude each other", hint);
        }
        if (out != null) {
            OutputPlace.requireNewFolder(out);
        }
        terminal.progress("Reading " + record);
        ImportedTariff imported = TariffImport.run(request());
        imported.findings().forEach(this::print);
        long errors = imported.findings().stream()
                .filter(finding -> finding.severity() == Severity.ERROR)
                .count();
        ImportedTariff.Rows rows = imported.rows()
                .orElseThrow(() -> new UserError(
                        ExitStatus.BAD_INPUT,
                        "%s; %s is no tariff of %s, and nothing was written"
                                .formatted(Figures.count(errors, "error"), record, scenario),
                        ""));
        Path folder = out == null ? scenario : out;
        WholeFiles.write(folder, rows.files());
        summary(rows, folder).forEach(terminal::result);
        return ExitStatus.PROVEN.code();
    }

    private ImportRequest request() {
        Target inPlace = replace ? Target.REPLACE : Target.ADD;
        return new ImportRequest(
                record,
                Optional.ofNullable(label),
                scenario,
                name,
                seasons,
                Optional.ofNullable(exchangeRate),
                leftOut,
                kvaAsKw ? KilovoltAmperes.AS_KILOWATTS : KilovoltAmperes.REFUSED,
                out == null ? inPlace : Target.NEW_TABLES);
    }

    private void print(Finding finding) {
        String line = ScenarioInput.describe(Path.of(""), finding);
        if (finding.severity() == Severity.ERROR) {
            terminal.problem(line);
        } else {
            terminal.note(line);
        }
    }

    private List<String> summary(ImportedTariff.Rows rows, Path folder) {
        TariffTerms terms = rows.terms();
        String standing = terms.standingPerDay().signum() == 0
                ? "no standing charge"
                : terms.standingPerDay().toPlainString() + " a day";
        String demand = terms.demandPricePerKwMonth().signum() == 0
                ? "no demand charge"
                : "%s a kW and month, averages over %d minutes"
                        .formatted(terms.demandPricePerKwMonth().toPlainString(), terms.demandMinutes());
        List<String> lines = new ArrayList<>();
        lines.add("%s: %s, %s, %s".formatted(name, Figures.count(rows.bands().size(), "price band"), standing, demand));
        if (!rows.source().isEmpty()) {
            lines.add("From  " + rows.source());
        }
        lines.add("Wrote " + String.join(", ", rows.files().keySet()) + " in " + folder);
        if (out == null) {
            lines.add("Next  optimizer check " + folder);
        }
        return lines;
    }
}
