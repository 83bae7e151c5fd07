package depot.optimizer.report.table;

import static depot.optimizer.report.table.CommonColumns.CHARGER;
import static depot.optimizer.report.table.CommonColumns.CIRCUIT;
import static depot.optimizer.report.table.CommonColumns.CREW;
import static depot.optimizer.report.table.CommonColumns.DEPOT;
import static depot.optimizer.report.table.CommonColumns.KIND_OF_DAY;
import static depot.optimizer.report.table.CommonColumns.PACK_TYPE;
import static depot.optimizer.report.table.CommonColumns.PHASE;
import static depot.optimizer.report.table.CommonColumns.SEASON_DAYS;
import static depot.optimizer.report.table.OutputColumn.count;
import static depot.optimizer.report.table.OutputColumn.time;
import static depot.optimizer.report.table.OutputColumn.words;

import depot.optimizer.plan.ChargerLoad;
import depot.optimizer.plan.ChargerPlacement;
import depot.optimizer.plan.DayPlan;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.Plan;
import depot.optimizer.report.text.DayNames;
import depot.optimizer.scenario.Crew;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** visits.csv: which crews use the bays of which other depots, and when. */
public final class VisitTable {

    private static final TableLayout LAYOUT = TableLayout.of(
            "visits.csv",
            "group of like packs of a visiting crew in one loading of a charger",
            PHASE,
            DEPOT,
            KIND_OF_DAY,
            SEASON_DAYS,
            CREW,
            words("home_depot", "key of the depot that the crew works from"),
            time("load_time", "when the crew arrives and puts its packs in"),
            time("collect_time", "when it leaves and takes them out"),
            CHARGER,
            CIRCUIT,
            PACK_TYPE,
            count("charge_to_percent", "%", "80 or 100"),
            count("packs", "packs", "packs of the group, at most"));

    private VisitTable() {}

    /** One row per group of packs of a guest; empty where nobody uses another depot's bays. */
    public static Optional<CsvTable> of(Catalog catalog, Plan plan) {
        Map<String, String> homes =
                catalog.scenario().crews().stream().collect(Collectors.toMap(Crew::id, Crew::depot));
        CsvTable table = new CsvTable(LAYOUT);
        boolean any = false;
        for (DepotPlan depot : plan.depots()) {
            Map<String, ChargerPlacement> chargers =
                    depot.chargers().stream().collect(Collectors.toMap(ChargerPlacement::id, Function.identity()));
            for (int kind = 0; kind < depot.days().size(); kind++) {
                DayPlan day = depot.days().get(kind);
                for (ChargerLoad load : day.loads()) {
                    for (ChargerLoad.Loaded packs : load.packs()) {
                        if (depot.visitor(packs.pool())) {
                            String circuit = chargers.get(load.charger()).circuit();
                            int number = kind + 1;
                            table.row(row -> row.text(depot.phase())
                                    .text(depot.depot())
                                    .count(number)
                                    .text(DayNames.of(day.occurrences()))
                                    .text(packs.pool())
                                    .text(homes.getOrDefault(packs.pool(), ""))
                                    .time(load.loadMinute())
                                    .time(load.collectMinute())
                                    .text(load.charger())
                                    .text(circuit)
                                    .text(packs.packType())
                                    .count(packs.level() == ChargerLoad.Level.FULL ? 100 : 80)
                                    .count(packs.count()));
                            any = true;
                        }
                    }
                }
            }
        }
        return any ? Optional.of(table) : Optional.empty();
    }
}
