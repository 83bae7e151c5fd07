package depot.optimizer.model;

import depot.optimizer.mip.Expr;
import depot.optimizer.mip.MipModel;
import depot.optimizer.mip.Var;
import depot.optimizer.model.TripVars.Carried;
import depot.optimizer.problem.ChargeLevel;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.Trip.FamilyNeed;
import java.util.List;

/**
 * A crew carries whole packs: energy for every prefix of the trip, and one pack for each tool that runs at the same time. A crew that stays on
 * petrol needs none: each right-hand side is multiplied by electric[w].
 *
 * <ul>
 *   <li>for each family f and stop k of a trip: sum of E[p] (full[p] + 0.8 eighty[p]) + sum of E[p] road packs that serve a stop up to k + short &gt;=
 *       need[f,k], in Wh
 *   <li>sum of (full + eighty) + tools short / need &gt;= tools at once
 *   <li>rounded for each pack type p' of the family, r = need / E[p'], g = fraction of r: sum of ceil(E[p] / E[p']) packs + short / (g E[p']) &gt;=
 *       ceil(r). Implied for whole packs; it lifts the bound.
 *   <li>for a family of two pack types: the facets of {@link CoverHull}, where a pack at 80 % or recharged on the road counts like one more full
 *       pack; for a family of one type those of its full packs and its packs at 80 %. Implied as well.
 * </ul>
 */
final class TripNeeds implements DayRule {

    @Override
    public void add(MipModel model, DepotProblem problem, CapacityVars capacity, DayVars day) {
        for (TripVars trip : day.trips()) {
            for (int n = 0; n < trip.trip().needs().size(); n++) {
                FamilyNeed need = trip.trip().needs().get(n);
                Var missing = trip.shortWh().get(n);
                String key = trip.trip().crew() + "_" + trip.trip().number() + "_" + need.family() + "@" + day.tag();
                addPrefixes(model, trip, need, missing, key);
                addTools(model, trip, need, missing, key);
                addRounded(model, trip, need, missing, key);
                addHull(model, trip, need, missing, key);
            }
        }
    }

    private static void addPrefixes(MipModel model, TripVars trip, FamilyNeed need, Var missing, String key) {
        int last = need.prefixWh().size() - 1;
        boolean road = !trip.roadsFor(need).isEmpty();
        for (int k = road ? 0 : last; k <= last; k++) {
            int upTo = k;
            Expr wh = new Expr().add(1, missing);
            for (Carried c : trip.carriedFor(need)) {
                wh.add(c.fullWh(), c.full()).add(ChargeLevel.EIGHTY.share() * c.fullWh(), c.eighty());
            }
            trip.roadsFor(need).stream()
                    .filter(r -> r.servesFrom() <= upTo)
                    .forEach(r -> wh.add(trip.givenWh(r), r.packs()));
            trip.need(model, "energy_" + k + "_" + key, wh, need.prefixWh().get(k));
        }
    }

    private static void addTools(MipModel model, TripVars trip, FamilyNeed need, Var missing, String key) {
        Expr packs = new Expr();
        trip.carriedFor(need).forEach(c -> packs.add(1, c.count()));
        packs.add(need.toolsAtOnce() / need.totalWh(), missing);
        trip.need(model, "tools_" + key, packs, need.toolsAtOnce());
    }

    private static void addRounded(MipModel model, TripVars trip, FamilyNeed need, Var missing, String key) {
        List<Carried> all = trip.carriedFor(need);
        for (Carried unit : all) {
            double ratio = need.totalWh() / unit.fullWh();
            double fraction = ratio - Math.floor(ratio);
            if (fraction < 1e-6) {
                continue;
            }
            Expr packs = new Expr().add(1 / (fraction * unit.fullWh()), missing);
            for (Carried c : all) {
                packs.add(wholes(c.fullWh() / unit.fullWh()), c.full());
                packs.add(wholes(ChargeLevel.EIGHTY.share() * c.fullWh() / unit.fullWh()), c.eighty());
            }
            trip.roadsFor(need).forEach(r -> packs.add(wholes(trip.givenWh(r) / unit.fullWh()), r.packs()));
            trip.need(model, "wholePacks_" + unit.type().id() + "_" + key, packs, Math.ceil(ratio));
        }
    }

    private static void addHull(MipModel model, TripVars trip, FamilyNeed need, Var missing, String key) {
        List<Carried> all = trip.carriedFor(need);
        if (all.size() > 2) {
            return;
        }
        boolean levels = all.size() == 1;
        Carried first = all.get(0);
        Carried second = all.get(all.size() - 1);
        double secondWh = levels ? ChargeLevel.EIGHTY.share() * first.fullWh() : second.fullWh();
        // Recharged packs add energy but serve no tool more, so that the tools count only where nothing is recharged.
        int tools = trip.roadsFor(need).isEmpty() ? need.toolsAtOnce() : 0;
        int number = 0;
        for (CoverHull.Facet facet : new CoverHull(first.fullWh(), secondWh, need.totalWh(), tools).facets()) {
            Expr packs = new Expr().add(facet.perWh(), missing);
            if (levels) {
                packs.add(facet.alpha(), first.full()).add(facet.beta(), first.eighty());
            } else {
                packs.add(facet.alpha(), first.count()).add(facet.beta(), second.count());
            }
            trip.roadsFor(need)
                    .forEach(r ->
                            packs.add(r.fit().pack().equals(first.type()) ? facet.alpha() : facet.beta(), r.packs()));
            trip.need(model, "cover" + number++ + "_" + key, packs, 1);
        }
    }

    private static double wholes(double ratio) {
        return Math.ceil(ratio - 1e-9);
    }
}
