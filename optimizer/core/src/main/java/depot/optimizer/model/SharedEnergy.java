package depot.optimizer.model;

import depot.optimizer.mip.Expr;
import depot.optimizer.mip.MipModel;
import depot.optimizer.mip.Var;
import depot.optimizer.problem.ChargerOption;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.DepotProblem.CircuitSite;
import depot.optimizer.problem.Slice;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Behind load-sharing units what is really drawn fits in every slice, and every batch gets its energy between loading and collection. Units are taken
 * together: which charger a waiting batch goes into, and so behind which unit, is settled when the plan is written out.
 *
 * <ul>
 *   <li>a unit feeds whole chargers of the {@link UnitMix} behind it: energy[k,s] &lt;= hours[s] * sum of F[k,u,s,x] mixed[k,u,x] times the share of
 *       {@link Tightening}, F[k,u,s,x] the least over c in x of floor(W / D[c]) D[c], W[k,u,s] = V pf min(unit amps, plug amps, breaker continuous amps -
 *       base[s])
 *   <li>energy[k,s] &lt;= hours[s] * sum of D[c] shared[k,c]; sum over s of energy[k,s] &lt;= sum of what a charger can take in a night * shared[k,c]
 *   <li>sum over k of energy[k,s] &lt;= hours[s] * sum of D[c] waiting chargers loaded by s
 *   <li>priority outlets are sure: sum of D[c] priority[k,c] &lt;= W[k,u] at the highest base load; and sum over k of energy[k,s] + hours[s] * D[c] of
 *       priority batches in progress &lt;= hours[s] * sum of W[k,u,s] unit[k,u]
 *   <li>a charger that waits has less time left: for each slice start t, energy after t &lt;= sum over g of left[g,t], with left[g,t] &lt;= energy of the
 *       waiting batches of g, and &lt;= chargers * what one can draw in its last minutes, at most the mean draw of a whole charge over them (each charge
 *       starts fast and ends slow); g is a span where the price falls at t, elsewhere all spans of a charger type
 *   <li>for each loading time a: energy of the waiting batches loaded from a on &lt;= energy drawn from a on; over the whole cycle it is an equation
 * </ul>
 */
final class SharedEnergy implements DayRule {

    /** Share of the time left until the end of the cycle that the work of a charger may take up while it waits. */
    private static final double WAITING_SHARE = 0.9;

    private final Tightening tightening;

    SharedEnergy(Tightening tightening) {
        this.tightening = tightening;
    }

    @Override
    public void add(MipModel model, DepotProblem problem, CapacityVars capacity, DayVars day) {
        List<Load> waiting =
                day.allLoads().stream().filter(l -> l.batch().waits()).toList();
        if (waiting.isEmpty()) {
            return;
        }
        int firstWaiting =
                waiting.stream().mapToInt(l -> l.batch().from()).min().orElseThrow();
        for (int s = 0; s < day.kind().slices().size(); s++) {
            if (day.kind().slices().get(s).fromMinute() >= firstWaiting) {
                for (int k = 0; k < day.energy().length; k++) {
                    addCap(model, problem, capacity, day, k, s);
                    addChargers(model, problem, capacity, day, k, s);
                }
                addBusy(model, problem, day, s);
            }
            addAtOnce(model, problem, capacity, day, s);
        }
        for (int k = 0; k < day.energy().length; k++) {
            addNight(model, problem, capacity, day, k);
        }
        addTails(model, problem, day);
        addWindows(model, day, waiting);
    }

    /** Watts that chargers draw in a slice that are fed at once behind units. */
    static Expr drawnAtOnce(DepotProblem problem, DayVars day, Slice slice) {
        Expr watts = new Expr();
        for (Batch batch : day.batches()) {
            int from = batch.span().from();
            int done = Math.min(batch.span().to(), from + batch.busyMinutes());
            if (batch.span().feed() == Feed.PRIORITY && slice.fromMinute() < done && slice.toMinute() > from) {
                watts.add(problem.chargers().get(batch.span().charger()).peakWatts(), batch.chargers());
            }
        }
        return watts;
    }

