package depot.optimizer.model;

import depot.optimizer.plan.TripPlan.RoadSource;
import depot.optimizer.problem.ChargeLevel;
import depot.optimizer.problem.ChargerOption.Fit;
import depot.optimizer.problem.Trip;
import depot.optimizer.scenario.PackType;
import java.util.List;

/**
 * How one kind of day is run, read from a solver's point.
 *
 * @param unitWh what waiting chargers draw behind the unit of each circuit in each slice, Wh; empty without unit types
 * @param demandKw highest draw above what the base load alone is billed for
 * @param cycles charges of each pack type on one such day
 */
public record DayDecision(
        List<SpanDecision> spans,
        List<TripDecision> trips,
        List<List<Double>> unitWh,
        double demandKw,
        List<Integer> cycles) {

    /**
     * Chargers of one type loaded at one handover and emptied at another.
     *
     * @param slots packs that each charger may hold, one entry for each charger
     * @param fillings what each charger holds, in the order of charging; empty where the chargers' contents are left open
     */
    public record SpanDecision(
            Feed feed,
            int charger,
            int from,
            int to,
            List<Integer> slots,
            List<LoadDecision> loads,
            List<List<PackKind>> fillings) {}

    /**
     * Packs of one kind in a span.
     *
     * @param slots packs of the kind that one charger can hold
     * @param turns packs by their turn, one entry where turns do not matter
     */
    public record LoadDecision(PackKind kind, int pool, int slots, List<Integer> turns) {

        /** The pack type on the charger. */
        public Fit fit() {
            return kind.fit();
        }

        /** How far they are charged. */
        public ChargeLevel level() {
            return kind.level();
        }

        /** All packs. */
        public int count() {
            return turns.stream().mapToInt(Integer::intValue).sum();
        }
    }

    /**
     * One trip.
     *
     * @param shortWh one for each of the trip's needs
     */
    public record TripDecision(
            Trip trip, List<CarriedDecision> carried, List<RoadDecision> roads, List<Double> shortWh) {}

    /** Packs on board. */
    public record CarriedDecision(PackType type, int full, int eighty) {}

    /**
     * Packs recharged on the road.
     *
     * @param bank index of the power-bank type, -1: none
     * @param charger id of the portable charger's type, empty on a visit
     * @param takenWh energy taken from banks, Wh
     */
    public record RoadDecision(
            RoadSource source,
            int emptiedBy,
            int servesFrom,
            int from,
            int to,
            int bank,
            String charger,
            Fit fit,
            int packs,
            double takenWh) {}
}
