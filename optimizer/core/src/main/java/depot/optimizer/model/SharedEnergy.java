package depot.optimizer.model;

import depot.optimizer.mip.Expr;
import depot.optimizer.mip.MipModel;
import depot.optimizer.mip.Var;
import depot.optimizer.problem.ChargerOption;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.DepotProblem.CircuitSite;
import depot.optimizer.problem.Slice;
import java.util.List;
import java.util.TreeSet;

/**
 * Behind a load-sharing unit what is really drawn fits in every slice, and every batch gets its energy between loading and collection.
 *
 * <ul>
 *   <li>energy[k,s] &lt;= hours[s] * sum of W[k,u,s] unit[k,u], W = V pf min(unit amps, plug amps, breaker continuous amps - base[s])
 *   <li>a unit feeds whole chargers: with a type c of draw D[c] behind it, energy[k,s] &lt;= hours[s] * floor(W / D[c]) D[c]
 *   <li>energy[k,s] &lt;= hours[s] * sum of D[c] chargers busy in s
 *   <li>a charger that waits has less time left: for each slice start t, energy[k,s] after t &lt;= sum over batches in progress of chargers * what one
 *       can draw in its last minutes, at most the mean draw of a whole charge over them (each charge starts fast and ends slow)
 *   <li>for each pair of handovers a &lt; b: energy of the batches within [a, b] &lt;= sum of energy[k,s] within [a, b]. For windows on a line that is
 *       exactly when the energy can be shared out; over the whole cycle it is an equation.
 * </ul>
 */
final class SharedEnergy implements DayRule {

    private final Tightening tightening;

    SharedEnergy(Tightening tightening) {
        this.tightening = tightening;
    }

    @Override
    public void add(MipModel model, DepotProblem problem, CapacityVars capacity, DayVars day) {
        for (int k = 0; k < day.energy().length; k++) {
            for (int s = 0; s < day.energy()[k].length; s++) {
                addCap(model, problem, capacity, day, k, s);
                addBusy(model, problem, day, k, s);
            }
            addTails(model, problem, day, k);
            addWindows(model, day, k);
        }
    }

    private void addCap(MipModel model, DepotProblem problem, CapacityVars capacity, DayVars day, int k, int s) {
        Slice slice = day.kind().slices().get(s);
        CircuitSite site = problem.circuits().get(k);
        String key = "k" + k + "_" + slice.fromMinute() + "@" + day.tag();
        double hours = slice.hours();
        double[] watts = problem.unitTypes().stream()
                .mapToDouble(unit ->
                        unitWatts(site, unit.amps(), slice.circuitBaseAmps().get(k)))
                .toArray();
        Expr cap = new Expr().add(1, day.energy()[k][s]);
        double most = 0;
        for (int u = 0; u < watts.length; u++) {
            cap.add(-hours * watts[u] * tightening.of(k), capacity.unit[k][u]);
            most = Math.max(most, watts[u]);
        }
        double perAmp = hours * site.wattsPerAmp() * site.circuit().continuousFactor();
        cap.add(-perAmp, capacity.relief.breakerAmps(k));
        model.atMost("unitCap_" + key, cap, 0);
        for (int c = 0; c < problem.chargers().size(); c++) {
            double draw = problem.chargers().get(c).peakWatts();
            Expr whole = new Expr().add(1, day.energy()[k][s]).add(hours * most, capacity.sharedKind[k][c]);
            boolean cuts = false;
            for (int u = 0; u < watts.length; u++) {
                double fed = Math.floor(watts[u] / draw + 1e-9) * draw;
                cuts |= fed < watts[u] - 1e-6;
                whole.add(-hours * fed * tightening.of(k), capacity.unit[k][u]);
            }
            if (cuts) {
                whole.add(-perAmp, capacity.relief.breakerAmps(k));
                model.atMost("wholeChargers_c" + c + "_" + key, whole, hours * most);
            }
        }
    }

