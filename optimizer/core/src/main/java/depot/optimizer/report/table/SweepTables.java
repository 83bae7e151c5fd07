package depot.optimizer.report.table;

import depot.optimizer.dictionary.SweepFields;
import depot.optimizer.report.table.SweepFigures.CaseRow;
import depot.optimizer.report.table.SweepFigures.LossRow;
import depot.optimizer.report.table.SweepFigures.Swing;
import depot.optimizer.report.text.Figures;
import depot.optimizer.sweep.SweepCase.Part;
import depot.optimizer.sweep.change.Change;
import depot.optimizer.sweep.change.ChangeWords;
import depot.optimizer.sweep.spec.Sweep.Frontier;
import depot.optimizer.sweep.spec.Sweep.Grid;
import depot.optimizer.sweep.spec.Sweep.Line;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;

/** The tables of a sweep: sweep.csv, tornado.csv, losses.csv, and one for each line, frontier and grid. */
public final class SweepTables {

    /** The table of all cases, which every sweep has. */
    public static final String ALL = "sweep.csv";

    private final SweepFigures figures;
    private final String currency;
    private final int decimals;
    private final List<CsvTable> tables = new ArrayList<>();

    private SweepTables(SweepFigures figures) {
        this.figures = figures;
        currency = figures.result().scenario().currency().getCurrencyCode();
        decimals = Figures.decimals(figures.result().scenario().currency());
    }

    /** All tables. */
    public static List<CsvTable> of(SweepFigures figures) {
        SweepTables tables = new SweepTables(figures);
        tables.addAll();
        return List.copyOf(tables.tables);
    }

    private void addAll() {
        tables.add(all());
        if (figures.result().sweep().tornado().isPresent()) {
            tables.add(tornado());
        }
        Set<String> taken = new HashSet<>();
        for (Line line : figures.result().sweep().lines()) {
            tables.add(line(line, fileName("line", line.name(), taken)));
        }
        for (Frontier frontier : figures.result().sweep().frontiers()) {
            String file = fileName("frontier", frontier.name(), taken);
            tables.add(new FrontierTable(figures, currency, decimals).of(frontier, file));
        }
        for (Grid grid : figures.result().sweep().grids()) {
            tables.add(grid(grid, fileName("grid", grid.name(), taken)));
        }
        if (figures.result().sweep().losses().isPresent()) {
            tables.add(losses());
        }
    }

    /** Names may hold any letter; file names hold letters, digits, - and _ only, no two alike. */
    private static String fileName(String kind, String name, Set<String> taken) {
        String stem = kind + "-" + name.replaceAll("[^A-Za-z0-9_-]+", "_");
        String unique = stem;
        for (int i = 2; !taken.add(unique.toLowerCase(Locale.ROOT)); i++) {
            unique = stem + "-" + i;
        }
        return unique + ".csv";
    }

    private CsvTable all() {
        CsvTable table = new CsvTable(SweepLayouts.ALL);
        table.row(row -> {
            row.text("base plan").text("base").text("").text("").text("planned anew");
            figures(row, figures.base());
            row.text(figures.base().status())
                    .text(figures.base().gapOpen() ? "gap wider than asked for" : "")
                    .text(currency);
        });
        figures.rows().forEach(each -> add(table, each));
        figures.losses().forEach(each -> add(table, each));
        return table;
    }

    private void add(CsvTable table, CaseRow each) {
        List<Change> changes = each.sweepCase().changes();
        table.row(row -> {
            row.text(each.sweepCase().name())
                    .text(each.sweepCase().table())
                    .text(changes.stream()
                            .map(change -> ChangeWords.of(change.subject()))
                            .collect(Collectors.joining("; ")))
                    .text(changes.stream().map(ChangeWords::value).collect(Collectors.joining("; ")))
                    .text(mode(each.sweepCase().purchases()));
            each.figures().ifPresentOrElse(found -> figures(row, found), () -> blank(row, 11));
            row.text(each.status()).text(each.note()).text(currency);
        });
    }

    /** The row of what is left, and that of what is bought on top where it does not hold. */
    private void add(CsvTable table, LossRow each) {
        String name = each.result().loss().depot() + ": " + each.result().loss().words();
        table.row(row -> {
            row.text(name)
                    .text("losses")
                    .text(each.result().loss().words())
                    .text("")
                    .text(mode(SweepFields.Purchases.KEPT));
            blank(row, 6);
            each.held()
                    .ifPresentOrElse(
                            held -> row.number(held.daysMet(), 3)
                                    .number(held.days(), 3)
                                    .number(held.shortKwh(), 3),
                            () -> blank(row, 3));
            blank(row, 2);
            row.text(each.status()).text(each.whose()).text(currency);
        });
        each.cured()
                .ifPresent(cured -> table.row(row -> {
                    double more = each.result().curedCost();
                    row.text(name + ", cured")
                            .text("losses")
                            .text(each.result().loss().words())
                            .text("")
                            .text("bought on top")
                            .money(figures.base().cost() + more, decimals)
                            .money(more, decimals)
                            .number(100 * figures.share(more), 3)
                            .money(cured.atOnce().doubleValue(), decimals);
                    blank(row, 2);
                    row.number(cured.daysMet(), 3).number(cured.days(), 3).number(cured.shortKwh(), 3);
                    blank(row, 2);
                    row.text(cured.status())
                            .text(each.cure() + "; days of this depot only")
                            .text(currency);
                }));
    }

