package depot.optimizer.report.table;

import depot.optimizer.dictionary.SweepFields;
import depot.optimizer.sweep.CaseResult;
import depot.optimizer.sweep.CaseResult.Carried;
import depot.optimizer.sweep.DepotOutcome;
import depot.optimizer.sweep.FleetOutcome;
import depot.optimizer.sweep.LossResult;
import depot.optimizer.sweep.SweepCase;
import depot.optimizer.sweep.SweepCase.Part;
import depot.optimizer.sweep.SweepResult;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * The figures of a sweep, worked out once for tables and page.
 *
 * @param base of the base plan
 * @param rows one for each case, in the sweep's order
 * @param losses one for each loss
 */
public record SweepFigures(SweepResult result, CaseFigures base, List<CaseRow> rows, List<LossRow> losses) {

    /**
     * A case.
     *
     * @param figures empty: there is no plan
     * @param note what a reader should know, empty: nothing
     */
    public record CaseRow(CaseResult result, Optional<CaseFigures> figures, String note) {
        /** What is asked. */
        public SweepCase sweepCase() {
            return result.sweepCase();
        }

        /** In plain words how it ends. */
        public String status() {
            return figures.map(CaseFigures::status).orElse("no plan: " + result.noPlan());
        }
    }

    /**
     * A loss.
     *
     * @param held of the depot with what is left, and of homes of guests that get less from it; empty: no plan
     * @param cured of the depot with more bought, empty: none needed or none found
     * @param toBuy what is bought on top, in words, empty: nothing
     */
    public record LossRow(LossResult result, Optional<CaseFigures> held, Optional<CaseFigures> cured, String toBuy) {
        /** In plain words: does it hold, and if not, what happens. */
        public String status() {
            if (result.holds()) {
                return homes().isEmpty() ? "holds" : "holds: %s can do with fewer packs from here".formatted(homes());
            }
            return "does not hold: " + held.map(CaseFigures::status).orElse("no plan for what is left")
                    + (homes().isEmpty() ? "" : ", " + homes() + " included");
        }

        /** Depots whose crews get less here than planned. */
        public String homes() {
            return result.homes().stream().map(home -> home.plan().depot()).collect(Collectors.joining(", "));
        }

        /** Whose days the figures are about. */
        public String whose() {
            return homes().isEmpty() ? "days of this depot only" : "days of this depot and of " + homes();
        }

        /** In plain words what would make it hold, empty: it holds. */
        public String cure() {
            if (result.holds()) {
                return "";
            }
            if (cured.isEmpty()) {
                return "no plan: " + result.noPlan();
            }
            String bought = toBuy.isEmpty() ? "buy nothing, place what is there anew" : "buy " + toBuy;
            boolean whole = cured.get().ending() == CaseFigures.Ending.MET;
            return bought + (whole ? "" : "; even then " + cured.get().status());
        }
    }

    /** Two ends of a tornado's bar. */
    public record Swing(CaseRow low, CaseRow high) {
        /** How far apart the two costs are. */
        public double span() {
            return low.figures().isPresent() && high.figures().isPresent()
                    ? Math.abs(high.figures().get().cost() - low.figures().get().cost())
                    : 0;
        }
    }

    /** Works them out. */
    public static SweepFigures of(SweepResult result) {
        return new SweepFigures(
                result,
                CaseFigures.of(result.scenario(), result.base(), SweepFields.Purchases.ANEW),
                result.cases().stream().map(SweepFigures::row).toList(),
                result.losses().stream().map(SweepFigures::row).toList());
    }

