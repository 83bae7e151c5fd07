package depot.optimizer.report.page;

import depot.optimizer.plan.Certificate;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.ExplainedShortage;
import depot.optimizer.replay.DepotReplay;
import depot.optimizer.report.table.CircuitLine;
import depot.optimizer.report.table.CircuitLines;
import depot.optimizer.report.table.Purchase;
import depot.optimizer.report.table.Purchases;
import depot.optimizer.report.text.Amounts;
import depot.optimizer.report.text.Figures;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Makes the page of a depot. */
final class DepotPages {

    private DepotPages() {}

    static DepotPage of(PageMaker maker, DepotPlan plan) {
        Amounts amounts = maker.amounts();
        List<Purchase> purchases =
                Purchases.of(maker.catalog(), plan, maker.plan().before(plan));
        DepotReplay replay = maker.replay(plan);
        List<ExplainedShortage> shortages = maker.shortages().stream()
                .filter(shortage -> shortage.depot().equals(plan.depot())
                        && shortage.phase().equals(plan.phase()))
                .toList();
        List<CircuitLine> circuits = CircuitLines.of(maker.catalog(), plan, replay);
        return new DepotPage(
                maker.title(plan),
                "Scenario " + maker.plan().scenario(),
                neighbours(maker, plan),
                Stream.of(Sheet.values())
                        .map(sheet -> maker.sheetLink(plan, sheet))
                        .toList(),
                facts(maker, plan, purchases, replay),
                PurchaseViews.ofDepot(amounts, purchases),
                PlacementViews.table(maker.catalog(), plan),
                CircuitViews.table(circuits),
                ReplayViews.of(replay),
                DayViews.of(plan, maker.plan().settings().handoverMinutes()),
                PackViews.pools(maker.catalog(), plan),
                PackViews.carried(plan),
                PackViews.kits(plan),
                ShortageViews.table(amounts, shortages),
                CostViews.byCategory("costs-by-kind", maker.presentCostMeans(), amounts, List.of(plan)),
                CostViews.lines("cost-lines", amounts, plan),
                Cautions.general(),
                Cautions.carriage(),
                Cautions.heavyPacks(maker.catalog(), plan),
                SolveViews.ofDepot(amounts, plan));
    }

    private static List<Fact> facts(PageMaker maker, DepotPlan plan, List<Purchase> purchases, DepotReplay replay) {
        Amounts amounts = maker.amounts();
        Certificate certificate = plan.stop().certificate();
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact(
                "To pay at once",
                amounts.showWithCode(PurchaseViews.total(amounts, purchases)),
                "purchases and installation at today's prices"));
        facts.add(new Fact(
                "Present cost", amounts.showWithCode(CostViews.total(amounts, plan)), "over " + maker.horizon()));
        facts.add(new Fact(
                "Gap, " + (certificate.proven() ? "proven" : "not proven to the gap asked for"),
                SolveViews.gap(certificate.gap()),
                "no plan costs less than " + amounts.showWithCode(amounts.rounded(certificate.bound()))));
        facts.add(new Fact("Days met in the replay", ReplayViews.daysMet(List.of(replay)), proof(replay)));
        BusiestDay.of(replay).stream()
                .max(Comparator.comparingDouble(BusiestDay::share))
                .ifPresent(day -> facts.add(new Fact(
                        "Nearest to its limit",
                        BusiestDay.isSupply(day)
                                ? "supply"
                                : "circuit " + day.peak().circuit(),
                        Figures.read(day.peak().amps(), 1) + " A of "
                                + Figures.read(day.peak().limitAmps(), 1) + " A")));
        if (!plan.onPetrol().isEmpty()) {
            facts.add(new Fact(
                    "Stays on petrol",
                    Figures.count(plan.onPetrol().size(), "crew"),
                    String.join(", ", plan.onPetrol()) + "; packs would cost more"));
        }
        return facts;
    }

    static String proof(DepotReplay replay) {
        if (replay.proven()) {
            return "no rule broken, cost agrees";
        }
        int broken = replay.allViolations().size();
        return broken == 0 ? "cost does not agree" : Figures.count(broken, "rule") + " broken";
    }

    /** The fleet's page, then the depots before and after. */
    private static List<Cell> neighbours(PageMaker maker, DepotPlan plan) {
        List<DepotPlan> all = maker.plan().depots();
        int at = all.indexOf(plan);
        List<Cell> links = new ArrayList<>(List.of(Cell.link("Fleet", PageNames.FLEET)));
        if (at > 0) {
            links.add(neighbour(maker, "Depot before: ", all.get(at - 1)));
        }
        if (at + 1 < all.size()) {
            links.add(neighbour(maker, "Depot after: ", all.get(at + 1)));
        }
        return links;
    }

    private static Cell neighbour(PageMaker maker, String which, DepotPlan depot) {
        return Cell.link(which + maker.title(depot), maker.pageName(depot));
    }
}
