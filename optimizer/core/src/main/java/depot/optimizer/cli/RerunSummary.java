package depot.optimizer.cli;

import depot.optimizer.report.table.EquipmentLine;
import depot.optimizer.report.table.Purchase;
import depot.optimizer.report.table.RerunFigures;
import depot.optimizer.report.table.RerunFigures.DepotFigures;
import depot.optimizer.report.text.Figures;
import depot.optimizer.rerun.DepotChange;
import depot.optimizer.rerun.DepotChange.Status;
import depot.optimizer.rerun.FleetChange;
import depot.optimizer.rerun.PlaceChange;
import depot.optimizer.rerun.RoutineChange.What;
import depot.optimizer.rerun.SharedChanges;
import depot.optimizer.scenario.Scenario;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** What a rerun changes, on a few lines. */
final class RerunSummary {

    /** Depots that are named one by one; a change of prices touches all of them. */
    private static final int NAMED = 20;

    private final RerunFigures figures;
    private final Scenario scenario;

    RerunSummary(RerunFigures figures) {
        this.figures = figures;
        scenario = figures.result().scenario();
    }

    List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add("%s: %s, planned from an earlier run"
                .formatted(scenario.name(), Figures.count(scenario.depots().size(), "depot")));
        lines.add(PlanSummary.line("Tables", tables()));
        figures.result().shared().map(this::there).ifPresent(words -> lines.add(PlanSummary.line("There", words)));
        lines.add(PlanSummary.line("Kept", Figures.count(figures.count(Status.KEPT), "depot") + " as planned before"));
        List<DepotFigures> changed = figures.depots().stream()
                .filter(depot -> depot.change().status() != Status.KEPT)
                .toList();
        changed.stream().limit(NAMED).map(this::depot).forEach(lines::add);
        if (changed.size() > NAMED) {
            lines.add(PlanSummary.line("", "and %d more".formatted(changed.size() - NAMED)));
        }
        lines.add(PlanSummary.line("To buy", purchases()));
        lines.add(PlanSummary.line(
                "Cost",
                "%s over %s against going on as before"
                        .formatted(
                                signed(figures.result().costOfChange()),
                                Figures.count(scenario.horizonYears(), "year"))));
        lines.add(PlanSummary.line("Places", places()));
        figures.result().shared().ifPresent(shared -> lines.add(PlanSummary.line("Phases", phases(shared.changes()))));
        lines.add(PlanSummary.line(
                "Routine",
                "%s and the packs of %s change, each weekday of each season by itself"
                        .formatted(
                                Figures.count(figures.routineLines(What.LOAD), "load"),
                                Figures.count(figures.routineLines(What.KIT), "trip"))));
        figures.trade()
                .ifPresent(trade -> lines.add(PlanSummary.line(
                        "Weighed",
                        "%d instead of %s of the routine change where depots were planned again, for %s"
                                .formatted(
                                        trade.linesKept(),
                                        Figures.count(trade.linesFree(), "line"),
                                        signed(trade.costMore())))));
        return lines;
    }

    private String there(SharedChanges shared) {
        return shared.kept()
                ? "the earlier plan stays as it is"
                : "what the run bought up to %s is owned; the tables with it are in the folder inputs of this run"
                        .formatted(figures.result().earlier().carriedOut());
    }

    private static String phases(List<FleetChange> changes) {
        if (changes.isEmpty()) {
            return "as they were planned";
        }
        Map<FleetChange.What, Long> byKind =
                changes.stream().collect(Collectors.groupingBy(FleetChange::what, TreeMap::new, Collectors.counting()));
        return byKind.entrySet().stream()
                        .map(kind -> "%s: %d".formatted(kind.getKey().words(), kind.getValue()))
                        .collect(Collectors.joining(", "))
                + " changed, in all phases";
    }

    private String tables() {
        if (figures.inputs().isEmpty()) {
            return "nothing has changed";
        }
        Map<String, Long> byTable = figures.inputs().stream()
                .collect(Collectors.groupingBy(change -> change.table(), TreeMap::new, Collectors.counting()));
        return byTable.entrySet().stream()
                .map(table -> "%s: %s".formatted(table.getKey(), Figures.count(table.getValue(), "change")))
                .collect(Collectors.joining(", "));
    }

    private String depot(DepotFigures depot) {
        DepotChange change = depot.change();
        String words =
                switch (change.status()) {
                    case KEPT -> "kept";
                    case PLANNED_AGAIN -> "planned again for its " + String.join(", ", change.reasons());
                    case NEW -> "new";
                    case GONE -> "gone";
                };
        return PlanSummary.line("", "%s: %s; %s".formatted(change.depot(), words, signed(change.costOfChange())));
    }

    private String purchases() {
        Map<Purchase.Kind, Integer> pieces = new TreeMap<>();
        for (DepotFigures depot : figures.depots()) {
            for (EquipmentLine line : depot.equipment()) {
                if (line.bought() > 0) {
                    pieces.merge(line.kind(), line.bought(), Integer::sum);
                }
            }
        }
        if (pieces.isEmpty()) {
            return "nothing";
        }
        String list = pieces.entrySet().stream()
                .map(kind -> Figures.count(kind.getValue(), kind.getKey().words()))
                .collect(Collectors.joining(", "));
        return "%s; %s at once".formatted(list, money(figures.atOnce().doubleValue()));
    }

    private String places() {
        int moved = 0;
        for (DepotFigures depot : figures.depots()) {
            for (PlaceChange change : depot.places()) {
                boolean moves = !change.from().isEmpty() && !change.to().isEmpty();
                moved += moves ? change.pieces() : 0;
            }
        }
        return moved == 0 ? "nothing moves" : Figures.count(moved, "piece") + " to another circuit";
    }

    private String signed(double amount) {
        return (amount > 0 ? "+" : "") + money(amount);
    }

    private String money(double amount) {
        return Figures.read(amount, Figures.decimals(scenario.currency())) + " "
                + scenario.currency().getCurrencyCode();
    }
}