    private void addAtOnce(MipModel model, DepotProblem problem, CapacityVars capacity, DayVars day, int s) {
        Slice slice = day.kind().slices().get(s);
        Expr watts = drawnAtOnce(problem, day, slice);
        if (watts.isEmpty()) {
            return;
        }
        for (int k = 0; k < day.energy().length; k++) {
            CircuitSite site = problem.circuits().get(k);
            watts.add(1 / slice.hours(), day.energy()[k][s]);
            for (int u = 0; u < problem.unitTypes().size(); u++) {
                double room = unitWatts(
                        site,
                        problem.unitTypes().get(u).amps(),
                        slice.circuitBaseAmps().get(k));
                watts.add(-room, capacity.unit[k][u]);
            }
            double perAmp = site.wattsPerAmp() * site.circuit().continuousFactor();
            watts.add(-perAmp, capacity.relief.breakerAmps(k));
        }
        model.atMost("unitsAtOnce_" + slice.fromMinute() + "@" + day.tag(), watts, 0);
    }

    private void addCap(MipModel model, DepotProblem problem, CapacityVars capacity, DayVars day, int k, int s) {
        Slice slice = day.kind().slices().get(s);
        CircuitSite site = problem.circuits().get(k);
        String key = "k" + k + "_" + slice.fromMinute() + "@" + day.tag();
        double hours = slice.hours();
        double share = hours * tightening.of(k);
        Expr cap = new Expr().add(1, day.energy()[k][s]);
        for (int u = 0; u < capacity.unit[k].length; u++) {
            double watts = unitWatts(
                    site,
                    problem.unitTypes().get(u).amps(),
                    slice.circuitBaseAmps().get(k));
            List<UnitMix> mixes = capacity.mixes.get(k).get(u);
            for (int m = 0; m < mixes.size(); m++) {
                cap.add(-share * mixes.get(m).fedWatts(problem, watts), capacity.mixed[k][u][m]);
            }
        }
        double perAmp = hours * site.wattsPerAmp() * site.circuit().continuousFactor();
        cap.add(-perAmp, capacity.relief.breakerAmps(k));
        model.atMost("unitCap_" + key, cap, 0);
    }

    /** What a unit on a circuit may draw beside a base load, in W. */
    static double unitWatts(CircuitSite site, double unitAmps, double baseAmps) {
        return site.wattsPerAmp() * Math.min(Math.min(unitAmps, site.plugAmps()), site.usableAmps(baseAmps));
    }

    private static void addChargers(
            MipModel model, DepotProblem problem, CapacityVars capacity, DayVars day, int k, int s) {
        Slice slice = day.kind().slices().get(s);
        Expr energy = new Expr().add(1, day.energy()[k][s]);
        for (int c = 0; c < problem.chargers().size(); c++) {
            energy.add(-slice.hours() * problem.chargers().get(c).peakWatts(), capacity.shared[k][c]);
        }
        model.atMost("unitChargers_k" + k + "_" + slice.fromMinute() + "@" + day.tag(), energy, 0);
    }

    private static void addNight(MipModel model, DepotProblem problem, CapacityVars capacity, DayVars day, int k) {
        Expr energy = within(day, k, 0);
        for (int c = 0; c < problem.chargers().size(); c++) {
            double most = 0;
            for (Load load : day.allLoads()) {
                if (load.batch().waits() && load.batch().charger() == c) {
                    most = Math.max(most, load.slots() * load.gridWh());
                }
            }
            energy.add(-most, capacity.shared[k][c]);
        }
        model.atMost("unitNight_k" + k + "@" + day.tag(), energy, 0);
    }

