package depot.optimizer.solve;

import depot.optimizer.model.DayDecision;
import depot.optimizer.model.DayDecision.RoadDecision;
import depot.optimizer.model.DayDecision.TripDecision;
import depot.optimizer.plan.ChargerLoad;
import depot.optimizer.plan.ChargerLoad.Level;
import depot.optimizer.plan.ChargerLoad.Loaded;
import depot.optimizer.plan.ChargerPlacement;
import depot.optimizer.plan.EnergyUse;
import depot.optimizer.problem.ChargerOption;
import depot.optimizer.problem.ChargerOption.Fit;
import depot.optimizer.problem.DayKind;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.Slice;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Adds up the energy that a planned day draws from the grid, slice by slice. */
final class EnergyLedger {

    private final DepotProblem problem;
    private final DayKind kind;
    private final double[] wattHours;
    private final Map<String, ChargerPlacement> placements;
    private final Map<String, ChargerOption> options;

    EnergyLedger(DepotProblem problem, DayKind kind, List<ChargerPlacement> chargers) {
        this.problem = problem;
        this.kind = kind;
        wattHours = new double[kind.slices().size()];
        placements = chargers.stream().collect(Collectors.toMap(ChargerPlacement::id, Function.identity()));
        options = problem.chargers().stream()
                .collect(Collectors.toMap(option -> option.type().id(), Function.identity()));
    }

    List<EnergyUse> use(DayDecision day, List<ChargerLoad> loads) {
        loads.stream().filter(this::atOnce).forEach(this::addAtOnce);
        for (List<Double> circuit : day.unitWh()) {
            for (int s = 0; s < circuit.size(); s++) {
                wattHours[s] += circuit.get(s);
            }
        }
        day.trips().forEach(this::addBanks);
        List<EnergyUse> uses = new ArrayList<>();
        for (int s = 0; s < wattHours.length; s++) {
            Slice slice = kind.slices().get(s);
            if (wattHours[s] > 1e-6) {
                uses.add(new EnergyUse(slice.fromMinute(), slice.toMinute(), wattHours[s] / 1000, slice.pricePerKwh()));
            }
        }
        return List.copyOf(uses);
    }

    /** Behind a unit what is collected before the end of the cycle sits on a priority outlet and does not wait. */
    private boolean atOnce(ChargerLoad load) {
        return !placements.get(load.charger()).shared() || load.collectMinute() < problem.endMinute();
    }

    /** Follows the turns on one charger: each charging position takes the next pack as soon as it is done with the one before. */
    private void addAtOnce(ChargerLoad load) {
        ChargerOption option = options.get(placements.get(load.charger()).chargerType());
        int[] free = new int[option.type().chargingAtOnce()];
        Arrays.fill(free, load.loadMinute());
        for (Loaded packs : load.packs()) {
            Fit fit = option.fits().stream()
                    .filter(f -> f.pack().id().equals(packs.packType()))
                    .findFirst()
                    .orElseThrow();
            for (int i = 0; i < packs.count(); i++) {
                int position = earliest(free);
                int start = free[position];
                spread(start, start + fit.minutesTo80(), 0.8 * fit.gridWh());
                free[position] = start + fit.minutesTo80();
                if (packs.level() == Level.FULL) {
                    spread(start + fit.minutesTo80(), start + fit.minutesToFull(), 0.2 * fit.gridWh());
                    free[position] = start + fit.minutesToFull();
                }
            }
        }
    }

    private static int earliest(int[] free) {
        int best = 0;
        for (int i = 1; i < free.length; i++) {
            best = free[i] < free[best] ? i : best;
        }
        return best;
    }

    private void addBanks(TripDecision trip) {
        for (RoadDecision road : trip.roads()) {
            if (road.bank() >= 0) {
                int back = kind.lastReturn(trip.trip().crew());
                spread(back, back + problem.bankTypes().get(road.bank()).rechargeMinutes(), road.takenWh());
            }
        }
    }

    /** Spreads energy evenly between two minutes. */
    private void spread(int from, int to, double wh) {
        for (int s = 0; s < wattHours.length; s++) {
            Slice slice = kind.slices().get(s);
            int minutes = Math.min(to, slice.toMinute()) - Math.max(from, slice.fromMinute());
            if (minutes > 0) {
                wattHours[s] += wh * minutes / (to - from);
            }
        }
    }
}
