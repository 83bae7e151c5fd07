package depot.optimizer.report.page;

import depot.optimizer.finance.FlowKind;
import depot.optimizer.plan.Certificate;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.Plan;
import depot.optimizer.replay.DepotReplay;
import depot.optimizer.replay.ReplayReport;
import depot.optimizer.report.table.Purchases;
import depot.optimizer.report.table.RolloutTable;
import depot.optimizer.report.table.Words;
import depot.optimizer.report.text.Amounts;
import depot.optimizer.report.text.Figures;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Makes the page of the fleet. */
final class FleetPages {

    /** Circuits and supplies listed as the tightest. */
    private static final int TIGHTEST = 10;

    private FleetPages() {}

    static FleetPage of(PageMaker maker) {
        Plan plan = maker.plan();
        Amounts amounts = maker.amounts();
        return new FleetPage(
                plan.scenario(),
                "%s, %s. Amounts in %s."
                        .formatted(
                                Figures.count(
                                        plan.depots().stream()
                                                .map(DepotPlan::depot)
                                                .distinct()
                                                .count(),
                                        "depot"),
                                Figures.count(maker.catalog().scenario().crews().size(), "crew"),
                                amounts.code()),
                facts(maker),
                GlanceViews.table(maker),
                GlanceViews.sheets(maker),
                RolloutViews.of(maker),
                maker.trials().map(TrialViews::table).stream().toList(),
                depots(maker),
                CostViews.ofFleet("fleet-costs", maker.presentCostMeans(), amounts, plan),
                CashFlowViews.of(maker),
                PurchaseViews.ofFleet(amounts, maker.catalog(), plan),
                PeakViews.ofFleet(tightest(maker)),
                ShortageViews.table(amounts, maker.shortages()),
                Cautions.general(),
                Cautions.carriage(),
                SolveViews.ofFleet(maker.catalog().scenario(), plan),
                SolveViews.inputs(plan));
    }

    private static List<Fact> facts(PageMaker maker) {
        Amounts amounts = maker.amounts();
        Plan plan = maker.plan();
        Certificate certificate = plan.certificate();
        List<Fact> facts = new ArrayList<>(List.of(
                new Fact(
                        plan.phases().size() > 1 ? "To pay as phases begin" : "To pay at once",
                        amounts.showWithCode(atOnce(maker)),
                        "purchases and installation at today's prices"),
                new Fact(
                        "Present cost",
                        amounts.showWithCode(amounts.rounded(certificate.cost())),
                        "over " + maker.horizon()),
                new Fact(
                        "No plan costs less than",
                        amounts.showWithCode(amounts.rounded(certificate.bound())),
                        "by the model: its proven bound for the whole fleet"),
                new Fact(
                        "Gap, " + (certificate.proven() ? "proven" : "not proven to the gap asked for"),
                        SolveViews.gap(certificate.gap()),
                        "asked for: " + SolveViews.gap(plan.settings().relativeGap())),
                new Fact(
                        "Days met in the replay",
                        ReplayViews.daysMet(maker.report().depots()),
                        "days of all depots added; " + proof(maker.report()))));
        maker.trials().map(TrialViews::fact).ifPresent(facts::add);
        return facts;
    }

    private static String proof(ReplayReport report) {
        long unproven =
                report.depots().stream().filter(depot -> !depot.proven()).count();
        return unproven == 0
                ? "no rule broken, cost agrees"
                : "%d of %d depots not proven"
                        .formatted(unproven, report.depots().size());
    }

    private static TableView depots(PageMaker maker) {
        Amounts amounts = maker.amounts();
        TableView.Builder table = TableView.of("depot-table", maker.presentCostMeans() + "; one page per depot")
                .words("Depot", "Region")
                .numbers("To pay at once (" + amounts.code() + ")", "Present cost (" + amounts.code() + ")", "Gap")
                .words("Days met a year", "Replay")
                .numbers("Highest share of a limit");
        for (DepotPlan depot : maker.plan().depots()) {
            DepotReplay replay = maker.replay(depot);
            table.row(List.of(
                    Cell.link(maker.title(depot), maker.pageName(depot)),
                    Cell.text(maker.catalog().depot(depot.depot()).region().orElse("")),
                    Cell.text(amounts.show(atOnce(maker, depot))),
                    Cell.text(amounts.show(CostViews.total(amounts, depot))),
                    Cell.text(SolveViews.gap(depot.stop().certificate().gap())),
                    Cell.text(ReplayViews.daysMetShort(List.of(replay))),
                    Cell.text(DepotPages.proof(replay)),
                    Cell.text(BusiestDay.of(replay).stream()
                            .max(Comparator.comparingDouble(BusiestDay::share))
                            .map(BusiestDay::shareWords)
                            .orElse("-"))));
        }
        if (!maker.plan().fleetCosts().isEmpty()) {
            table.row(List.of(
                    Cell.text(Words.of(FlowKind.FLEET_PURCHASES)),
                    Cell.text(""),
                    Cell.text(amounts.show(fleetPurchases(maker))),
                    Cell.text(amounts.show(amounts.rounded(CostViews.fleetCosts(maker.plan())))),
                    Cell.text(""),
                    Cell.text(""),
                    Cell.text(""),
                    Cell.text("")));
        }
        return table.total(
                        "All",
                        "",
                        amounts.show(atOnce(maker)),
                        amounts.show(CostViews.total(amounts, maker.plan())),
                        SolveViews.gap(maker.plan().certificate().gap()),
                        ReplayViews.daysMetShort(maker.report().depots()),
                        "",
                        "")
                .build();
    }

    /** What depots pay for what they buy, and the fleet for spare pieces less quantity reductions. */
    private static BigDecimal atOnce(PageMaker maker) {
        return maker.plan().depots().stream()
                .map(depot -> atOnce(maker, depot))
                .reduce(fleetPurchases(maker), BigDecimal::add);
    }

    private static BigDecimal fleetPurchases(PageMaker maker) {
        return maker.amounts()
                .rounded(RolloutTable.steps(maker.catalog(), maker.plan()).stream()
                        .map(RolloutTable.Step::fleetPurchases)
                        .reduce(BigDecimal.ZERO, BigDecimal::add));
    }

    private static BigDecimal atOnce(PageMaker maker, DepotPlan depot) {
        return PurchaseViews.total(
                maker.amounts(),
                Purchases.of(maker.catalog(), depot, maker.plan().before(depot)));
    }

    private static List<BusiestDay> tightest(PageMaker maker) {
        return maker.report().depots().stream()
                .flatMap(depot -> BusiestDay.of(depot).stream())
                .sorted(Comparator.comparingDouble(BusiestDay::share)
                        .reversed()
                        .thenComparing(BusiestDay::depot)
                        .thenComparing(day -> day.peak().circuit()))
                .limit(TIGHTEST)
                .toList();
    }
}