    private static String mode(SweepFields.Purchases purchases) {
        return purchases == SweepFields.Purchases.ANEW ? "planned anew" : "purchases kept";
    }

    private static void blank(CsvTable.Row row, int cells) {
        for (int i = 0; i < cells; i++) {
            row.empty();
        }
    }

    private void figures(CsvTable.Row row, CaseFigures found) {
        double difference = found.cost() - figures.base().cost();
        row.money(found.cost(), decimals)
                .money(difference, decimals)
                .number(100 * figures.share(difference), 3)
                .money(found.atOnce().doubleValue(), decimals);
        money(row, found.bound());
        found.gap().ifPresentOrElse(gap -> row.number(100 * gap, 4), row::empty);
        row.number(found.daysMet(), 3)
                .number(found.days(), 3)
                .number(found.shortKwh(), 3)
                .money(found.petrol(), decimals)
                .money(found.cost() - found.petrol(), decimals);
    }

    private void money(CsvTable.Row row, OptionalDouble amount) {
        amount.ifPresentOrElse(value -> row.money(value, decimals), row::empty);
    }

    private CsvTable tornado() {
        CsvTable table = new CsvTable(SweepLayouts.TORNADO);
        int rank = 1;
        for (Swing swing : figures.swings()) {
            int number = rank++;
            Change low = swing.low().sweepCase().changes().get(0);
            Change high = swing.high().sweepCase().changes().get(0);
            table.row(row -> {
                row.count(number)
                        .text(ChangeWords.of(low.subject()))
                        .text(ChangeWords.value(low))
                        .text(ChangeWords.value(high));
                cost(row, swing.low());
                cost(row, swing.high());
                difference(row, swing.low());
                difference(row, swing.high());
                row.money(swing.span(), decimals);
                gap(row, swing.low());
                gap(row, swing.high());
                row.text(swing.low().status()).text(swing.high().status()).text(currency);
            });
        }
        return table;
    }

    private void cost(CsvTable.Row row, CaseRow each) {
        each.figures().ifPresentOrElse(found -> row.money(found.cost(), decimals), row::empty);
    }

    private void difference(CsvTable.Row row, CaseRow each) {
        figures.difference(each).ifPresentOrElse(amount -> row.money(amount, decimals), row::empty);
    }

    private static void gap(CsvTable.Row row, CaseRow each) {
        each.figures()
                .map(CaseFigures::gap)
                .orElse(OptionalDouble.empty())
                .ifPresentOrElse(gap -> row.number(100 * gap, 4), row::empty);
    }

    private CsvTable line(Line line, String fileName) {
        CsvTable table = new CsvTable(SweepLayouts.line(fileName));
        for (CaseRow each : figures.of(Part.LINE, line.name())) {
            Change change = each.sweepCase().changes().get(0);
            table.row(row -> {
                row.text(ChangeWords.of(change.subject())).exact(change.value()).text(ChangeWords.unit(change.kind()));
                cost(row, each);
                money(row, each.figures().map(CaseFigures::bound).orElse(OptionalDouble.empty()));
                gap(row, each);
                difference(row, each);
                each.figures()
                        .ifPresentOrElse(
                                found -> row.money(found.atOnce().doubleValue(), decimals)
                                        .number(found.shortKwh(), 3),
                                () -> blank(row, 2));
                row.text(each.status()).text(each.note()).text(currency);
            });
        }
        return table;
    }

    /** Present cost for each pair, a row for each value of the first change and a column for each of the second. */
    private CsvTable grid(Grid grid, String fileName) {
        String corner = "%s \\ %s (present_cost, %s)"
                .formatted(
                        ChangeWords.of(grid.rows().subject()),
                        ChangeWords.of(grid.columns().subject()),
                        currency);
        List<String> across = grid.columns().values().stream()
                .map(value -> ChangeWords.value(grid.columns().subject().to(value)))
                .toList();
        CsvTable table = new CsvTable(SweepLayouts.grid(fileName, corner, across));
        List<CaseRow> cells = figures.of(Part.GRID, grid.name());
        int width = grid.columns().values().size();
        for (int r = 0; r < grid.rows().values().size(); r++) {
            List<CaseRow> inRow = cells.subList(r * width, (r + 1) * width);
            Change down = grid.rows().subject().to(grid.rows().values().get(r));
            table.row(row -> {
                row.text(ChangeWords.value(down));
                inRow.forEach(cell -> cost(row, cell));
            });
        }
        return table;
    }

    private CsvTable losses() {
        CsvTable table = new CsvTable(SweepLayouts.LOSSES);
        for (LossRow each : figures.losses()) {
            table.row(row -> {
                row.text(each.result().loss().phase())
                        .text(each.result().loss().depot())
                        .text(each.result().loss().lost())
                        .yesNo(each.result().holds());
                each.held()
                        .ifPresentOrElse(
                                held -> row.number(held.daysMet(), 3)
                                        .number(held.days(), 3)
                                        .number(held.shortKwh(), 3),
                                () -> blank(row, 3));
                row.text(each.status()).text(each.cure());
                each.cured()
                        .ifPresentOrElse(
                                cured -> row.money(cured.atOnce().doubleValue(), decimals)
                                        .money(each.result().curedCost(), decimals),
                                () -> blank(row, 2));
                row.text(currency);
            });
        }
        return table;
    }
}