    private static double unitWatts(CircuitSite site, double unitAmps, double baseAmps) {
        return site.wattsPerAmp() * Math.min(Math.min(unitAmps, site.plugAmps()), site.usableAmps(baseAmps));
    }

    private static void addBusy(MipModel model, DepotProblem problem, DayVars day, int k, int s) {
        Slice slice = day.kind().slices().get(s);
        Expr energy = new Expr().add(1, day.energy()[k][s]);
        for (Batch batch : day.batches()) {
            if (batch.span().circuit() == k
                    && slice.within(batch.span().from(), batch.span().to())) {
                ChargerOption charger = problem.chargers().get(batch.span().charger());
                energy.add(-slice.hours() * charger.peakWatts(), batch.chargers());
            }
        }
        model.atMost("unitBusy_k" + k + "_" + slice.fromMinute() + "@" + day.tag(), energy, 0);
    }

    private static void addTails(MipModel model, DepotProblem problem, DayVars day, int k) {
        int end = day.end();
        for (Slice slice : day.kind().slices()) {
            int at = slice.fromMinute();
            Expr drawn = within(day, k, at, Integer.MAX_VALUE);
            boolean waiting = false;
            for (Batch batch : day.batches()) {
                BatchSpan span = batch.span();
                if (span.circuit() == k && span.to() > at) {
                    int minutes = span.to() - Math.max(at, span.from());
                    drawn.add(-tailWh(problem.chargers().get(span.charger()), minutes), batch.chargers());
                    waiting |= span.to() == end && span.from() < at;
                }
            }
            if (waiting) {
                model.atMost("unitTail_k" + k + "_" + at + "@" + day.tag(), drawn, 0);
            }
        }
    }

    /** Most that a charger draws in the last minutes of its work, in Wh. */
    private static double tailWh(ChargerOption charger, int minutes) {
        double most = 0;
        for (ChargerOption.Fit fit : charger.fits()) {
            int slow = fit.minutesToFull() - fit.minutesTo80();
            double mean = fit.gridWh() * minutes / fit.minutesToFull();
            double ofLastPack = fit.secondStageWatts() * Math.min(minutes, slow) / 60
                    + fit.firstStageWatts() * Math.max(0, minutes - slow) / 60;
            most = Math.max(most, Math.min(mean, ofLastPack));
        }
        return most * charger.type().chargingAtOnce();
    }

    private static void addWindows(MipModel model, DayVars day, int k) {
        List<Load> loads =
                day.allLoads().stream().filter(l -> l.batch().circuit() == k).toList();
        TreeSet<Integer> starts = new TreeSet<>();
        TreeSet<Integer> ends = new TreeSet<>();
        loads.forEach(l -> {
            starts.add(l.batch().from());
            ends.add(l.batch().to());
        });
        for (int a : starts) {
            for (int b : ends) {
                Expr need = new Expr();
                for (Load load : loads) {
                    if (load.batch().from() >= a && load.batch().to() <= b) {
                        need.add(load.gridWh(), load.count());
                    }
                }
                if (!need.isEmpty()) {
                    model.atMost(
                            "unitWindow_k" + k + "_" + a + "_" + b + "@" + day.tag(),
                            need.add(-1, within(day, k, a, b)),
                            0);
                }
            }
        }
        Expr all = within(day, k, 0, Integer.MAX_VALUE);
        loads.forEach(load -> all.add(-load.gridWh(), load.count()));
        model.equal("unitEnergy_k" + k + "@" + day.tag(), all, 0);
    }

    private static Expr within(DayVars day, int k, int from, int to) {
        Expr sum = new Expr();
        Var[] energy = day.energy()[k];
        for (int s = 0; s < energy.length; s++) {
            if (day.kind().slices().get(s).within(from, to)) {
                sum.add(1, energy[s]);
            }
        }
        return sum;
    }
}
