package depot.optimizer.report.table;

import static depot.optimizer.report.table.CommonColumns.CURRENCY;
import static depot.optimizer.report.table.CommonColumns.DEPOT;
import static depot.optimizer.report.table.CommonColumns.PACK_TYPE;
import static depot.optimizer.report.table.OutputColumn.amount;
import static depot.optimizer.report.table.OutputColumn.count;
import static depot.optimizer.report.table.OutputColumn.oneOf;
import static depot.optimizer.report.table.OutputColumn.time;
import static depot.optimizer.report.table.OutputColumn.words;

import depot.optimizer.report.table.Purchase.Kind;
import depot.optimizer.report.table.RerunFigures.DepotFigures;
import depot.optimizer.report.text.DayNames;
import depot.optimizer.rerun.DepotChange;
import depot.optimizer.rerun.Routine;
import depot.optimizer.rerun.RoutineChange;
import depot.optimizer.rerun.RoutineChange.What;
import depot.optimizer.rerun.input.InputChange;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** What a rerun changes: tables that its folder holds beside those of any run. */
public final class RerunTables {

    /** The table of pieces in store, which the next rerun reads. */
    public static final String STORE = "store.csv";

    private static final TableLayout DEPOTS = TableLayout.of(
            "depot_changes.csv",
            "depot of the plan, then of those that are gone",
            DEPOT,
            oneOf(
                    "status",
                    Stream.of(DepotChange.Status.values())
                            .map(DepotChange.Status::words)
                            .toList(),
                    "what becomes of the depot's plan"),
            words("reasons", "in what its part of the tables differs; blank where it does not")
                    .orBlank(),
            amount(
                    "cost_before",
                    "present cost of going on with the earlier plan on the earlier tables, all it buys being there"),
            amount("cost_after", "present cost of the plan now, all that is there counted as owned"),
            amount("cost_of_change", "the latter less the former"),
            amount("to_pay_at_once", "what has to be bought and built now, installation included"),
            count(
                    "changed_loads",
                    "",
                    "loadings of chargers that are new, gone or other ones, each season day by itself"),
            count("changed_crew_packs", "", "trips that take other packs, are new or gone, each season day by itself"),
            count(
                            "changed_lines_unweighed",
                            "",
                            "loads and trips that the cheapest plan found would change; blank where the routine has no weight")
                    .orBlank(),
            amount("cost_of_routine_kept", "present cost of the plan less that of the cheapest one; blank as above")
                    .orBlank(),
            CURRENCY);

    private static final TableLayout INPUTS = TableLayout.of(
            "input_changes.csv",
            "change of the tables since the earlier run",
            words("table", "name of the file"),
            words("row", "key of the row; blank for a setting").orBlank(),
            oneOf(
                    "change",
                    Stream.of(InputChange.Kind.values())
                            .map(InputChange.Kind::words)
                            .toList(),
                    "kind of change"),
            words("column", "column or setting; blank for a whole row").orBlank(),
            words("before", "what stood there; blank: nothing").orBlank(),
            words("after", "what stands there now; blank: nothing").orBlank());

    private static final TableLayout EQUIPMENT = TableLayout.of(
            "equipment_changes.csv",
            "depot and item that it had, has or needs",
            DEPOT,
            oneOf("kind", Stream.of(Kind.values()).map(Kind::words).toList(), "what kind of item it is"),
            words("item", "key of its type or circuit, or the amps of a bigger supply"),
            count("in_use_before_pieces", "pieces", "pieces in use in the earlier plan"),
            count("held_pieces", "pieces", "pieces that are there: listed as owned, or bought earlier"),
            count("in_use_pieces", "pieces", "pieces in use in the plan"),
            count("bought_pieces", "pieces", "those of them that have to be bought now"),
            count("store_pieces", "pieces", "pieces that are there and that the plan does not use"),
            amount("unit_price", "price of a piece without installation"),
            amount("install_cost_per_piece", "installation of a piece"),
            amount("purchase_total", "what is to be paid for it now, installation included"),
            CURRENCY);

    private static final TableLayout PLACES = TableLayout.of(
            "place_changes.csv",
            "pieces of one type that change their place",
            DEPOT,
            words("item", "key of the type of charger, load-sharing unit or power bank"),
            count("pieces", "pieces", "how many"),
            words("from_place", "circuit that they leave; blank: they were not in use")
                    .orBlank(),
            words("to_place", "circuit that they go to; blank: they are in use no more")
                    .orBlank());

    private static final TableLayout PACKS = TableLayout.of(
            "pack_changes.csv",
            "pool or crew and pack type whose number of packs changes",
            DEPOT,
            words("pool", "key of the depot or crew whose packs they are"),
            words("crew", "key of the crew that carries them; blank in the row of a pool")
                    .orBlank(),
            PACK_TYPE,
            count("packs_before", "packs", "packs in the pool, or most that the crew took on one trip"),
            count("packs_after", "packs", "the same now"));

