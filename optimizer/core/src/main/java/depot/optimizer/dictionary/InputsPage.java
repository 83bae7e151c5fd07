package depot.optimizer.dictionary;

import java.util.List;
import java.util.stream.Collectors;

/** The page about a scenario's files, in Markdown. */
final class InputsPage {
    private static final String OPENING = """
            # Inputs: the files of a scenario

            <!-- Made from the data dictionary (package depot.optimizer.dictionary). Change the declarations, not this page. -->

            A scenario is one folder with `scenario.json` and the CSV tables below. `bin/optimizer check FOLDER` reads all of it,
            prints everything that is wrong at once (file, line, column, value and a hint), and writes nothing.

            ## How to start

            1. Make a folder and in it `scenario.json` with the required settings.
            2. List the seasons, depots and circuits; then packs, chargers and charge times; then tools and crews.
            3. Write one ordinary day of one crew into `stops.csv` and `work.csv`, and one price into `tariffs.csv`
               (`days` Mon-Sun, `from` 00:00, `to` 24:00).
            4. Run `check`, put right what it finds, and go on with the other days, crews and depots.
            5. Add optional tables and columns as they matter: base load, sharing units, power banks, what is owned already,
               phases and budgets, quantity prices.

            Editors that know JSON Schema (2020-12) help with `scenario.json` when it begins with
            `"$schema": "../scenario.schema.json"`. `tables.json` describes the CSV tables for general tools, in the Table Schema of
            the [Data Package standard 2.0](https://datapackage.org/standard/table-schema/). What a sweep can change is in
            [SWEEPS.md](SWEEPS.md).

            ## How files are written

            - CSV as in RFC 4180: UTF-8, commas, a header, double quotes around cells with commas or quotes. A byte-order mark,
              either line end, blank lines and blanks around a cell do no harm.
            - Columns come in any order. Optional columns may be missing, optional cells blank. An unknown column is an error, an
              unknown CSV file is noticed and not used.
            - Numbers have a decimal point and no thousands separators: `1234.5`. Amounts are in the scenario's currency.
            - Keys begin with a letter or digit and hold letters, digits, blanks, `.`, `_` and `-`, up to 64 characters. Upper and
              lower case differ. Packs, chargers, sharing units and power banks all have different keys.
            - Days are `Mon`, a range `Mon-Fri`, or a list `Mon;Wed;Sat` (with commas: in quotes).
            - Times are `HH:MM`. A span of the day ends later than it begins: split one that goes over midnight. In `stops.csv`
              times go on past `24:00` up to `30:00`.
            - A crew's day begins and ends at its own depot. `arrive` is blank on its first stop, `leave` on its last. Every crew is
              back before the earliest departure of any day from its depot, 24 hours on.
            - The routes of a crew that could work from other depots (`crew_bases.csv`) are written once, with its own depot in
              `crews.csv`: there it stands for "at its base, wherever that is". The times hold for every base.
            """;

    private InputsPage() {}

    static String text() {
        StringBuilder page = new StringBuilder(OPENING);
        page.append("\n## scenario.json\n\nA name with a dot is a member of the object before the dot: `solve.gap` is")
                .append(" `\"solve\": {\"gap\": 0.005}`.\n");
        fields(page, "setting", Settings.TABLE.fields());
        for (Table table : Dictionary.TABLES) {
            page.append("\n## ").append(table.file());
            page.append(table.presence() == Presence.OPTIONAL ? " (optional)\n" : "\n");
            page.append("\nOne row per ").append(table.rowPer()).append('.');
            if (!table.key().isEmpty()) {
                page.append(" Key: ").append(names(table.key())).append('.');
            }
            page.append('\n');
            fields(page, "column", table.fields());
        }
        return page.toString();
    }

    private static void fields(StringBuilder page, String noun, List<Field<?>> fields) {
        page.append("\n| ").append(noun).append(" | type | unit | range | if blank | meaning |\n");
        page.append("|---|---|---|---|---|---|\n");
        for (Field<?> field : fields) {
            page.append("| `")
                    .append(field.name())
                    .append("` | ")
                    .append(typeWords(field.type()))
                    .append(" | ")
                    .append(field.unit())
                    .append(" | ")
                    .append(rangeWords(field.type()))
                    .append(" | ")
                    .append(blankWords(field))
                    .append(" | ")
                    .append(field.meaning())
                    .append(" |\n");
        }
    }

    private static String typeWords(ValueType<?> type) {
        return switch (type.kind()) {
            case TEXT -> "text";
            case KEY -> "key";
            case REFERENCE ->
                type.target()
                        .map(target -> "`" + target.name() + "` of "
                                + Dictionary.tableOf(target).file())
                        .orElseThrow();
            case INTEGER -> "whole number";
            case DECIMAL -> "number";
            case MONEY -> "amount";
            case MONEY_OR_WORD -> "amount or word";
            case YES_NO -> "yes or no";
            case CHOICE -> "word";
            case DAYS -> "days";
            case TIME -> "time";
            case CURRENCY -> "currency";
            case TIME_ZONE -> "time zone";
        };
    }

    private static String rangeWords(ValueType<?> type) {
        String range = type.range().map(Range::words).orElse("");
        String choices = String.join(", ", type.choices());
        if (type.kind() == ValueType.Kind.TIME) {
            return "00:00 to " + TimeSyntax.text(type.limitMinutes());
        }
        return range.isEmpty() || choices.isEmpty() ? range + choices : range + ", or " + choices;
    }

    private static String blankWords(Field<?> field) {
        return field.presence() == Presence.REQUIRED
                ? "required"
                : field.defaultText().orElse("-");
    }

    private static String names(List<Field<?>> fields) {
        return fields.stream().map(field -> "`" + field.name() + "`").collect(Collectors.joining(", "));
    }
}
