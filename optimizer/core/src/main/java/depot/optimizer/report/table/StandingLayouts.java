package depot.optimizer.report.table;

import static depot.optimizer.report.table.CommonColumns.PHASE;
import static depot.optimizer.report.table.OutputColumn.count;
import static depot.optimizer.report.table.OutputColumn.number;
import static depot.optimizer.report.table.OutputColumn.oneOf;
import static depot.optimizer.report.table.OutputColumn.words;

import depot.optimizer.rerun.FleetChange;
import depot.optimizer.rerun.SharedChanges;
import depot.optimizer.rerun.Standing;
import depot.optimizer.scenario.Owned;
import java.util.List;
import java.util.stream.Stream;

/** Tables that the rerun of a fleet has whose depots share limits, or that has several phases. */
public final class StandingLayouts {

    /** The table of what is there, which the next rerun reads. */
    public static final String THERE = "there.csv";

    /** The table of what has been used in the phase that has begun, which the next rerun reads. */
    public static final String BEGUN = "begun.csv";

    /** Row of a circuit that was built. */
    public static final String CIRCUIT = "circuit";

    /** Row of a bigger supply. */
    public static final String SUPPLY = "supply";

    private static final String PIECES = "pieces";

    private static final TableLayout CHANGES = TableLayout.of(
            "fleet_changes.csv",
            "thing that changes in a phase, against what was left to do of the earlier plan",
            PHASE,
            oneOf(
                    "what",
                    Stream.of(FleetChange.What.values())
                            .map(FleetChange.What::words)
                            .toList(),
                    "what the row is about"),
            words("depot", "depot that it is about; of a crew its home"),
            words("subject", "item, circuit, crew, or crew and pack type"),
            words(
                            "before",
                            "in the earlier plan: pieces, packs on all days of a week of each season, or where a crew works; blank: nothing")
                    .orBlank(),
            words("after", "the same now").orBlank());

    private static final TableLayout ON_SITE = TableLayout.of(
            THERE,
            "owner and item that earlier runs bought or moved; inputs/ lists it as there, and the next rerun counts on it",
            words("depot", "key of the depot; blank for a circuit").orBlank(),
            oneOf("what", List.of(PIECES, CIRCUIT, SUPPLY), "pieces, a circuit that was built, or the bigger supply"),
            words("crew", "key of the crew whose it is; blank: the depot's").orBlank(),
            words("item", "key of its type or circuit; blank for a supply").orBlank(),
            count("pieces", "pieces", "how many; below 0 where owned pieces have gone to another depot"));

    private static final TableLayout USED = TableLayout.of(
            BEGUN,
            "budget or limit of delivery of the phase that has begun; inputs/ lists what is left of it",
            words("limit", "budget, region budget or delivery, with its phase, and region or item"),
            number("used", "", "money spent, or pieces bought, by earlier runs"));

    private StandingLayouts() {}

    /** All of them. */
    static List<CsvTable> of(SharedChanges shared) {
        CsvTable changes = new CsvTable(CHANGES);
        for (FleetChange change : shared.changes()) {
            changes.row(row -> row.text(change.phase())
                    .text(change.what().words())
                    .text(change.depot())
                    .text(change.subject())
                    .text(change.before())
                    .text(change.after()));
        }
        return shared.standing().given()
                ? List.of(changes, there(shared.standing()), begun(shared.standing()))
                : List.of(changes);
    }

    private static CsvTable there(Standing standing) {
        CsvTable table = new CsvTable(ON_SITE);
        for (Owned owned : standing.pieces()) {
            table.row(row -> row.text(owned.depot())
                    .text(PIECES)
                    .text(owned.crew().orElse(""))
                    .text(owned.item())
                    .count(owned.count()));
        }
        standing.circuits()
                .forEach(circuit -> table.row(
                        row -> row.text("").text(CIRCUIT).text("").text(circuit).count(1)));
        standing.supplies()
                .forEach(depot -> table.row(
                        row -> row.text(depot).text(SUPPLY).text("").text("").count(1)));
        return table;
    }

    private static CsvTable begun(Standing standing) {
        CsvTable table = new CsvTable(USED);
        standing.begun()
                .forEach((limit, used) -> table.row(row -> row.text(limit).number(used, 2)));
        return table;
    }
}
