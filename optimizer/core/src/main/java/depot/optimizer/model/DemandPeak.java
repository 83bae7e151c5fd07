package depot.optimizer.model;

import depot.optimizer.mip.Expr;
import depot.optimizer.mip.MipModel;
import depot.optimizer.mip.Var;
import depot.optimizer.problem.ChargerOption;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.Slice;
import depot.optimizer.scenario.PowerBankType;
import depot.optimizer.scenario.SharingUnitType;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Where the highest average draw of a month is billed, no slice may draw more than is paid for.
 *
 * <p>For each season and slice s, in kW: base[s] - highest average of the base load + draw of chargers that do not wait and are not done by then +
 * sum over k of energy[k,s] / (hours[s] * share) + power banks that recharge &lt;= peak[season], with the share of the demand that waiting chargers are
 * sure to use. Slices are longer than the tariff's interval or lie beside slices of which the
 * same holds, so that no interval's average is higher.
 *
 * <p>Where {@link Tightening} asks for it, a charger that waits is fed whole or not at all: in a slice in which units draw anything, D[c] - room of the slice
 * &lt;= peak[season] for every batch of chargers that is loaded then. That is more than the truth, in which only those chargers need room that are fed.
 */
final class DemandPeak implements DayRule {

    /** Share of the demand paid for that is used on average while chargers wait: the units of a depot share it, a whole charger at a time. */
    private static final double DEMAND_SHARE = 0.95;

    private final Tightening tightening;

    DemandPeak(Tightening tightening) {
        this.tightening = tightening;
    }

    @Override
    public void add(MipModel model, DepotProblem problem, CapacityVars capacity, DayVars day) {
        if (!problem.tariff().billsDemand()) {
            return;
        }
        for (int s = 0; s < day.kind().slices().size(); s++) {
            Slice slice = day.kind().slices().get(s);
            Expr kw = draw(problem, capacity, day, s, slice);
            double room = room(problem, slice);
            day.draws().add(new DayVars.Draw(kw, room));
            for (String season : day.kind().seasons()) {
                for (int i = 0; i < problem.seasons().size(); i++) {
                    if (problem.seasons().get(i).id().equals(season)) {
                        Expr row = new Expr().add(1, kw).add(-1, capacity.peak[i]);
                        model.atMost("demand_" + season + "_" + slice.fromMinute() + "@" + day.tag(), row, room);
                    }
                }
            }
        }
        if (tightening.wholeChargers()) {
            addWhole(model, problem, capacity, day);
        }
    }

    private static void addWhole(MipModel model, DepotProblem problem, CapacityVars capacity, DayVars day) {
        List<Batch> waiting =
                day.batches().stream().filter(batch -> batch.span().waits()).toList();
        Map<Batch, Var> loaded = new LinkedHashMap<>();
        for (Batch batch : waiting) {
            String key = key(batch) + "@" + day.tag();
            loaded.put(batch, model.binary("loaded_" + key));
            Expr row = new Expr().add(1, batch.chargers()).add(-mostChargers(problem), loaded.get(batch));
            model.atMost("loadedAtAll_" + key, row, 0);
        }
        double most = mostChargers(problem)
                * problem.chargers().stream()
                        .mapToDouble(ChargerOption::peakWatts)
                        .max()
                        .orElse(0);
        for (int s = 0; s < day.kind().slices().size(); s++) {
            Slice slice = day.kind().slices().get(s);
            Var fed = model.binary("fed_" + slice.fromMinute() + "@" + day.tag());
            Expr energy = new Expr().add(-slice.hours() * most, fed);
            for (Var[] circuit : day.energy()) {
                energy.add(1, circuit[s]);
            }
            model.atMost("fedAtAll_" + slice.fromMinute() + "@" + day.tag(), energy, 0);
            for (Batch batch : waiting) {
                BatchSpan span = batch.span();
                double wanted = problem.chargers().get(span.charger()).peakWatts() / 1000 - room(problem, slice);
                if (wanted > 0 && slice.fromMinute() < span.to() && slice.toMinute() > span.from()) {
                    addDemandOfOne(model, problem, capacity, day, wanted, loaded.get(batch), fed, key(batch) + "_" + s);
                }
            }
        }
    }

    private static String key(Batch batch) {
        return batch.span().key() + "_m" + batch.slots();
    }

    private static void addDemandOfOne(
            MipModel model,
            DepotProblem problem,
            CapacityVars capacity,
            DayVars day,
            double wanted,
            Var loaded,
            Var fed,
            String key) {
        Expr kw = new Expr().add(wanted, loaded).add(wanted, fed);
        day.draws().add(new DayVars.Draw(kw, wanted));
        for (int i = 0; i < problem.seasons().size(); i++) {
            String season = problem.seasons().get(i).id();
            if (day.kind().seasons().contains(season)) {
                Expr row = new Expr().add(1, kw).add(-1, capacity.peak[i]);
                model.atMost("demandOfOne_" + season + "_" + key + "@" + day.tag(), row, wanted);
            }
        }
    }

    /** A base load shorter than the tariff's interval can top its own average; it leaves no room, but it asks for none. */
    private static double room(DepotProblem problem, Slice slice) {
        return Math.max(0, problem.tariff().basePeakKw() - slice.supplyBaseWatts() / 1000);
    }

    /** Behind units there are no more chargers than these have outlets. */
    private static int mostChargers(DepotProblem problem) {
        int outlets = problem.unitTypes().stream()
                .mapToInt(SharingUnitType::outlets)
                .max()
                .orElse(0);
        return outlets * problem.circuits().size();
    }

    private Expr draw(DepotProblem problem, CapacityVars capacity, DayVars day, int s, Slice slice) {
        Expr kw = new Expr();
        for (Batch batch : day.batches()) {
            int from = batch.span().from();
            int done = Math.min(batch.span().to(), from + batch.busyMinutes());
            if (!batch.span().waits() && slice.fromMinute() < done && slice.toMinute() > from) {
                ChargerOption charger = problem.chargers().get(batch.span().charger());
                kw.add(charger.peakWatts() / 1000, batch.chargers());
            }
        }
        for (int k = 0; k < day.energy().length; k++) {
            kw.add(
                    1 / (1000 * slice.hours() * DEMAND_SHARE * tightening.of(k) * tightening.depotShare()),
                    day.energy()[k][s]);
        }
        for (int w = 0; w < problem.crews().size(); w++) {
            String crew = problem.crews().get(w).id();
            if (!day.kind().works(crew)) {
                continue;
            }
            int back = day.kind().lastReturn(crew);
            for (int b = 0; b < problem.bankTypes().size(); b++) {
                PowerBankType bank = problem.bankTypes().get(b);
                if (slice.toMinute() > back && slice.fromMinute() < back + bank.rechargeMinutes()) {
                    kw.add(bank.rechargeWatts() / 1000, capacity.banks[w][b]);
                }
            }
        }
        return kw;
    }
}
