package depot.optimizer.report.page;

import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.Plan;
import depot.optimizer.report.table.Catalog;
import depot.optimizer.report.table.Purchase;
import depot.optimizer.report.table.Purchases;
import depot.optimizer.report.text.Amounts;
import depot.optimizer.report.text.Figures;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What to buy, for one depot and over the fleet. */
final class PurchaseViews {

    private PurchaseViews() {}

    static BigDecimal total(Amounts amounts, List<Purchase> purchases) {
        return purchases.stream().map(line -> amounts.rounded(line.total())).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** One depot's list. */
    static TableView ofDepot(Amounts amounts, List<Purchase> purchases) {
        TableView.Builder table = TableView.of("what-to-buy", "What to buy, at today's prices")
                .words("Item", "Kind")
                .numbers(
                        "Needed (pieces)",
                        "Owned (pieces)",
                        "To buy (pieces)",
                        "Price of one (" + amounts.code() + ")",
                        "Installing one (" + amounts.code() + ")",
                        "Together (" + amounts.code() + ")");
        for (Purchase line : purchases) {
            table.row(
                    line.item(),
                    line.kind().words(),
                    Figures.read(line.needed(), 0),
                    Figures.read(line.owned(), 0),
                    Figures.read(line.bought(), 0),
                    amounts.show(line.unitPrice()),
                    amounts.show(line.installCost()),
                    amounts.show(amounts.rounded(line.total())));
        }
        return table.total("All", "", "", "", "", "", "", amounts.show(total(amounts, purchases)))
                .build();
    }

    /** Everything bought, by kind and item; circuits and supplies as one line each. */
    static TableView ofFleet(Amounts amounts, Catalog catalog, Plan fleet) {
        Map<BoughtItem, Sum> sums = new TreeMap<>();
        for (DepotPlan plan : fleet.depots()) {
            for (Purchase line : Purchases.of(catalog, plan, fleet.before(plan))) {
                sums.merge(BoughtItem.of(line), Sum.of(amounts, line), Sum::plus);
            }
        }
        TableView.Builder table = TableView.of("fleet-purchases", "What is bought over the fleet, at today's prices")
                .words("Item", "Kind")
                .numbers(
                        "Needed (pieces)",
                        "Owned (pieces)",
                        "To buy (pieces)",
                        "Together, installed (" + amounts.code() + ")");
        sums.forEach((key, sum) -> table.row(
                key.item(),
                key.kind().words(),
                Figures.read(sum.needed(), 0),
                Figures.read(sum.owned(), 0),
                Figures.read(sum.needed() - sum.owned(), 0),
                amounts.show(sum.cost())));
        BigDecimal all = sums.values().stream().map(Sum::cost).reduce(BigDecimal.ZERO, BigDecimal::add);
        return table.total("All", "", "", "", "", amounts.show(all)).build();
    }

    private record Sum(int needed, int owned, BigDecimal cost) {

        static Sum of(Amounts amounts, Purchase line) {
            return new Sum(line.needed(), line.owned(), amounts.rounded(line.total()));
        }

        Sum plus(Sum other) {
            return new Sum(needed + other.needed, owned + other.owned, cost.add(other.cost));
        }
    }
}
