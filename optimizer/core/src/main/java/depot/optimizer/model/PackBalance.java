package depot.optimizer.model;

import depot.optimizer.mip.Expr;
import depot.optimizer.mip.MipModel;
import depot.optimizer.mip.Var;
import depot.optimizer.model.TripVars.Carried;
import depot.optimizer.problem.ChargeLevel;
import depot.optimizer.problem.DepotProblem;

/**
 * Every pack is full when the day starts, is somewhere at any time, and is full again when the day ends.
 *
 * <p>For each pool q and pack type p, with sums up to and including a handover h:
 *
 * <ul>
 *   <li>full packs: packs taken full by h - packs collected full by h &lt;= packs[q,p]
 *   <li>packs at 80 %: taken at 80 % by h &lt;= collected at 80 % by h, and all of them are taken by the end
 *   <li>depleted packs: loaded by h &lt;= brought back by h, and all of them are loaded by the end
 * </ul>
 */
final class PackBalance implements DayRule {

    @Override
    public void add(MipModel model, DepotProblem problem, CapacityVars capacity, DayVars day) {
        for (int q = 0; q < problem.pools().size(); q++) {
            for (int p = 0; p < problem.packTypes().size(); p++) {
                addPool(model, day, q, p, capacity.packs[q][p]);
            }
        }
    }

    private static void addPool(MipModel model, DayVars day, int q, int p, Var stock) {
        String pool = "q" + q + "_p" + p + "_";
        for (int h : day.kind().handovers()) {
            String key = pool + h + "@" + day.tag();
            if (day.trips().stream().anyMatch(t -> t.pool() == q && t.trip().departure() == h)) {
                Expr full = taken(day, q, p, h, ChargeLevel.FULL).add(-1, collected(day, q, p, h, ChargeLevel.FULL));
                model.atMost("fullPacks_" + key, full.add(-1, stock), 0);
                Expr eighty =
                        taken(day, q, p, h, ChargeLevel.EIGHTY).add(-1, collected(day, q, p, h, ChargeLevel.EIGHTY));
                model.atMost("eightyPacks_" + key, eighty, 0);
            }
            Expr depleted = loadedBy(day, q, p, h).add(-1, returnedBy(day, q, p, h));
            model.atMost("depletedPacks_" + key, depleted, 0);
        }
        int end = day.end();
        model.equal(
                "allLoaded_" + pool + "@" + day.tag(), loadedBy(day, q, p, end).add(-1, returnedBy(day, q, p, end)), 0);
        model.equal(
                "allEightyTaken_" + pool + "@" + day.tag(),
                taken(day, q, p, end, ChargeLevel.EIGHTY).add(-1, collected(day, q, p, end, ChargeLevel.EIGHTY)),
                0);
    }

    private static Expr taken(DayVars day, int q, int p, int by, ChargeLevel level) {
        Expr sum = new Expr();
        for (TripVars trip : day.trips()) {
            if (trip.pool() == q && trip.trip().departure() <= by) {
                for (Carried carried : trip.carried()) {
                    if (carried.pack() == p) {
                        sum.add(1, level == ChargeLevel.FULL ? carried.full() : carried.eighty());
                    }
                }
            }
        }
        return sum;
    }

    private static Expr returnedBy(DayVars day, int q, int p, int by) {
        Expr sum = new Expr();
        for (TripVars trip : day.trips()) {
            if (trip.pool() == q && trip.trip().arrival() <= by) {
                trip.carried().stream().filter(c -> c.pack() == p).forEach(c -> sum.add(1, c.count()));
            }
        }
        return sum;
    }

    private static Expr collected(DayVars day, int q, int p, int by, ChargeLevel level) {
        Expr sum = new Expr();
        for (Load load : day.allLoads()) {
            if (load.pool() == q
                    && load.pack() == p
                    && load.level() == level
                    && load.batch().to() <= by) {
                sum.add(1, load.count());
            }
        }
        return sum;
    }

    private static Expr loadedBy(DayVars day, int q, int p, int by) {
        Expr sum = new Expr();
        for (Load load : day.allLoads()) {
            if (load.pool() == q && load.pack() == p && load.batch().from() <= by) {
                sum.add(1, load.count());
            }
        }
        return sum;
    }
}
