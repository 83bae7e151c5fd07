package depot.optimizer.dictionary;

import java.util.List;

/** The page about the file of a sweep, in Markdown. */
final class SweepsPage {
    private static final String OPENING = """
            # Sweeps: what if?

            <!-- Made from the data dictionary (package depot.optimizer.dictionary). Change the declarations, not this page. -->

            `bin/optimizer sweep SCENARIO SWEEP.json` plans the scenario once, the base plan, and then many times with something
            changed. It writes tables and a page that show what each change does to the cost. A sweep is one JSON file, best kept
            beside the scenario's tables; `inputs/starter/sweep.json` is one to begin with. Editors that know JSON Schema (2020-12)
            help when it begins with `"$schema": "../sweep.schema.json"`.

            ```
            {
              "$schema": "../sweep.schema.json",
              "name": "what-if",
              "tornado": {"ranges": [{"change": "item_price", "of": "pack", "low": 0.8, "high": 1.2}]},
              "lines": [{"name": "quantile", "change": "demand_quantile", "values": [0.8, 0.9, 0.95]}],
              "frontiers": [{"name": "money", "change": "budget", "values": [8000, 12000, 16000]}],
              "cases": [{"name": "cold and old", "changes": [
                {"change": "season_capacity", "of": "winter", "value": 0.7},
                {"change": "pack_health", "value": 0.8}]}],
              "losses": {"charger_out": "yes", "one_pack_in": 10, "late_minutes": 30}
            }
            ```

            ## How a case is planned

            - **Purchases anew**: the changed scenario is planned like any other, with a bound, and replayed. Depots that the change
              does not touch are taken from the base plan.
            - **Purchases kept**: what the base plan buys stays where it is, at the changed prices. Only the days are planned anew,
              and replayed. Where that is not enough, energy stays uncovered: it is paid at the price of shortage and reported. Where
              shortage is forbidden it has no price: the tables say how much is short, and their costs leave it out.
            - Every changed scenario goes through the same checks as tables do. A change that breaks one of them is an error of the
              sweep's file.
            - Found plans are within a gap of the best, so that a harder case may come out cheaper than an easier one. Where the plan
              of another case serves a case as well, and its replay says so, the cheapest of them is used and the table says whose.
            - The gap asked for is that of all depots together, as in a plan.
            - Prices of items, building work, energy, demand and petrol, and of all money together: a case between two others that
              differ from it in one such price only has the cheaper of their plans at its own price, and no plan costs less there
              than the straight line between their two bounds. Where that is within the gap, nothing is searched, and the table says
              so; where not, the depots that are widest open are.

            ## Depots that share budgets, prices or crews, and phases

            Where a table of the scenario joins depots or phases (phases.csv, region_budgets.csv, price_tiers.csv, delivery_limits.csv,
            moves.csv, crew_bases.csv), or crews charge packs at other depots, a case is planned as a whole by the prices that
            `optimizer/docs/fleet.md` describes, and its bound is the fleet's. Purchases kept are those of all phases; each visit stays
            for as many packs as in the base plan, and a host that no plan lets do that gives its guests nothing. A plan serves another
            case when it keeps that case's limits at its prices, as a replay says. The search for a case begins with
            the prices and plans that the search for the base plan has left.

            What fails (`losses`) is asked of each depot in each phase by itself, with the crews that work from it in that phase, and
            once where a phase has what the one before it has. What is bought on top is reckoned from the beginning of the phase to the
            end of the horizon, at the items' own prices; budgets and limits of delivery are not looked at, since what is broken has to
            be replaced.

            Where crews charge packs at other depots, a loss at one depot is one for its guests and their homes as well:

            - The days of the depot are first planned with as many packs on each visit as in the base plan. If they hold, nothing
              changes for any other depot.
            - If not, its guests get as little as their homes can do without, found by lowering the packs of one crew, pack type and
              level after the other, and the days of these homes are planned anew with what they have. If all of them hold, the base
              plan holds, and the table names the homes.
            - If not, the table shows the depot's own shortage with guests served as planned; where no plan does that, it gives them
              nothing, and the figures are those of the depot and of the homes together.
            - What is bought on top is bought at the depot of the loss, and as many packs are exchanged on each visit as in the base
              plan, so that all other depots go on as they were. Buying at a home instead is not looked at; it may cost less.
            - Each answer is replayed with what all depots do on visits. With `late_minutes` only the depot's own crews are late.

            Growth in crews is `crew_copies` (more crews like a given one) or `work_hours` (the same crews work their tools longer).
            """;

    private SweepsPage() {}

