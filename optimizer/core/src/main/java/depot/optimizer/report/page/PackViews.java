package depot.optimizer.report.page;

import depot.optimizer.plan.CrewKit;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.PackStock;
import depot.optimizer.report.table.Catalog;
import depot.optimizer.report.table.PackCounts;
import depot.optimizer.report.text.Figures;

/** Packs and kits: what there is, and what crews take along. */
final class PackViews {

    private PackViews() {}

    static TableView pools(Catalog catalog, DepotPlan plan) {
        TableView.Builder table = TableView.of("pools", "Packs of this depot")
                .words("Pool", "Pack type")
                .numbers(
                        "Packs in all",
                        "Out at once, at most (packs)",
                        "Always at the depot (packs)",
                        "Worn out a year (packs)");
        for (PackStock stock : plan.packs()) {
            int out = PackCounts.mostOut(catalog, plan, stock);
            table.row(
                    stock.pool(),
                    stock.packType(),
                    Figures.read(stock.count(), 0),
                    Figures.read(out, 0),
                    Figures.read(stock.count() - out, 0),
                    Figures.read(stock.replacedPerYear(), 2));
        }
        return table.build();
    }

    static TableView carried(DepotPlan plan) {
        TableView.Builder table = TableView.of("carried", "Packs that each crew carries on one trip, at most")
                .words("Crew", "Pack type")
                .numbers("Packs");
        PackCounts.mostCarried(plan)
                .forEach(
                        (crew, types) -> types.forEach((type, packs) -> table.row(crew, type, Figures.read(packs, 0))));
        return table.build();
    }

    static TableView kits(DepotPlan plan) {
        TableView.Builder table = TableView.of("kits", "Portable chargers and power banks on every trip of a crew")
                .words("Crew", "Item")
                .numbers("Pieces", "Of these owned");
        for (CrewKit kit : plan.kits()) {
            table.row(kit.crew(), kit.item(), Figures.read(kit.count(), 0), Figures.read(kit.owned(), 0));
        }
        return table.build();
    }
}
