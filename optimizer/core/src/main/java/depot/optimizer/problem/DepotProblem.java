package depot.optimizer.problem;

import depot.optimizer.finance.PresentCost;
import depot.optimizer.scenario.Circuit;
import depot.optimizer.scenario.Crew;
import depot.optimizer.scenario.Depot;
import depot.optimizer.scenario.Owned;
import depot.optimizer.scenario.PackSharing;
import depot.optimizer.scenario.PackType;
import depot.optimizer.scenario.PowerBankType;
import depot.optimizer.scenario.Season;
import depot.optimizer.scenario.SharingUnitType;
import depot.optimizer.scenario.SolveSettings;
import java.util.List;
import java.util.Set;

/**
 * Everything that the model of one depot needs.
 *
 * @param circuits the depot's circuits, existing and on offer, with their steady base load
 * @param crews that work from the depot
 * @param chargers charger types that may be mounted at the depot, with the packs that fit
 * @param portableChargers charger types that a crew may carry, with the packs that fit
 * @param petrolChoice ids of crews that may stay on petrol for good, at their yearly petrol cost
 * @param packHealth share of the new capacity that packs are planned to have left
 * @param startMinute earliest departure of any day, rounded down to a handover: a day runs from here to the same time a day later
 * @param days the different kinds of day
 * @param tariff what is billed beside energy
 * @param shortagePerKwh price of a kWh that is not covered
 * @param shortageForbidden whether that price is only a penalty
 * @param crewBaseCostPerYear what the crews' bases cost a year
 * @param pieceLimits what the plan may not have more of, whatever it costs; empty but for questions about a plan
 */
public record DepotProblem(
        Depot depot,
        List<CircuitSite> circuits,
        List<Crew> crews,
        List<PackType> packTypes,
        List<ChargerOption> chargers,
        List<ChargerOption> portableChargers,
        List<SharingUnitType> unitTypes,
        List<PowerBankType> bankTypes,
        List<Owned> owned,
        List<Season> seasons,
        Set<String> petrolChoice,
        double packHealth,
        PackSharing sharing,
        int startMinute,
        List<DayKind> days,
        Billing tariff,
        PresentCost money,
        double shortagePerKwh,
        boolean shortageForbidden,
        double crewBaseCostPerYear,
        List<PieceLimit> pieceLimits,
        SolveSettings settings) {

    /** The same problem with limits of what the plan may have. */
    public DepotProblem with(List<PieceLimit> limits) {
        return new DepotProblem(
                depot,
                circuits,
                crews,
                packTypes,
                chargers,
                portableChargers,
                unitTypes,
                bankTypes,
                owned,
                seasons,
                petrolChoice,
                packHealth,
                sharing,
                startMinute,
                days,
                tariff,
                money,
                shortagePerKwh,
                shortageForbidden,
                crewBaseCostPerYear,
                List.copyOf(limits),
                settings);
    }

    /** End of a day cycle. */
    public int endMinute() {
        return startMinute + 1440;
    }

    /** Energy that a full pack gives to tools on a day, at the planned health and the season's temperature, in Wh. */
    public double usableWh(PackType pack, DayKind day) {
        return pack.capacityWh() * pack.usableShare() * packHealth * day.packCapacityFactor();
    }

    /** Pools of packs: one for the depot, or one for each crew. */
    public List<String> pools() {
        return sharing == PackSharing.DEPOT
                ? List.of(depot.id())
                : crews.stream().map(Crew::id).toList();
    }

    /** The pool that a crew takes its packs from. */
    public String poolOf(String crew) {
        return sharing == PackSharing.DEPOT ? depot.id() : crew;
    }

    /**
     * How many pieces of an item are there already.
     *
     * @param crew whose, or empty for the depot's
     */
    public int ownedCount(String item, String crew) {
        return owned.stream()
                .filter(row -> row.item().equals(item) && row.crew().orElse("").equals(crew))
                .mapToInt(Owned::count)
                .sum();
    }

    /**
     * A circuit and the highest current that it feeds already at any time of any week.
     *
     * @param peakBaseAmps at the circuit's voltage
     */
    public record CircuitSite(Circuit circuit, double peakBaseAmps) {

        /** Volt-amperes of one ampere. */
        public double vaPerAmp() {
            return Electricity.vaPerAmp(circuit.volts(), circuit.phases());
        }

        /** Watts that one ampere gives to chargers. */
        public double wattsPerAmp() {
            return vaPerAmp() * circuit.powerFactor();
        }

        /** Current that may flow for hours beside a base load, in amperes; never below zero. */
        public double usableAmps(double baseAmps) {
            return Math.max(0, circuit.breakerAmps() * circuit.continuousFactor() - baseAmps);
        }

        /** Limit of one plug, in amperes. */
        public double plugAmps() {
            return Math.min(circuit.plugAmps().orElse(Double.POSITIVE_INFINITY), circuit.breakerAmps());
        }
    }

    /**
     * What is billed beside energy.
     *
     * @param demandPricePerKwMonth 0: no demand charge
     * @param basePeakKw highest average of the base load alone, which is billed whatever is planned
     */
    public record Billing(double standingPerDay, double demandPricePerKwMonth, int demandMinutes, double basePeakKw) {

        /** Whether the highest average draw is billed. */
        public boolean billsDemand() {
            return demandPricePerKwMonth > 0;
        }
    }
}