    static String text() {
        StringBuilder page = new StringBuilder(OPENING);
        part(page, "The file", "All parts are optional; there is at least one of them.", SweepFields.ROOT);
        page.append("| `tornado` | object | - | one at a time: how far each change moves the cost |\n");
        page.append("| `lines` | list | - | cost along one change, such as quantile against cost |\n");
        page.append("| `frontiers` | list | - | least cost for each of several budgets |\n");
        page.append("| `grids` | list | - | cost for every pair of values of two changes |\n");
        page.append("| `cases` | list | - | named cases, each with a list of changes |\n");
        page.append("| `losses` | object | - | does the base plan hold when something fails? |\n");
        part(page, "tornado", "One range or more.", List.of(SweepFields.PURCHASES));
        page.append("| `ranges` | list | required | objects with the members below |\n");
        rows(page, SweepFields.RANGES);
        part(page, "lines", "", List.of(SweepFields.PART_NAME, SweepFields.PURCHASES));
        rows(page, List.of(SweepFields.CHANGE, SweepFields.OF, SweepFields.STEP));
        part(page, "frontiers", """
                The least cost for each budget, all planned anew. `budget` gives the fleet's budget of a phase as amounts; a scenario
                without phases.csv gets one for all that is bought now. `all_budgets` multiplies every budget that there is. A plan for a
                smaller budget is a plan for a larger one, and no plan for a smaller one costs less than the bound of a larger one: where
                that is better than what was found, it is used and the table says whose it is. So cost and bound never rise with the
                budget. Where no plan fits, the table says so, and how little would do.""", List.of(SweepFields.PART_NAME));
        rows(page, List.of(SweepFields.CHANGE, SweepFields.OF, SweepFields.STEP));
        part(page, "grids", "", List.of(SweepFields.PART_NAME, SweepFields.PURCHASES));
        page.append("| `rows`, `columns` | object | required | each an object with the members below |\n");
        rows(page, List.of(SweepFields.CHANGE, SweepFields.OF, SweepFields.STEP));
        part(page, "cases", "", List.of(SweepFields.PART_NAME, SweepFields.PURCHASES));
        page.append("| `changes` | list | required | objects with the members below; no two change the same thing |\n");
        rows(page, SweepFields.CHANGES);
        part(page, "losses", """
                Each row of the result asks two things. Does the base plan still hold: what it bought less what is lost, the days
                planned anew and replayed? If not, what has to be bought on top, at least cost, so that it holds with the loss
                present? What was bought already is then owned, and may be placed anew.""", SweepFields.LOSSES);
        kinds(page);
        return page.toString();
    }

    private static void part(StringBuilder page, String title, String words, List<Field<?>> fields) {
        page.append("\n## ").append(title).append('\n');
        if (!words.isEmpty()) {
            page.append('\n').append(words.strip()).append('\n');
        }
        page.append("\n| member | type | if left out | meaning |\n|---|---|---|---|\n");
        rows(page, fields);
    }

    private static void rows(StringBuilder page, List<Field<?>> fields) {
        for (Field<?> field : fields) {
            page.append("| `")
                    .append(field.name())
                    .append("` | ")
                    .append(type(field))
                    .append(" | ")
                    .append(
                            field.presence() == Presence.REQUIRED
                                    ? "required"
                                    : field.defaultText().orElse("-"))
                    .append(" | ")
                    .append(field.meaning())
                    .append(" |\n");
        }
    }

    private static String type(Field<?> field) {
        if (field == SweepFields.STEP) {
            return "list of numbers";
        }
        return switch (field.type().kind()) {
            case INTEGER ->
                field.type()
                        .range()
                        .map(range -> "whole number, " + range.words())
                        .orElse("whole number");
            case MONEY -> "number";
            case KEY -> "key";
            case CHOICE, YES_NO ->
                field == SweepFields.CHANGE
                        ? "kind of change"
                        : String.join(" or ", field.type().choices());
            default -> "text";
        };
    }

    private static void kinds(StringBuilder page) {
        page.append(
                "\n## Kinds of change\n\n| `change` | `of` | value | unit | range | meaning |\n|---|---|---|---|---|---|\n");
        for (ChangeKind kind : ChangeKind.values()) {
            page.append("| `")
                    .append(kind.word())
                    .append("` | ")
                    .append(kind.about().words())
                    .append(" | ")
                    .append(kind.form().words())
                    .append(" | ")
                    .append(kind.unit())
                    .append(" | ")
                    .append(kind.range().words())
                    .append(" | ")
                    .append(kind.meaning())
                    .append(" |\n");
        }
    }
}
