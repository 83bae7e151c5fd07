package depot.optimizer.sweep;

import depot.optimizer.dictionary.SweepFields.Purchases;
import depot.optimizer.sweep.SweepCase.Part;
import depot.optimizer.sweep.change.Change;
import depot.optimizer.sweep.change.ChangeWords;
import depot.optimizer.sweep.spec.Sweep;
import depot.optimizer.sweep.spec.Sweep.Axis;
import depot.optimizer.sweep.spec.Sweep.Grid;
import depot.optimizer.sweep.spec.Sweep.Line;
import depot.optimizer.sweep.spec.Sweep.NamedCase;
import depot.optimizer.sweep.spec.Sweep.Range;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** Lists the cases that a sweep asks for, in the order of its file: tornado (low, high), lines, frontiers, grids (row by row), named cases. */
public final class CaseList {
    private CaseList() {}

    /** All cases; losses are not among them. */
    public static List<SweepCase> of(Sweep sweep) {
        List<SweepCase> cases = new ArrayList<>();
        sweep.tornado().ifPresent(tornado -> {
            for (Range range : tornado.ranges()) {
                for (BigDecimal end : List.of(range.low(), range.high())) {
                    Change change = range.subject().to(end);
                    cases.add(new SweepCase(
                            Part.TORNADO, "tornado", ChangeWords.of(change), tornado.purchases(), List.of(change)));
                }
            }
        });
        sweep.lines().forEach(line -> cases.addAll(along(Part.LINE, line)));
        sweep.frontiers()
                .forEach(
                        each -> cases.addAll(along(Part.FRONTIER, new Line(each.name(), Purchases.ANEW, each.axis()))));
        sweep.grids().forEach(grid -> cases.addAll(of(grid)));
        for (NamedCase named : sweep.cases()) {
            cases.add(new SweepCase(Part.CASE, "cases", named.name(), named.purchases(), named.changes()));
        }
        return List.copyOf(cases);
    }

    private static List<SweepCase> along(Part part, Line line) {
        Axis axis = line.axis();
        return axis.values().stream()
                .map(value -> axis.subject().to(value))
                .map(change -> new SweepCase(
                        part,
                        line.name(),
                        line.name() + " " + ChangeWords.value(change),
                        line.purchases(),
                        List.of(change)))
                .toList();
    }

    private static List<SweepCase> of(Grid grid) {
        List<SweepCase> cases = new ArrayList<>();
        for (BigDecimal row : grid.rows().values()) {
            for (BigDecimal column : grid.columns().values()) {
                Change down = grid.rows().subject().to(row);
                Change across = grid.columns().subject().to(column);
                String name = "%s %s, %s".formatted(grid.name(), ChangeWords.value(down), ChangeWords.value(across));
                cases.add(new SweepCase(Part.GRID, grid.name(), name, grid.purchases(), List.of(down, across)));
            }
        }
        return cases;
    }
}
