package depot.optimizer.tariff;

import depot.optimizer.dictionary.DaysSyntax;
import depot.optimizer.dictionary.Field;
import depot.optimizer.dictionary.Table;
import depot.optimizer.dictionary.TariffTables.Tariffs;
import depot.optimizer.dictionary.TariffTables.Terms;
import depot.optimizer.dictionary.TimeSyntax;
import depot.optimizer.scenario.PriceBand;
import depot.optimizer.scenario.TariffTerms;
import depot.optimizer.tariff.ImportRequest.Target;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** The texts of the two tables with the tariff in them. */
final class TariffFiles {
    private final ImportRequest request;
    private final ScenarioTables scenario;
    private final Remarks remarks;

    TariffFiles(ImportRequest request, ScenarioTables scenario, Remarks remarks) {
        this.request = request;
        this.scenario = scenario;
        this.remarks = remarks;
    }

    /** A tariff that is to be added is not there yet. */
    void requireNew() {
        if (request.target() == Target.ADD) {
            requireNew(Tariffs.TABLE, Tariffs.TARIFF);
            requireNew(Terms.TABLE, Terms.TARIFF);
        }
    }

    private void requireNew(Table table, Field<String> key) {
        boolean there = scenario.edit(table)
                .filter(edit -> edit.has(key, request.tariff()))
                .isPresent();
        if (there) {
            String hint = "--replace puts the new rows in the place of the old ones; or choose another --name";
            String path = scenario.path(table.file());
            remarks.errorOfFile(path, 0, key.name(), request.tariff(), "the tariff is there already", hint);
        }
    }

    /** Texts of the files that change, by name; empty after telling why they cannot take the rows. */
    Optional<SortedMap<String, String>> texts(List<PriceBand> bands, TariffTerms terms) {
        SortedMap<String, String> texts = new TreeMap<>();
        List<Map<String, String>> bandRows =
                bands.stream().map(TariffFiles::cells).toList();
        add(texts, Tariffs.TABLE, Tariffs.TARIFF, bandRows);
        add(texts, Terms.TABLE, Terms.TARIFF, rows(terms));
        return remarks.anyError() ? Optional.empty() : Optional.of(texts);
    }

    private void add(SortedMap<String, String> texts, Table table, Field<String> key, List<Map<String, String>> rows) {
        Optional<TableEdit> found =
                request.target() == Target.NEW_TABLES ? Optional.of(TableEdit.fresh(table)) : scenario.edit(table);
        if (found.isEmpty()) {
            return;
        }
        TableEdit edit = found.get();
        String path = scenario.path(table.file());
        boolean there = edit.has(key, request.tariff());
        List<String> missing = edit.missing(rows);
        if (!missing.isEmpty()) {
            String columns = String.join(", ", missing);
            String hint = "add it to the header and a comma to every row; or take --out for tables of their own";
            remarks.errorOfFile(path, 1, columns, "", "the tariff needs a column that the table does not have", hint);
        }
        if (!remarks.anyError() && (there || !rows.isEmpty())) {
            texts.put(table.file(), edit.with(rows, key, request.tariff()));
        }
    }

    private static Map<String, String> cells(PriceBand band) {
        Map<String, String> cells = new LinkedHashMap<>();
        cells.put(Tariffs.TARIFF.name(), band.tariff());
        band.season().ifPresent(season -> cells.put(Tariffs.SEASON.name(), season));
        cells.put(Tariffs.DAYS.name(), DaysSyntax.text(band.days()));
        cells.put(Tariffs.FROM.name(), TimeSyntax.text(band.fromMinute()));
        cells.put(Tariffs.TO.name(), TimeSyntax.text(band.toMinute()));
        cells.put(Tariffs.PRICE_PER_KWH.name(), band.pricePerKwh().toPlainString());
        return cells;
    }

    /** No row when the tariff bills nothing but energy; no cell where its default holds. */
    private static List<Map<String, String>> rows(TariffTerms terms) {
        Map<String, String> cells = new LinkedHashMap<>();
        cells.put(Terms.TARIFF.name(), terms.tariff());
        if (terms.standingPerDay().signum() > 0) {
            cells.put(Terms.STANDING_PER_DAY.name(), terms.standingPerDay().toPlainString());
        }
        if (terms.demandPricePerKwMonth().signum() > 0) {
            cells.put(
                    Terms.DEMAND_PRICE_PER_KW_MONTH.name(),
                    terms.demandPricePerKwMonth().toPlainString());
            cells.put(Terms.DEMAND_MINUTES.name(), Integer.toString(terms.demandMinutes()));
        }
        return cells.size() > 1 ? List.of(cells) : List.of();
    }
}
