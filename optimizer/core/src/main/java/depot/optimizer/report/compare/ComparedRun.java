package depot.optimizer.report.compare;

import depot.optimizer.plan.CostLine;
import depot.optimizer.plan.CostLine.Category;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.FleetCost;
import depot.optimizer.plan.Plan;
import depot.optimizer.report.PlanJson;
import depot.optimizer.report.compare.Comparison.Value;
import depot.optimizer.report.table.CashFlowTables;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What a run's folder says that comparisons need.
 *
 * @param name as the user named the folder
 * @param figures values of finance.csv by name
 * @param bought pieces bought by kind and item, in all phases
 * @param boughtWhen the same phase by phase
 * @param phases what rollout.csv says of each phase, in order; this and the former are empty for a run that has no such table
 * @param atOnce what is paid when the first phase begins, installation included
 * @param costs present costs by category
 * @param yearlyCosts the plan's own costs, now and at the end of each year
 * @param risk what the replay found
 */
record ComparedRun(
        String name,
        Plan plan,
        Map<String, Value> figures,
        Map<Item, Double> bought,
        Map<String, Map<Item, Double>> boughtWhen,
        Map<String, RunPhase> phases,
        double atOnce,
        Map<Category, Double> costs,
        List<Double> yearlyCosts,
        RunRisk risk) {

    /** Something bought. */
    record Item(String kind, String name) implements Comparable<Item> {
        @Override
        public int compareTo(Item other) {
            int byKind = kind.compareTo(other.kind);
            return byKind != 0 ? byKind : name.compareTo(other.name);
        }
    }

    /**
     * Reads a run.
     *
     * @param folder of the run, or its plan.json
     * @throws IOException if a file of it cannot be used; the message says which and why
     */
    static ComparedRun read(Path folder) throws IOException {
        Path run = folder.endsWith(PlanJson.FILE_NAME) ? folder.toAbsolutePath().getParent() : folder;
        Plan plan = PlanJson.read(run.resolve(PlanJson.FILE_NAME));
        RunTable purchases = RunTable.read(run, "purchases.csv");
        Map<String, RunPhase> phases = RunPhase.read(run);
        Map<Item, Double> bought = new TreeMap<>();
        Map<String, Map<Item, Double>> boughtWhen = new TreeMap<>();
        double atOnce = 0;
        for (int row = 0; row < purchases.size(); row++) {
            Item item = new Item(purchases.text(row, "kind"), purchases.text(row, "item"));
            bought.merge(item, purchases.number(row, "bought_pieces"), Double::sum);
            if (!phases.isEmpty()) {
                boughtWhen
                        .computeIfAbsent(purchases.text(row, "phase"), none -> new TreeMap<>())
                        .merge(item, purchases.number(row, "bought_pieces"), Double::sum);
            }
            atOnce += purchases.number(row, "purchase_total");
        }
        boolean alone = phases.size() < 2 && plan.fleetCosts().isEmpty();
        return new ComparedRun(
                folder.toString(),
                plan,
                figures(RunTable.read(run, CashFlowTables.FIGURES)),
                bought,
                boughtWhen,
                phases,
                alone ? atOnce : phases.values().iterator().next().spent(),
                costs(plan),
                yearlyCosts(RunTable.read(run, CashFlowTables.YEARLY)),
                RunRisk.of(RunTable.read(run, "replay.csv")));
    }

    private static Map<String, Value> figures(RunTable table) throws UnreadableRunException {
        Map<String, Value> figures = new TreeMap<>();
        for (int row = 0; row < table.size(); row++) {
            figures.put(table.text(row, "figure"), new Value(table.find(row, "value"), table.text(row, "remark")));
        }
        for (String name : List.of("horizon", "discount_rate", "present_cost")) {
            table.number(table.rowOf("figure", name), "value");
        }
        return figures;
    }

    private static Map<Category, Double> costs(Plan plan) {
        Map<Category, Double> costs = new EnumMap<>(Category.class);
        for (DepotPlan depot : plan.depots()) {
            for (CostLine line : depot.costs()) {
                costs.merge(line.category(), line.presentCost(), Double::sum);
            }
        }
        return costs;
    }

    /** Present cost of what no single depot pays. */
    double fleetCosts() {
        return plan.fleetCosts().stream().mapToDouble(FleetCost::presentCost).sum();
    }

    private static List<Double> yearlyCosts(RunTable table) throws UnreadableRunException {
        List<Double> costs = new ArrayList<>();
        for (int row = 0; row < table.size(); row++) {
            costs.add(0 - table.number(row, "plan_total"));
        }
        return List.copyOf(costs);
    }

    /** A figure of finance.csv; one that an older run lacks has no value. */
    Value figure(String name) {
        return figures.getOrDefault(name, Value.none("not in this run"));
    }

    /** A figure that every run has. */
    double number(String name) {
        return figure(name).number().orElseThrow();
    }
}