    private static CaseRow row(CaseResult result) {
        Optional<CaseFigures> figures = result.fleet()
                .map(fleet -> CaseFigures.of(
                        result.scenario(), fleet, result.sweepCase().purchases()));
        List<String> notes = new ArrayList<>();
        if (result.planned() && result.touched().isEmpty()) {
            notes.add("no depot is touched");
        }
        result.plansOf().entrySet().stream()
                .collect(Collectors.groupingBy(
                        Map.Entry::getValue,
                        TreeMap::new,
                        Collectors.mapping(Map.Entry::getKey, Collectors.joining(", "))))
                .forEach((other, depots) -> notes.add("%s serves here too (%s)"
                        .formatted(
                                other.equals(SweepCase.BASE_NAME) ? "the base plan" : "the plan of \"" + other + "\"",
                                depots)));
        if (!result.unsearched().isEmpty()) {
            notes.add("within the gap by plans and bounds of the cases beside it (%s)"
                    .formatted(String.join(", ", result.unsearched())));
        }
        Carried carried = result.carried();
        if (!carried.planOf().isEmpty()) {
            notes.add("the plan of \"%s\" fits here too and costs less".formatted(carried.planOf()));
        }
        if (!carried.boundOf().isEmpty()) {
            notes.add("the bound of \"%s\" holds here too and is higher".formatted(carried.boundOf()));
        }
        if (figures.map(CaseFigures::gapOpen).orElse(false)) {
            notes.add("gap wider than asked for");
        }
        return new CaseRow(result, figures, String.join("; ", notes));
    }

    private static LossRow row(LossResult result) {
        Catalog catalog = new Catalog(result.scenario());
        return new LossRow(
                result,
                result.held().map(held -> figures(result, result.left(), SweepFields.Purchases.KEPT)),
                result.cured().map(cured -> figures(result, List.of(cured), SweepFields.Purchases.ANEW)),
                result.cured()
                        .map(cured -> Purchases.of(catalog, cured.plan()).stream()
                                .filter(line -> line.bought() > 0)
                                .map(line -> line.bought() + " " + line.item())
                                .collect(Collectors.joining(", ")))
                        .orElse(""));
    }

    private static CaseFigures figures(
            LossResult result, List<DepotOutcome> outcomes, SweepFields.Purchases purchases) {
        return CaseFigures.of(result.scenario(), FleetOutcome.ofApart(result.scenario(), outcomes), purchases);
    }

    /** How much more than the base plan, empty: no plan. */
    public Optional<Double> difference(CaseRow row) {
        return row.figures().map(figures -> figures.cost() - base.cost());
    }

    /** An amount as a share of the base plan's cost. */
    public double share(double difference) {
        return base.cost() == 0 ? 0 : difference / Math.abs(base.cost());
    }

    /**
     * What the plan of a case spends in each phase.
     *
     * @return empty: there is no plan
     */
    public static List<RolloutTable.Step> spending(CaseRow row) {
        return row.result()
                .fleet()
                .map(fleet -> RolloutTable.steps(new Catalog(row.result().scenario()), fleet.plan()))
                .orElse(List.of());
    }

    /** Cases of a line, a frontier or a grid, in order. */
    public List<CaseRow> of(Part part, String table) {
        return rows.stream()
                .filter(row -> row.sweepCase().part() == part
                        && row.sweepCase().table().equals(table))
                .toList();
    }

    /** The tornado's bars, widest first. */
    public List<Swing> swings() {
        List<CaseRow> ends = rows.stream()
                .filter(row -> row.sweepCase().part() == Part.TORNADO)
                .toList();
        List<Swing> swings = new ArrayList<>();
        for (int i = 0; i + 1 < ends.size(); i += 2) {
            swings.add(new Swing(ends.get(i), ends.get(i + 1)));
        }
        swings.sort(Comparator.comparingDouble(Swing::span).reversed());
        return swings;
    }

    /** What a cure costs at once. */
    public static BigDecimal atOnce(LossRow row) {
        return row.cured().map(CaseFigures::atOnce).orElse(BigDecimal.ZERO);
    }

    /** Whether any crew has petrol tools to give up. */
    public boolean petrol() {
        return base.petrol() > 0;
    }
}
