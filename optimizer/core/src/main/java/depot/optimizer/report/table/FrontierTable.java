package depot.optimizer.report.table;

import depot.optimizer.dictionary.ChangeKind;
import depot.optimizer.report.table.SweepFigures.CaseRow;
import depot.optimizer.scenario.Phase;
import depot.optimizer.sweep.SweepCase.Part;
import depot.optimizer.sweep.change.Change;
import depot.optimizer.sweep.change.ChangeWords;
import depot.optimizer.sweep.spec.Sweep.Frontier;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;

/** The table of a frontier: what the least cost is for each budget, and what is spent when. */
final class FrontierTable {

    private final SweepFigures figures;
    private final String currency;
    private final int decimals;

    FrontierTable(SweepFigures figures, String currency, int decimals) {
        this.figures = figures;
        this.currency = currency;
        this.decimals = decimals;
    }

    CsvTable of(Frontier frontier, String fileName) {
        List<String> phases = figures.result().scenario().coupling().phases().stream()
                .map(Phase::id)
                .toList();
        CsvTable table = new CsvTable(SweepLayouts.frontier(fileName, phases));
        for (CaseRow each : figures.of(Part.FRONTIER, frontier.name())) {
            table.row(row -> add(row, each, phases.size()));
        }
        return table;
    }

    private void add(CsvTable.Row row, CaseRow each, int phases) {
        Change change = each.sweepCase().changes().get(0);
        row.text(ChangeWords.of(change.subject()))
                .exact(change.value())
                .text(change.kind() == ChangeKind.BUDGET ? currency : ChangeWords.unit(change.kind()));
        money(row, figure(each, found -> OptionalDouble.of(found.cost())));
        money(row, figure(each, CaseFigures::bound));
        figure(each, CaseFigures::gap).ifPresentOrElse(gap -> row.number(100 * gap, 4), row::empty);
        figures.difference(each).ifPresentOrElse(amount -> row.money(amount, decimals), row::empty);
        List<RolloutTable.Step> steps = SweepFigures.spending(each);
        for (int f = 0; f < phases; f++) {
            if (f < steps.size()) {
                row.money(steps.get(f).spent().doubleValue(), decimals);
            } else {
                row.empty();
            }
        }
        each.result().least().ifPresentOrElse(least -> row.number(least, 4), row::empty);
        row.text(each.result().carried().planOf())
                .text(each.result().carried().boundOf())
                .text(each.status())
                .text(each.note())
                .text(currency);
    }

    private static OptionalDouble figure(CaseRow each, Function<CaseFigures, OptionalDouble> figure) {
        return each.figures().map(figure).orElse(OptionalDouble.empty());
    }

    private void money(CsvTable.Row row, OptionalDouble amount) {
        amount.ifPresentOrElse(value -> row.money(value, decimals), row::empty);
    }
}
