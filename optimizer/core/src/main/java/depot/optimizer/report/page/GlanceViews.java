package depot.optimizer.report.page;

import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.PackStock;
import depot.optimizer.report.table.Purchases;
import depot.optimizer.report.text.Figures;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

/** The whole fleet in one table: what there is at each depot, and what is bought for it. */
final class GlanceViews {

    /** Columns of what is there: crews, packs, bays. */
    private static final int THERE = 3;

    private final PageMaker maker;
    private final Map<String, Map<BoughtItem, Integer>> bought;
    private final List<BoughtItem> items;

    private GlanceViews(PageMaker maker) {
        this.maker = maker;
        this.bought = new LinkedHashMap<>();
        maker.plan().depots().forEach(depot -> bought.put(PageNames.key(depot), bought(depot)));
        this.items = List.copyOf(new TreeSet<>(bought.values().stream()
                .flatMap(depot -> depot.keySet().stream())
                .toList()));
    }

    /** One row for each depot, one column for each item that any of them buys. */
    static TableView table(PageMaker maker) {
        return new GlanceViews(maker).table();
    }

    /** The sheets to print, by depot. */
    static TableView sheets(PageMaker maker) {
        TableView.Builder table =
                TableView.of("sheets", "Sheets to print, for each depot").words("Depot");
        Stream.of(Sheet.values()).map(Sheet::title).forEach(table::words);
        for (DepotPlan depot : maker.plan().depots()) {
            List<Cell> row = new ArrayList<>(List.of(Cell.text(maker.title(depot))));
            Stream.of(Sheet.values()).forEach(sheet -> row.add(maker.sheetLink(depot, sheet)));
            table.row(row);
        }
        return table.build();
    }

    private TableView table() {
        TableView.Builder table = TableView.of(
                        "glance", "Crews on packs, packs and bays there will be, and pieces to buy, by depot")
                .words("Depot")
                .numbers("Crews", "Packs", "Bays");
        items.forEach(item -> table.numbers(item.words()));
        List<List<Integer>> rows =
                maker.plan().depots().stream().map(this::counts).toList();
        for (int i = 0; i < rows.size(); i++) {
            DepotPlan depot = maker.plan().depots().get(i);
            List<Cell> row = new ArrayList<>(List.of(Cell.link(maker.title(depot), maker.pageName(depot))));
            rows.get(i).forEach(count -> row.add(Cell.text(words(count))));
            table.row(row);
        }
        List<String> all = new ArrayList<>(List.of("All"));
        for (int column = 0; column < THERE + items.size(); column++) {
            int at = column;
            int from = column < THERE ? firstOfLastPhase() : 0;
            all.add(words(rows.stream().skip(from).mapToInt(row -> row.get(at)).sum()));
        }
        return table.total(all.toArray(String[]::new)).build();
    }

    /** Crews, packs and bays stay from phase to phase: all of them are those of the last one. */
    private int firstOfLastPhase() {
        int phases = Math.max(1, maker.plan().phases().size());
        return maker.plan().depots().size() / phases * (phases - 1);
    }

    private List<Integer> counts(DepotPlan depot) {
        List<Integer> counts = new ArrayList<>();
        counts.add(Math.toIntExact(depot.days().stream()
                .flatMap(day -> day.trips().stream())
                .map(trip -> trip.crew())
                .distinct()
                .count()));
        counts.add(depot.packs().stream().mapToInt(PackStock::count).sum());
        counts.add(depot.chargers().stream()
                .mapToInt(charger ->
                        maker.catalog().chargerType(charger.chargerType()).bays())
                .sum());
        items.forEach(item -> counts.add(bought.get(PageNames.key(depot)).getOrDefault(item, 0)));
        return counts;
    }

    private Map<BoughtItem, Integer> bought(DepotPlan depot) {
        Map<BoughtItem, Integer> pieces = new TreeMap<>();
        Purchases.of(maker.catalog(), depot, maker.plan().before(depot)).stream()
                .filter(line -> line.bought() > 0)
                .forEach(line -> pieces.merge(BoughtItem.of(line), line.bought(), Integer::sum));
        return pieces;
    }

    private static String words(int count) {
        return count == 0 ? "-" : Figures.read(count, 0);
    }
}
