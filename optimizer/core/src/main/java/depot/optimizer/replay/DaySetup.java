package depot.optimizer.replay;

import depot.optimizer.plan.UnitFeed;
import depot.optimizer.scenario.Circuit;
import depot.optimizer.scenario.SharingUnitType;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a day brings to the equipment, minute by minute of the cycle, worked out once for all of its runs.
 */
final class DaySetup {
    private final DayCase day;
    private final double[][] baseAmps;
    private final double[] supplyBaseAmps;
    private final double[][] limitWatts;
    private final double[][] roomWatts;
    private final List<FeedPlan> feeds;
    private final double[][] bankWatts;
    private final List<BankRecharge> banks;
    private final double[] demandRoomWatts;

    private DaySetup(
            DayCase day,
            double[][] baseAmps,
            double[] supplyBaseAmps,
            double[][] limitWatts,
            double[][] roomWatts,
            List<FeedPlan> feeds,
            double[][] bankWatts,
            List<BankRecharge> banks,
            double[] demandRoomWatts) {
        this.day = day;
        this.baseAmps = baseAmps;
        this.supplyBaseAmps = supplyBaseAmps;
        this.limitWatts = limitWatts;
        this.roomWatts = roomWatts;
        this.feeds = feeds;
        this.bankWatts = bankWatts;
        this.banks = banks;
        this.demandRoomWatts = demandRoomWatts;
    }

    DayCase day() {
        return day;
    }

    /** By circuit and minute. */
    double[][] baseAmps() {
        return baseAmps;
    }

    double[] supplyBaseAmps() {
        return supplyBaseAmps;
    }

    /** By circuit and minute: what chargers and banks may draw. */
    double[][] limitWatts() {
        return limitWatts;
    }

    /** By unit and minute: what it may draw. */
    double[][] roomWatts() {
        return roomWatts;
    }

    /** By unit. */
    List<FeedPlan> feeds() {
        return feeds;
    }

    /** By circuit and minute: banks that recharge. */
    double[][] bankWatts() {
        return bankWatts;
    }

    /** By minute: what charging may draw beside the base load and the banks within the demand paid for. */
    double[] demandRoomWatts() {
        return demandRoomWatts;
    }

    /** Every recharge. */
    List<BankRecharge> banks() {
        return banks;
    }

    static DaySetup of(Yard yard, DemandCeiling ceiling, DayCase day) {
        DepotTables tables = yard.tables();
        DayOfWeek weekday = day.first().day();
        int start = tables.startMinute();
        int circuits = yard.circuits().size();
        double[][] base = new double[circuits][];
        double[][] limits = new double[circuits][BaseLoads.DAY];
        for (int c = 0; c < circuits; c++) {
            Circuit circuit = yard.circuits().get(c);
            base[c] = tables.baseLoads().cycle(Optional.of(circuit.id()), weekday, start);
            for (int i = 0; i < BaseLoads.DAY; i++) {
                double amps = circuit.breakerAmps() * circuit.continuousFactor() - base[c][i];
                limits[c][i] = Line.of(circuit).watts(Math.max(0, amps));
            }
        }
        List<BankRecharge> banks = BankRecharge.of(tables, yard.plan(), day);
        double[][] bankWatts = bankWatts(yard, banks);
        return new DaySetup(
                day,
                base,
                tables.baseLoads().cycle(Optional.empty(), weekday, start),
                limits,
                rooms(yard, limits),
                feeds(yard, day),
                bankWatts,
                banks,
                ceiling.roomForCharging(day, bankWatts));
    }

    private static double[][] rooms(Yard yard, double[][] limits) {
        double[][] rooms = new double[yard.units().size()][BaseLoads.DAY];
        for (int u = 0; u < rooms.length; u++) {
            int c = yard.units().get(u).circuitIndex();
            Circuit circuit = yard.circuits().get(c);
            SharingUnitType unit = yard.unitType(circuit.id()).orElseThrow();
            double amps = Math.min(unit.amps(), circuit.plugAmps().orElse(Double.MAX_VALUE));
            double watts = Line.of(circuit).watts(amps);
            for (int i = 0; i < BaseLoads.DAY; i++) {
                rooms[u][i] = Math.min(watts, limits[c][i]);
            }
        }
        return rooms;
    }

    private static List<FeedPlan> feeds(Yard yard, DayCase day) {
        List<FeedPlan> feeds = new ArrayList<>();
        for (UnitController unit : yard.units()) {
            List<UnitFeed> own = day.plan().feeds().stream()
                    .filter(f -> f.circuit().equals(unit.circuit()))
                    .toList();
            feeds.add(new FeedPlan(own, day.prices(), yard.tables().startMinute()));
        }
        return feeds;
    }

    private static double[][] bankWatts(Yard yard, List<BankRecharge> banks) {
        double[][] watts = new double[yard.circuits().size()][BaseLoads.DAY];
        for (BankRecharge bank : banks) {
            int c = yard.circuitIndex(bank.placement().circuit());
            int from = bank.fromMinute() - yard.tables().startMinute();
            for (int i = Math.max(0, from); c >= 0 && i < Math.min(BaseLoads.DAY, from + bank.minutes()); i++) {
                watts[c][i] += bank.type().rechargeWatts();
            }
        }
        return watts;
    }

    /** Base load of the depot by minute of the cycle, in watts. */
    double[] baseWatts(Yard yard) {
        return yard.baseWatts(day.first().day());
    }
}
