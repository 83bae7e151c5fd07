package depot.optimizer.report.page;

import depot.optimizer.report.table.EquipmentLine;
import depot.optimizer.report.table.RerunFigures;
import depot.optimizer.report.table.RerunFigures.DepotFigures;
import depot.optimizer.report.table.RerunFigures.PackChange;
import depot.optimizer.report.text.Amounts;
import depot.optimizer.report.text.Clock;
import depot.optimizer.report.text.DayNames;
import depot.optimizer.report.text.Figures;
import depot.optimizer.rerun.DepotChange;
import depot.optimizer.rerun.DepotChange.Status;
import depot.optimizer.rerun.FleetChange;
import depot.optimizer.rerun.PlaceChange;
import depot.optimizer.rerun.Routine;
import depot.optimizer.rerun.RoutineChange;
import depot.optimizer.rerun.RoutineChange.What;
import depot.optimizer.rerun.SharedChanges;
import depot.optimizer.rerun.input.InputChange;
import depot.optimizer.scenario.Owned;
import java.util.ArrayList;
import java.util.List;

/** Makes the page of a rerun. */
public final class RerunPages {

    private final RerunFigures figures;
    private final Amounts amounts;

    private RerunPages(RerunFigures figures) {
        this.figures = figures;
        amounts = new Amounts(figures.result().scenario().currency());
    }

    /** What the page shows. */
    public static RerunPage of(RerunFigures figures) {
        return new RerunPages(figures).page();
    }

    private RerunPage page() {
        return new RerunPage(
                figures.result().scenario().name(),
                "%s: what changes against the earlier run, in %s."
                        .formatted(Figures.count(figures.depots().size(), "depot"), amounts.code()),
                facts(),
                inputs(),
                depots(),
                equipment(),
                places(),
                packs(),
                routine(),
                fleet(),
                there(),
                figures.result().shared().isPresent(),
                store());
    }

    private List<Fact> facts() {
        List<Fact> facts = new ArrayList<>(List.of(
                new Fact(
                        "Changes in the tables",
                        Figures.count(figures.inputs().size(), "change"),
                        "rows added, rows removed, cells"),
                new Fact(
                        "Depots planned again",
                        "%d of %d"
                                .formatted(
                                        figures.count(Status.PLANNED_AGAIN) + figures.count(Status.NEW),
                                        figures.result().scenario().depots().size()),
                        "the others keep their plan as it is"),
                new Fact(
                        "To pay at once",
                        amounts.showWithCode(amounts.rounded(figures.atOnce())),
                        "beyond what is there already"),
                new Fact(
                        "Cost of the change",
                        signed(figures.result().costOfChange()),
                        "present cost over the horizon, against going on as before"),
                new Fact(
                        "Changed in the daily routine",
                        Figures.count(figures.routineLines(What.LOAD), "load"),
                        "and what crews take on "
                                + Figures.count(figures.routineLines(What.KIT), "trip")
                                + ", each weekday of each season by itself")));
        figures.trade()
                .ifPresent(trade -> facts.add(new Fact(
                        "Routine kept",
                        "%d instead of %d lines change".formatted(trade.linesKept(), trade.linesFree()),
                        "for " + signed(trade.costMore()) + " against the cheapest plan found")));
        return facts;
    }

    private String signed(double amount) {
        return amounts.code() + " " + TornadoDrawing.signed(amounts, amount);
    }

    private TableView inputs() {
        TableView.Builder table = TableView.of("input-table", "Changes in the tables")
                .words("Table", "Row", "Change", "Column", "Before", "Now");
        for (InputChange change : figures.inputs()) {
            table.row(
                    change.table(),
                    change.row(),
                    change.kind().words(),
                    change.column(),
                    change.before(),
                    change.after());
        }
        return table.build();
    }

    private TableView depots() {
        TableView.Builder table = TableView.of("depot-table", "Depots; costs in " + amounts.code())
                .words("Depot", "Its plan", "Because of")
                .numbers("Cost before", "Cost now", "Cost of the change", "To pay at once", "Loads changed")
                .numbers("Crews' packs changed");
        for (DepotFigures depot : figures.depots()) {
            DepotChange change = depot.change();
            table.row(
                    change.depot(),
                    change.status().words(),
                    String.join("; ", change.reasons()),
                    amounts.show(amounts.rounded(change.costBefore())),
                    amounts.show(amounts.rounded(change.costAfter())),
                    TornadoDrawing.signed(amounts, change.costOfChange()),
                    amounts.show(amounts.rounded(depot.atOnce())),
                    Integer.toString(Routine.count(depot.routine(), What.LOAD)),
                    Integer.toString(Routine.count(depot.routine(), What.KIT)));
        }
        return table.build();
    }

