package depot.optimizer.model;

import depot.optimizer.mip.Expr;
import depot.optimizer.mip.MipModel;
import depot.optimizer.mip.Var;
import depot.optimizer.problem.Trip;
import depot.optimizer.problem.Trip.FamilyNeed;
import depot.optimizer.scenario.PackType;
import java.util.List;

/**
 * One trip's decisions.
 *
 * @param crew index of the crew
 * @param electric 1 where the crew works with packs, without which the trip needs nothing; null: it has to
 * @param pool index of the pool that its packs come from
 * @param carried packs on board, one entry per pack type that fits a family it needs
 * @param shortWh energy not covered, one for each of the trip's needs
 * @param roads packs recharged on the way
 */
record TripVars(
        Trip trip, int crew, Var electric, int pool, List<Carried> carried, List<Var> shortWh, List<RoadLoad> roads) {

    /**
     * Packs of one type on board.
     *
     * @param pack index of the pack type
     * @param fullWh usable energy of a full pack on that day
     */
    record Carried(int pack, PackType type, double fullWh, Var full, Var eighty) {

        Expr count() {
            return new Expr().add(1, full).add(1, eighty);
        }
    }

    /** Adds the row: what is there is at least an amount, if the crew works with packs. */
    void need(MipModel model, String name, Expr there, double amount) {
        if (electric == null) {
            model.atLeast(name, there, amount);
        } else {
            model.atLeast(name, there.add(-amount, electric), 0);
        }
    }

    /** What is on board for a need. */
    List<Carried> carriedFor(FamilyNeed need) {
        return carried.stream()
                .filter(c -> c.type().family().equals(need.family()))
                .toList();
    }

    /** Packs recharged for a need. */
    List<RoadLoad> roadsFor(FamilyNeed need) {
        return roads.stream()
                .filter(r -> r.fit().pack().family().equals(need.family()))
                .toList();
    }

    /** Usable energy of a recharged pack on that day, in Wh. */
    double fullWh(RoadLoad road) {
        return carriedLike(road).fullWh();
    }

    /** Usable energy that a recharged pack gives after it on that day, in Wh. */
    double givenWh(RoadLoad road) {
        return road.share() * fullWh(road);
    }

    /** Index of a recharged pack's type. */
    int packIndex(RoadLoad road) {
        return carriedLike(road).pack();
    }

    private Carried carriedLike(RoadLoad road) {
        return carried.stream()
                .filter(c -> c.type().equals(road.fit().pack()))
                .findFirst()
                .orElseThrow();
    }
}
