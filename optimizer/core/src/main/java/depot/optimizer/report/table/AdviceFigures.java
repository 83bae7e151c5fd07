package depot.optimizer.report.table;

import depot.optimizer.advice.Advice;
import depot.optimizer.advice.Alternative;
import depot.optimizer.advice.DepotAdvice;
import depot.optimizer.advice.Piece;
import depot.optimizer.advice.ReplayedPlan;
import depot.optimizer.finance.PresentCost;
import depot.optimizer.report.text.Amounts;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeSet;

/**
 * What tables and page about a plan's questions share.
 *
 * @param planFiles file of each plan that is next best
 */
public record AdviceFigures(
        Advice advice, Catalog catalog, Amounts amounts, AdviceWords words, Map<Alternative, String> planFiles) {

    /** The figures of some answers. */
    public static AdviceFigures of(Advice advice) {
        Amounts amounts = new Amounts(advice.scenario().currency());
        Map<Alternative, String> files = new LinkedHashMap<>();
        for (DepotAdvice depot : advice.depots()) {
            for (Alternative other : nextBest(depot)) {
                files.put(other, "next-best-%02d.json".formatted(files.size() + 1));
            }
        }
        return new AdviceFigures(advice, new Catalog(advice.scenario()), amounts, new AdviceWords(amounts), files);
    }

    /** Other plans of a depot that were found within the cost asked for, each set of purchases once. */
    public static List<Alternative> nextBest(DepotAdvice depot) {
        return depot.alternatives().stream()
                .filter(each -> each.within() && each.sameAs().isEmpty())
                .toList();
    }

    /** What a plan of one of the depots has. */
    public List<Piece> pieces(ReplayedPlan plan) {
        return Piece.of(advice.scenario(), plan.last());
    }

    /** A present value as the same amount every year. */
    public double perYear(double presentValue) {
        return presentValue / PresentCost.of(advice.scenario()).annuity();
    }

    /** What a plan pays at once. */
    public BigDecimal atOnce(ReplayedPlan plan) {
        return Purchases.of(catalog, plan.plan()).stream()
                .map(Purchase::total)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** An item of which two plans have different numbers. */
    public record Differing(Piece.Item item, int planned, int other) {}

    /** Items of which another plan has more or fewer. */
    public static List<Differing> differing(List<Piece> planned, List<Piece> other) {
        SortedMap<Piece.Item, Integer> before = Piece.byItem(planned);
        SortedMap<Piece.Item, Integer> after = Piece.byItem(other);
        TreeSet<Piece.Item> items = new TreeSet<>(before.keySet());
        items.addAll(after.keySet());
        List<Differing> differing = new ArrayList<>();
        for (Piece.Item item : items) {
            int had = before.getOrDefault(item, 0);
            int has = after.getOrDefault(item, 0);
            if (had != has) {
                differing.add(new Differing(item, had, has));
            }
        }
        return List.copyOf(differing);
    }
}