    private TableView equipment() {
        TableView.Builder table = TableView.of("equipment-table", "Pieces; amounts in " + amounts.code())
                .words("Depot", "Kind", "Item")
                .numbers("In use before", "There already", "In use now", "To buy", "To pay at once");
        for (DepotFigures depot : figures.depots()) {
            for (EquipmentLine line : depot.equipment()) {
                if (line.changed()) {
                    table.row(
                            line.depot(),
                            line.kind().words(),
                            line.item(),
                            Integer.toString(line.before()),
                            Integer.toString(line.held()),
                            Integer.toString(line.after()),
                            Integer.toString(line.bought()),
                            amounts.show(amounts.rounded(line.total())));
                }
            }
        }
        return table.build();
    }

    private TableView places() {
        TableView.Builder table = TableView.of("place-table", "Pieces that change their place")
                .words("Depot", "Item")
                .numbers("Pieces")
                .words("From", "To");
        for (DepotFigures depot : figures.depots()) {
            for (PlaceChange change : depot.places()) {
                table.row(
                        change.depot(),
                        change.item(),
                        Integer.toString(change.pieces()),
                        change.from().isEmpty() ? "not in use" : change.from(),
                        change.to().isEmpty() ? "out of use" : change.to());
            }
        }
        return table.build();
    }

    private TableView packs() {
        TableView.Builder table = TableView.of("pack-table", "Packs of pools, and most that crews take on a trip")
                .words("Depot", "Pool", "Crew", "Pack type")
                .numbers("Before", "Now");
        for (DepotFigures depot : figures.depots()) {
            for (PackChange change : depot.packs()) {
                table.row(
                        change.depot(),
                        change.pool(),
                        change.crew().isEmpty() ? "(the pool)" : change.crew(),
                        change.packType(),
                        Integer.toString(change.before()),
                        Integer.toString(change.after()));
            }
        }
        return table.build();
    }

    private List<TableView> routine() {
        List<TableView> tables = new ArrayList<>();
        for (DepotFigures depot : figures.depots()) {
            if (!depot.routine().isEmpty()) {
                String id = "routine-" + (tables.size() + 1);
                TableView.Builder table = TableView.of(id, depot.change().depot())
                        .words("Charger or crew", "At", "Days", "What", "Before", "Now");
                for (RoutineChange change : depot.routine()) {
                    table.row(
                            change.subject(),
                            Clock.time(change.minute()),
                            DayNames.of(change.days()),
                            change.what().words(),
                            change.before().isEmpty() ? "nothing" : change.before(),
                            change.after().isEmpty() ? "nothing" : change.after());
                }
                tables.add(table.build());
            }
        }
        return List.copyOf(tables);
    }

    private TableView fleet() {
        TableView.Builder table = TableView.of("fleet-table", "Changes against what was left to do, phase by phase")
                .words("Phase", "What", "Depot", "Of", "Before", "Now");
        figures.result().shared().ifPresent(shared -> {
            for (FleetChange change : shared.changes()) {
                table.row(
                        change.phase(),
                        change.what().words(),
                        change.depot(),
                        change.subject(),
                        change.before().isEmpty() ? "nothing" : change.before(),
                        change.after().isEmpty() ? "nothing" : change.after());
            }
        });
        return table.build();
    }

    private TableView there() {
        TableView.Builder table = TableView.of("there-table", "Bought, built or moved by earlier runs")
                .words("Depot", "Crew", "Item")
                .numbers("Pieces");
        figures.result().shared().map(SharedChanges::standing).ifPresent(standing -> {
            standing.pieces()
                    .forEach(owned -> table.row(
                            owned.depot(), owned.crew().orElse(""), owned.item(), Integer.toString(owned.count())));
            standing.circuits().forEach(circuit -> table.row("", "", "circuit " + circuit, "1"));
            standing.supplies().forEach(depot -> table.row(depot, "", "bigger supply", "1"));
            standing.begun().forEach((limit, used) -> table.row("", "", "used of " + limit, Figures.read(used, 2)));
        });
        return table.build();
    }

    private TableView store() {
        TableView.Builder table = TableView.of("store-table", "Bought earlier and not in use")
                .words("Depot", "Crew", "Item")
                .numbers("Pieces");
        for (Owned owned : figures.result().store()) {
            table.row(owned.depot(), owned.crew().orElse(""), owned.item(), Integer.toString(owned.count()));
        }
        return table.build();
    }
}
