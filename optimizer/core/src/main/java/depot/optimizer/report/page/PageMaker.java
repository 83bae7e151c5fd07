package depot.optimizer.report.page;

import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.ExplainedShortage;
import depot.optimizer.plan.Plan;
import depot.optimizer.replay.DepotReplay;
import depot.optimizer.replay.ReplayReport;
import depot.optimizer.replay.TrialReport;
import depot.optimizer.report.table.Catalog;
import depot.optimizer.report.text.Amounts;
import depot.optimizer.report.text.Figures;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What all pages of a run are made from.
 *
 * @param trials days drawn at random, empty: none were asked for
 */
record PageMaker(
        Catalog catalog,
        Plan plan,
        ReplayReport report,
        List<ExplainedShortage> shortages,
        Optional<TrialReport> trials,
        Amounts amounts,
        Map<String, String> pageNames,
        Map<String, DepotReplay> replays) {

    static PageMaker of(
            Catalog catalog,
            Plan plan,
            ReplayReport report,
            List<ExplainedShortage> shortages,
            Optional<TrialReport> trials) {
        return new PageMaker(
                catalog,
                plan,
                report,
                shortages,
                trials,
                new Amounts(Currency.getInstance(plan.currency())),
                PageNames.of(plan),
                report.depots().stream()
                        .collect(Collectors.toMap(replay -> key(replay.depot(), replay.phase()), Function.identity())));
    }

    private static String key(String depot, String phase) {
        return phase + "/" + depot;
    }

    /** Name of a depot's page. */
    String pageName(DepotPlan depot) {
        return pageNames.get(PageNames.key(depot));
    }

    /** The replay of a depot of the plan. */
    DepotReplay replay(DepotPlan depot) {
        DepotReplay replay = replays.get(key(depot.depot(), depot.phase()));
        if (replay == null) {
            throw new IllegalArgumentException(
                    "Depot '%s' is in the plan and not in its replay.".formatted(depot.depot()));
        }
        return replay;
    }

    /** Name of the depot, with its id where that says more, and with the phase where there are several. */
    String title(DepotPlan depot) {
        String name = catalog.depot(depot.depot()).name();
        String title = name.equals(depot.depot()) ? name : name + " (" + depot.depot() + ")";
        return plan.phases().size() > 1 ? title + ", " + depot.phase() : title;
    }

    /** From a sheet of a depot to its page and its other sheets. */
    List<Cell> sheetLinks(DepotPlan depot, Sheet from) {
        List<Cell> links =
                new ArrayList<>(List.of(Cell.link("Fleet", PageNames.FLEET), Cell.link("Depot", pageName(depot))));
        Stream.of(Sheet.values()).filter(sheet -> sheet != from).forEach(sheet -> links.add(sheetLink(depot, sheet)));
        return links;
    }

    Cell sheetLink(DepotPlan depot, Sheet sheet) {
        return Cell.link(sheet.title(), sheet.fileName(pageName(depot)));
    }

    /** Length of the time that is planned for. */
    String horizon() {
        return Figures.count(catalog.scenario().horizonYears(), "year");
    }

    /** What present costs mean in this scenario. */
    String presentCostMeans() {
        return "Present cost over %s, discounted at %s a year, in %s"
                .formatted(horizon(), Figures.percent(catalog.scenario().discountRate()), amounts.code());
    }
}
