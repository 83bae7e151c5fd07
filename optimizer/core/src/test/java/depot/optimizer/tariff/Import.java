package depot.optimizer.tariff;

import depot.optimizer.check.Finding;
import depot.optimizer.check.Finding.Severity;
import depot.optimizer.fixture.ScenarioText;
import depot.optimizer.tariff.ImportRequest.KilovoltAmperes;
import depot.optimizer.tariff.ImportRequest.Target;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** An import that is put together bit by bit; the tariff is called "new" and the scenario counts in US dollars. */
final class Import {
    private final Path folder;
    private RateText record = RateText.flat();
    private ScenarioText scenario = ScenarioText.tiny().replace("scenario.json", "EUR", "USD");
    private final List<String> seasons = new ArrayList<>();
    private final Set<RecordPart> leftOut = EnumSet.noneOf(RecordPart.class);
    private KilovoltAmperes kilovoltAmperes = KilovoltAmperes.REFUSED;
    private Target target = Target.ADD;
    private Optional<BigDecimal> perDollar = Optional.empty();
    private String name = "new";

    Import(Path folder) {
        this.folder = folder;
    }

    Import record(RateText text) {
        record = text;
        return this;
    }

    Import scenario(ScenarioText text) {
        scenario = text;
        return this;
    }

    Import seasons(String... texts) {
        seasons.addAll(List.of(texts));
        return this;
    }

    Import without(RecordPart part) {
        leftOut.add(part);
        return this;
    }

    Import kvaAsKw() {
        kilovoltAmperes = KilovoltAmperes.AS_KILOWATTS;
        return this;
    }

    Import target(Target where) {
        target = where;
        return this;
    }

    Import perDollar(String rate) {
        perDollar = Optional.of(new BigDecimal(rate));
        return this;
    }

    Import name(String tariff) {
        name = tariff;
        return this;
    }

    ImportedTariff run() {
        return TariffImport.run(new ImportRequest(
                record.write(folder.resolve("rate.json")),
                Optional.empty(),
                scenario.write(fresh()),
                name,
                seasons,
                perDollar,
                leftOut,
                kilovoltAmperes,
                target));
    }

    private Path fresh() {
        try {
            return Files.createTempDirectory(folder, "scenario");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What came of an import that has to go well. */
    ImportedTariff.Rows rows() {
        ImportedTariff imported = run();
        return imported.rows().orElseThrow(() -> new AssertionError(imported.findings()));
    }

    /** Errors as "line column: message", without the files. */
    List<String> errors() {
        return findings(Severity.ERROR);
    }

    List<String> notices() {
        return findings(Severity.NOTICE);
    }

    private List<String> findings(Severity severity) {
        ImportedTariff imported = run();
        if (imported.rows().isPresent()
                != imported.findings().stream().noneMatch(finding -> finding.severity() == Severity.ERROR)) {
            throw new AssertionError("rows and errors contradict each other: " + imported);
        }
        return imported.findings().stream()
                .filter(finding -> finding.severity() == severity)
                .map(Import::line)
                .toList();
    }

    private static String line(Finding finding) {
        return finding.line() + " " + finding.column() + ": " + finding.message();
    }
}
