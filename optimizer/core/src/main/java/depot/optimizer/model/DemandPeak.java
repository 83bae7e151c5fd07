package depot.optimizer.model;

import depot.optimizer.mip.Expr;
import depot.optimizer.mip.MipModel;
import depot.optimizer.problem.ChargerOption;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.Slice;
import depot.optimizer.scenario.PowerBankType;

/**
 * Where the highest average draw of a month is billed, no slice may draw more than is paid for.
 *
 * <p>For each season and slice s, in kW: base[s] - highest average of the base load + draw of chargers that do not wait and are not done by then +
 * sum over k of energy[k,s] / (hours[s] * share) + power banks that recharge &lt;= peak[season], with the share of the demand that waiting chargers are
 * sure to use. Slices are longer than the tariff's interval or lie beside slices of which the
 * same holds, so that no interval's average is higher.
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
            // A base load shorter than the tariff's interval can top its own average; it leaves no room, but it asks
            // for none.
            double room = Math.max(0, problem.tariff().basePeakKw() - slice.supplyBaseWatts() / 1000);
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