    private static final TableLayout HANDOVERS = TableLayout.of(
            "handover_changes.csv",
            "loading of a charger or trip of a crew that changes on some days",
            DEPOT,
            words("season_days", "days on which it changes like this"),
            oneOf("what", Stream.of(What.values()).map(What::words).toList(), "what the line is about"),
            words("charger_or_crew", "name of the charger, or key of the crew"),
            time("at_time", "when the charger is loaded, or the trip leaves"),
            words("before", "packs before; blank: nothing was done").orBlank(),
            words("after", "packs now; blank: nothing is done any more").orBlank());

    private static final TableLayout IN_STORE = TableLayout.of(
            STORE,
            "owner and item bought earlier that the plan does not use; the next rerun counts on it",
            DEPOT,
            words("crew", "key of the crew whose it is; blank: the depot's").orBlank(),
            words("item", "key of its type"),
            count("pieces", "pieces", "how many"));

    private RerunTables() {}

    /** All of them. */
    public static List<CsvTable> of(RerunFigures figures) {
        List<CsvTable> tables = new ArrayList<>(List.of(
                depots(figures),
                inputs(figures),
                equipment(figures),
                places(figures),
                packs(figures),
                handovers(figures),
                store(figures)));
        figures.result().shared().map(StandingLayouts::of).ifPresent(tables::addAll);
        return List.copyOf(tables);
    }

    private static String currency(RerunFigures figures) {
        return figures.result().plan().currency();
    }

    private static CsvTable depots(RerunFigures figures) {
        CsvTable table = new CsvTable(DEPOTS);
        for (DepotFigures depot : figures.depots()) {
            DepotChange change = depot.change();
            table.row(row -> trade(
                            row.text(change.depot())
                                    .text(change.status().words())
                                    .text(String.join("; ", change.reasons()))
                                    .number(change.costBefore(), 2)
                                    .number(change.costAfter(), 2)
                                    .number(change.costOfChange(), 2)
                                    .exact(depot.atOnce())
                                    .count(Routine.count(depot.routine(), What.LOAD))
                                    .count(Routine.count(depot.routine(), What.KIT)),
                            change)
                    .text(currency(figures)));
        }
        return table;
    }

    private static CsvTable.Row trade(CsvTable.Row row, DepotChange change) {
        return change.trade()
                .map(trade -> row.count(trade.linesFree()).number(trade.costMore(), 2))
                .orElseGet(() -> row.empty().empty());
    }

    private static CsvTable inputs(RerunFigures figures) {
        CsvTable table = new CsvTable(INPUTS);
        for (InputChange change : figures.inputs()) {
            table.row(row -> row.text(change.table())
                    .text(change.row())
                    .text(change.kind().words())
                    .text(change.column())
                    .text(change.before())
                    .text(change.after()));
        }
        return table;
    }

    private static CsvTable equipment(RerunFigures figures) {
        CsvTable table = new CsvTable(EQUIPMENT);
        for (DepotFigures depot : figures.depots()) {
            for (EquipmentLine line : depot.equipment()) {
                table.row(row -> row.text(line.depot())
                        .text(line.kind().words())
                        .text(line.item())
                        .count(line.before())
                        .count(line.held())
                        .count(line.after())
                        .count(line.bought())
                        .count(line.idle())
                        .exact(line.unitPrice())
                        .exact(line.installCost())
                        .exact(line.total())
                        .text(currency(figures)));
            }
        }
        return table;
    }

    private static CsvTable places(RerunFigures figures) {
        CsvTable table = new CsvTable(PLACES);
        figures.depots().forEach(depot -> depot.places()
                .forEach(change -> table.row(row -> row.text(change.depot())
                        .text(change.item())
                        .count(change.pieces())
                        .text(change.from())
                        .text(change.to()))));
        return table;
    }

    private static CsvTable packs(RerunFigures figures) {
        CsvTable table = new CsvTable(PACKS);
        figures.depots().forEach(depot -> depot.packs()
                .forEach(change -> table.row(row -> row.text(change.depot())
                        .text(change.pool())
                        .text(change.crew())
                        .text(change.packType())
                        .count(change.before())
                        .count(change.after()))));
        return table;
    }

    private static CsvTable handovers(RerunFigures figures) {
        CsvTable table = new CsvTable(HANDOVERS);
        for (DepotFigures depot : figures.depots()) {
            for (RoutineChange change : depot.routine()) {
                table.row(row -> row.text(change.depot())
                        .text(DayNames.of(change.days()))
                        .text(change.what().words())
                        .text(change.subject())
                        .time(change.minute())
                        .text(change.before())
                        .text(change.after()));
            }
        }
        return table;
    }

    private static CsvTable store(RerunFigures figures) {
        CsvTable table = new CsvTable(IN_STORE);
        figures.result()
                .store()
                .forEach(owned -> table.row(row -> row.text(owned.depot())
                        .text(owned.crew().orElse(""))
                        .text(owned.item())
                        .count(owned.count())));
        return table;
    }
}
