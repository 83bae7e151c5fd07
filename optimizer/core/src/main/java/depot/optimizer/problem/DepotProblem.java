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
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/**
 * Everything that the model of one depot needs for one phase.
 *
 * @param phase id of the phase
 * @param circuits the depot's circuits, existing and on offer, with their steady base load
 * @param crews that may work from the depot with packs in the phase, in the order of the scenario
 * @param petrolOnly the depot's crews that cannot change to packs yet
 * @param chargers charger types that may be mounted at the depot, with the packs that fit
 * @param portableChargers charger types that a crew may carry, with the packs that fit
 * @param choice ids of crews that need not work from here with packs: they may stay on petrol, or have other bases
 * @param mobile ids of crews that have other bases: without packs from here they do not come by
 * @param mustChange ids of the depot's crews that may not stay on petrol: without packs from here they work from elsewhere
 * @param moves owned pieces that may come from other depots or go there when the phase begins
 * @param packHealth share of the new capacity that packs are planned to have left
 * @param startMinute earliest departure of any day, rounded down to a handover: a day runs from here to the same time a day later
 * @param days the different kinds of day
 * @param tariff what is billed beside energy
 * @param shortagePerKwh price of a kWh that is not covered
 * @param shortageForbidden whether that price is only a penalty
 * @param baseCostPerYear what it costs a year that a crew works from here, by crew; those that cost nothing are left out
 * @param guestSavings what the home of a crew of another depot saves a year when it works from here, by crew
 * @param pieceLimits what the plan may not have more of, whatever it costs; empty but for questions about a plan
 */
public record DepotProblem(
        Depot depot,
        String phase,
        List<CircuitSite> circuits,
        List<Crew> crews,
        List<Crew> petrolOnly,
        List<PackType> packTypes,
        List<ChargerOption> chargers,
        List<ChargerOption> portableChargers,
        List<SharingUnitType> unitTypes,
        List<PowerBankType> bankTypes,
        List<Owned> owned,
        List<Season> seasons,
        Set<String> choice,
        Set<String> mobile,
        Set<String> mustChange,
        List<MoveOffer> moves,
        double packHealth,
        PackSharing sharing,
        int startMinute,
        List<DayKind> days,
        Billing tariff,
        PresentCost money,
        double shortagePerKwh,
        boolean shortageForbidden,
        Map<String, Double> baseCostPerYear,
        Map<String, Double> guestSavings,
        List<PieceLimit> pieceLimits,
        SolveSettings settings) {

    /** The same problem with limits of what the plan may have. */
    public DepotProblem with(List<PieceLimit> limits) {
        return new DepotProblem(
                depot,
                phase,
                circuits,
                crews,
                petrolOnly,
                packTypes,
                chargers,
                portableChargers,
                unitTypes,
                bankTypes,
                owned,
                seasons,
                choice,
                mobile,
                mustChange,
                moves,
                packHealth,
                sharing,
                startMinute,
                days,
                tariff,
                money,
                shortagePerKwh,
                shortageForbidden,
                baseCostPerYear,
                guestSavings,
                List.copyOf(limits),
                settings);
    }

    /** The same problem with more pieces that are there already. */
    public DepotProblem withMoreOwned(List<Owned> more) {
        List<Owned> all = new ArrayList<>(owned);
        all.addAll(more);
        return new DepotProblem(
                depot,
                phase,
                circuits,
                crews,
                petrolOnly,
                packTypes,
                chargers,
                portableChargers,
                unitTypes,
                bankTypes,
                List.copyOf(all),
                seasons,
                choice,
                mobile,
                mustChange,
                moves,
                packHealth,
                sharing,
                startMinute,
                days,
                tariff,
                money,
                shortagePerKwh,
                shortageForbidden,
                baseCostPerYear,
                guestSavings,
                pieceLimits,
                settings);
    }

    /** What the depot's own crews may get at other depots. */
    public List<Visit.Service> services() {
        return services(DayKind::visits);
    }

    /** What guests may get here. */
    public List<Visit.Service> guestServices() {
        return services(DayKind::guests);
    }

    private List<Visit.Service> services(Function<DayKind, List<Visit>> visits) {
        return days.stream()
                .flatMap(day -> visits.apply(day).stream())
                .distinct()
                .flatMap(visit -> visit.services().stream())
                .toList();
    }

    /**
     * Whose the packs of a load are: a pool of the depot, or a crew that visits it.
     *
     * @param pool place in {@link #pools()}; places after these are those of {@link #guestServices()}
     */
    public String owner(int pool) {
        int pools = pools().size();
        return pool < pools
                ? pools().get(pool)
                : guestServices().get(pool - pools).visit().crew();
    }

    /** Whether a crew belongs to another depot. */
    public boolean guest(String crew) {
        return guestSavings.containsKey(crew);
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
     * Pieces that may change depots.
     *
     * @param item id of their type
     * @param cost of one that comes, when it comes
     * @param here owned here, so that at most so many go
     * @param elsewhere owned at other depots, so that at most so many come
     */
    public record MoveOffer(String item, double cost, int here, int elsewhere) {}

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
