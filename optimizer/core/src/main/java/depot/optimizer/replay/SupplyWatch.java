package depot.optimizer.replay;

import depot.optimizer.plan.BankPlacement;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.scenario.Circuit;
import depot.optimizer.scenario.Depot;
import depot.optimizer.scenario.PowerBankType;
import java.util.List;

/**
 * What the supply carries at each minute, in volt-amperes: plain chargers and banks with their plate whether they draw or not, units with
 * what they draw, and the base load.
 */
final class SupplyWatch {
    /** Continuous-load factor of a supply. */
    static final double CONTINUOUS = 0.8;

    private final Yard yard;
    private final double plainVa;
    private final boolean[] shared;

    SupplyWatch(Yard yard) {
        this.yard = yard;
        List<Circuit> circuits = yard.circuits();
        shared = new boolean[circuits.size()];
        for (UnitController unit : yard.units()) {
            shared[unit.circuitIndex()] = true;
        }
        double va = 0;
        for (ChargerBench bench : yard.plain()) {
            va += bench.plateWatts() / circuits.get(bench.circuit()).powerFactor();
        }
        for (BankPlacement bank : yard.plan().banks()) {
            PowerBankType type = yard.tables().bankTypes().get(bank.bankType());
            Circuit circuit = yard.tables().circuits().get(bank.circuit());
            va += type == null || circuit == null ? 0 : type.rechargeWatts() / circuit.powerFactor();
        }
        plainVa = va;
    }

    /** Most that it may carry. */
    static double limitVa(DepotTables tables, DepotPlan plan) {
        Depot depot = tables.depot();
        boolean upgraded = plan.supplyUpgraded() && depot.upgradeOffered();
        double amps = upgraded ? depot.supplyUpgradeAmps() : depot.supplyAmps();
        return Line.of(depot).voltAmperes(amps * CONTINUOUS);
    }

    /** Volt-amperes by minute of the cycle that are left for units beside everything else. */
    double[] roomForUnits(DaySetup setup) {
        double[] room = carried(setup, new double[yard.circuits().size()][BaseLoads.DAY]);
        double limit = limitVa(yard.tables(), yard.plan());
        for (int i = 0; i < room.length; i++) {
            room[i] = limit - room[i];
        }
        return room;
    }

    /** Volt-amperes by minute of the cycle, from the watts drawn by circuit and minute. */
    double[] carried(DaySetup setup, double[][] wattsByCircuit) {
        double[] va = new double[BaseLoads.DAY];
        Line supply = Line.of(yard.tables().depot());
        for (int i = 0; i < va.length; i++) {
            va[i] = plainVa + supply.voltAmperes(setup.supplyBaseAmps()[i]);
        }
        for (int c = 0; c < wattsByCircuit.length; c++) {
            Circuit circuit = yard.circuits().get(c);
            Line line = Line.of(circuit);
            for (int i = 0; i < va.length; i++) {
                va[i] += line.voltAmperes(setup.baseAmps()[c][i])
                        + (shared[c] ? wattsByCircuit[c][i] / circuit.powerFactor() : 0);
            }
        }
        return va;
    }
}