    private static void addBusy(MipModel model, DepotProblem problem, DayVars day, int s) {
        Slice slice = day.kind().slices().get(s);
        Expr energy = new Expr();
        for (Var[] circuit : day.energy()) {
            energy.add(1, circuit[s]);
        }
        for (Batch batch : day.batches()) {
            if (batch.span().waits() && batch.span().from() <= slice.fromMinute()) {
                ChargerOption charger = problem.chargers().get(batch.span().charger());
                energy.add(-slice.hours() * charger.peakWatts(), batch.chargers());
            }
        }
        model.atMost("unitBusy_" + slice.fromMinute() + "@" + day.tag(), energy, 0);
    }

    private static void addTails(MipModel model, DepotProblem problem, DayVars day) {
        List<Slice> slices = day.kind().slices();
        for (int s = 0; s < slices.size(); s++) {
            int at = slices.get(s).fromMinute();
            boolean cheaper = s > 0
                    && slices.get(s).pricePerKwh().compareTo(slices.get(s - 1).pricePerKwh()) < 0;
            // Where waiting pays every span counts for itself; elsewhere chargers of a type are taken together.
            Map<String, List<BatchSpan>> groups = day.loads().keySet().stream()
                    .filter(BatchSpan::waits)
                    .collect(Collectors.groupingBy(
                            span -> cheaper ? span.key() : "c" + span.charger(), TreeMap::new, Collectors.toList()));
            if (day.loads().keySet().stream().anyMatch(span -> span.waits() && span.from() < at)) {
                Expr drawn = after(day, at);
                groups.forEach((key, spans) ->
                        drawn.add(-1, stillToDraw(model, problem, day, spans, key + "_" + at + "@" + day.tag(), at)));
                model.atMost("unitTail_" + at + "@" + day.tag(), drawn, 0);
            }
        }
    }

    /** What waiting chargers may have left to draw at a minute: no more than they need, and than there is time for. */
    private static Var stillToDraw(
            MipModel model, DepotProblem problem, DayVars day, List<BatchSpan> spans, String key, int at) {
        Var left = model.continuous("left_" + key, 0, MipModel.INFINITY);
        Expr needed = new Expr().add(1, left);
        Expr time = new Expr().add(1, left);
        for (BatchSpan span : spans) {
            for (Load load : day.loads().get(span)) {
                needed.add(-load.gridWh(), load.count());
            }
        }
        for (Batch batch : day.batches()) {
            BatchSpan span = batch.span();
            if (spans.contains(span)) {
                int minutes = (int) (WAITING_SHARE * (span.to() - Math.max(at, span.from())));
                time.add(-tailWh(problem.chargers().get(span.charger()), minutes), batch.chargers());
            }
        }
        model.atMost("leftNeeded_" + key, needed, 0);
        model.atMost("leftTime_" + key, time, 0);
        return left;
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

    private static void addWindows(MipModel model, DayVars day, List<Load> waiting) {
        TreeSet<Integer> starts = new TreeSet<>();
        waiting.forEach(l -> starts.add(l.batch().from()));
        int first = starts.first();
        for (int a : starts) {
            Expr drawn = after(day, a);
            waiting.stream().filter(l -> l.batch().from() >= a).forEach(l -> drawn.add(-l.gridWh(), l.count()));
            if (a == first) {
                model.equal("unitEnergy@" + day.tag(), drawn, 0);
            } else {
                model.atLeast("unitWindow_" + a + "@" + day.tag(), drawn, 0);
            }
        }
    }

    private static Expr after(DayVars day, int minute) {
        Expr sum = new Expr();
        for (int k = 0; k < day.energy().length; k++) {
            sum.add(1, within(day, k, minute));
        }
        return sum;
    }

    private static Expr within(DayVars day, int k, int from) {
        Expr sum = new Expr();
        Var[] energy = day.energy()[k];
        for (int s = 0; s < energy.length; s++) {
            if (day.kind().slices().get(s).fromMinute() >= from) {
                sum.add(1, energy[s]);
            }
        }
        return sum;
    }
}
