package depot.optimizer.advice.thumb;

import depot.optimizer.plan.ChargerLoad;
import depot.optimizer.plan.ChargerLoad.Level;
import depot.optimizer.plan.ChargerLoad.Loaded;
import depot.optimizer.plan.EnergyUse;
import depot.optimizer.problem.ChargerOption;
import depot.optimizer.problem.ChargerOption.Fit;
import depot.optimizer.problem.DayKind;
import depot.optimizer.problem.Slice;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Adds up what plain chargers draw from the grid, slice by slice: each charging position takes its next pack as soon as it is done with one. */
final class LoadEnergy {

    private final DayKind kind;
    private final Map<String, ChargerOption> options;
    private final double[] wattHours;

    private LoadEnergy(DayKind kind, List<FamilyCharger> chargers) {
        this.kind = kind;
        options = chargers.stream()
                .collect(Collectors.toMap(charger -> charger.placement().id(), FamilyCharger::option));
        wattHours = new double[kind.slices().size()];
    }

    static List<EnergyUse> of(DayKind kind, List<FamilyCharger> chargers, List<ChargerLoad> loads) {
        LoadEnergy energy = new LoadEnergy(kind, chargers);
        loads.forEach(energy::add);
        List<EnergyUse> uses = new ArrayList<>();
        for (int s = 0; s < energy.wattHours.length; s++) {
            Slice slice = kind.slices().get(s);
            if (energy.wattHours[s] > 0) {
                double kwh = energy.wattHours[s] / 1000;
                uses.add(new EnergyUse(slice.fromMinute(), slice.toMinute(), kwh, slice.pricePerKwh()));
            }
        }
        return List.copyOf(uses);
    }

    private void add(ChargerLoad load) {
        ChargerOption option = options.get(load.charger());
        Map<String, Fit> fits = option.fits().stream()
                .collect(Collectors.toMap(fit -> fit.pack().id(), Function.identity()));
        int[] free = new int[option.type().chargingAtOnce()];
        Arrays.fill(free, load.loadMinute());
        for (Loaded packs : load.packs()) {
            Fit fit = fits.get(packs.packType());
            for (int i = 0; i < packs.count(); i++) {
                Arrays.sort(free);
                int knee = free[0] + fit.minutesTo80();
                spread(free[0], knee, 0.8 * fit.gridWh());
                free[0] = knee;
                if (packs.level() == Level.FULL) {
                    int full = knee + fit.minutesToFull() - fit.minutesTo80();
                    spread(knee, full, 0.2 * fit.gridWh());
                    free[0] = full;
                }
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
