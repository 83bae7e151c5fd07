package depot.optimizer.fleet;

import depot.optimizer.plan.ChargerLoad;
import depot.optimizer.plan.CostLine;
import depot.optimizer.plan.DayPlan;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.UnitFeed;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.Slice;
import depot.optimizer.replay.DayReplay;
import depot.optimizer.replay.DepotDays;
import depot.optimizer.replay.LoadTiming;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.solve.MeasuredPlan;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.function.DoubleUnaryOperator;
import java.util.function.UnaryOperator;

/**
 * Tries a depot's purchases with other schedules behind its load-sharing units in the replay, and keeps what measures cheapest: the model takes
 * charging behind a unit for a fluid, so that many schedules look alike to it which the replay tells apart.
 *
 * <p>The search ends when nothing is late and the plan costs no more than the model took it to cost. Once the demand paid for is given, the days are apart: each keeps the best of what was tried. Then more and less demand is paid for, and packs are
 * exchanged at random; the scenario's seed decides how, so that it repeats.
 */
final class MeasuredSearch {

    /** Chargers with time to spare that take work off the one that is ready last. */
    private static final int MOST_HELPERS = 6;

    /** Shares of a unit's energy that it may draw before the cheap hours in addition to what the model has it draw there. */
    private static final double[] EARLIER = {0.01, 0.03, 0.1};

    /** More such shares, for days that are late whatever room they are given. */
    private static final double[] MUCH_EARLIER = {0.2, 0.4};

    /** Shares of the hungriest charger that are paid for on top, for days that are late because there is no room to feed one at all. */
    private static final double[] OF_A_CHARGER = {0.25, 0.5, 0.75, 1};

    private static final int HALVINGS = 4;

    /** Change of the demand paid for, at first and at last, and how often it is changed at most. */
    private static final double FIRST_STEP = 0.02;

    private static final double LAST_STEP = 0.005;

    private static final int MOST_STEPS = 8;

    /** Exchanges of packs at random, and how many of them in a row may be in vain. */
    private static final int MOST_SHUFFLES = 80;

    private static final int PATIENCE = 15;

    /** Share of the gap asked for by which a plan may measure dearer than the model took it to be, before other schedules are tried. */
    private static final double ENOUGH_SHARE = 0.05;

    private static final double LATE_ROUNDING = 1e-6;

    private final DepotDays depot;
    private final DepotProblem problem;
    private final int phase;
    private final Optional<DepotPlan> before;
    private final LoadDealing dealing;
    private final double enough;
    private MeasuredDays best;

    /**
     * @param phase number of the plan's phase, from 1
     * @param before plan of the phase before
     */
    MeasuredSearch(Scenario scenario, DepotProblem problem, int phase, Optional<DepotPlan> before, DepotPlan plan) {
        this.depot = DepotDays.of(scenario, plan).orElseThrow();
        this.problem = problem;
        this.phase = phase;
        this.before = before;
        dealing = new LoadDealing(problem, plan.chargers());
        enough = lines(plan.costs()) * (1 + ENOUGH_SHARE * problem.settings().relativeGap());
        best = MeasuredDays.of(depot, plan);
    }

    /** The plan with the best schedules found; what it says of energy and costs is what it said before. */
    DepotPlan improved() {
        improveDays();
        if (goodEnough()) {
            return best.plan();
        }
        if (problem.tariff().billsDemand() && improveDemand()) {
            improveDays();
        }
        shuffle();
        if (problem.tariff().billsDemand()) {
            improveDemand();
        }
        return best.plan();
    }

    /**
     * The same, with much energy drawn before the cheap hours where something is late all the same. A charger that loads one pack after the other may need
     * longer than these hours, where the fluid has all chargers share them evenly; less room for the unit does not tell the model so. Nor does it say that a
     * charger is fed whole or not at all, where the fluid may feed it little for hours within the demand paid for.
     */
    DepotPlan inTime() {
        improved();
        if (problem.tariff().billsDemand()) {
            payForCharger();
        }
        for (double share : MUCH_EARLIER) {
            if (best.lateWh() > LATE_ROUNDING) {
                tryEarlier(share);
            }
        }
        return best.plan();
    }

    /** Nothing is late or broken, and the plan costs what the model took it to cost. */
    private boolean goodEnough() {
        return best.lateWh() <= LATE_ROUNDING && best.broken() == 0 && cost(best) <= enough;
    }

    private void improveDays() {
        List<Runnable> trials = new ArrayList<>();
        trials.add(() -> tryDays(dealing::evenly));
        trials.add(() -> tryDays(day -> dealing.turnedRound(day, 1)));
        trials.add(() -> tryDays(day -> dealing.turnedRound(day, 2)));
        for (int helper = 0; helper < MOST_HELPERS; helper++) {
            int place = helper;
            trials.add(() -> tryRelief(place));
        }
        for (double share : EARLIER) {
            trials.add(() -> tryEarlier(share));
        }
        for (Runnable trial : trials) {
            if (goodEnough()) {
                return;
            }
            trial.run();
        }
    }

    /** Exchanges packs at random, while that still finds something. */
    private void shuffle() {
        SplittableRandom random = new SplittableRandom(problem.settings().seed());
        int inVain = 0;
        for (int i = 0; i < MOST_SHUFFLES && inVain < PATIENCE && !goodEnough(); i++) {
            List<DayPlan> days = best.plan().days();
            tryDays(day -> dealing.shuffled(day, random));
            inVain = best.plan().days().equals(days) ? inVain + 1 : 0;
        }
    }

    private void tryDays(UnaryOperator<DayPlan> change) {
        tryPlan(best.plan().days().stream().map(change).toList());
    }

    private void tryPlan(List<DayPlan> days) {
        if (!days.equals(best.plan().days())) {
            best = best.bestOf(measured(days));
        }
    }

    private MeasuredDays measured(List<DayPlan> days) {
        return MeasuredDays.of(depot, best.plan().with(days, best.plan().costs()));
    }

    private void tryRelief(int helper) {
        List<DayPlan> days = new ArrayList<>();
        for (int d = 0; d < best.days().size(); d++) {
            days.add(relieved(d, helper));
        }
        tryPlan(days);
    }

    /** Of a day's loads the one that is ready last gives work to another; the helpers are those of its group that are ready first. */
    private DayPlan relieved(int d, int helper) {
        DayPlan day = best.plan().days().get(d);
        Map<String, Integer> ready = ready(best.days().get(d).runs());
        Comparator<Integer> byReady =
                Comparator.comparingInt(i -> ready.getOrDefault(key(day.loads().get(i)), 0));
        List<Integer> latest = List.of();
        for (List<Integer> group : dealing.groups(day)) {
            List<Integer> inOrder = group.stream().sorted(byReady).toList();
            if (latest.isEmpty() || byReady.compare(last(inOrder), last(latest)) > 0) {
                latest = inOrder;
            }
        }
        return helper < latest.size() - 1 ? dealing.relieved(day, last(latest), latest.get(helper)) : day;
    }

    private static int last(List<Integer> places) {
        return places.get(places.size() - 1);
    }

    /** When the loads are ready on the worst of the season days, by charger and time of loading. */
    private static Map<String, Integer> ready(List<DayReplay> runs) {
        Map<String, Integer> ready = new TreeMap<>();
        for (DayReplay run : runs) {
            for (LoadTiming load : run.loads()) {
                int at = load.readyMinute() == LoadTiming.NEVER ? Integer.MAX_VALUE : load.readyMinute();
                ready.merge(load.charger() + "@" + load.loadMinute(), at, Math::max);
            }
        }
        return ready;
    }

    private static String key(ChargerLoad load) {
        return load.charger() + "@" + load.loadMinute();
    }

    private void tryEarlier(double share) {
        List<DayPlan> days = new ArrayList<>();
        for (int d = 0; d < best.days().size(); d++) {
            days.add(earlier(d, share));
        }
        tryPlan(days);
    }

    /** More energy in the last slice in which waiting pays. */
    private DayPlan earlier(int d, double share) {
        DayPlan day = best.plan().days().get(d);
        int from = lastWaiting(problem.days().get(d).slices());
        Map<String, Double> all = new TreeMap<>();
        day.feeds().forEach(feed -> all.merge(feed.circuit(), feed.wattHours(), Double::sum));
        List<UnitFeed> feeds = day.feeds().stream()
                .map(feed -> feed.fromMinute() == from
                        ? new UnitFeed(
                                feed.circuit(),
                                from,
                                feed.toMinute(),
                                feed.wattHours() + share * all.getOrDefault(feed.circuit(), 0.0))
                        : feed)
                .toList();
        return new DayPlan(
                day.occurrences(),
                day.daysPerYear(),
                day.startMinute(),
                day.trips(),
                day.loads(),
                feeds,
                day.energy(),
                day.demandKw());
    }

    /** Start of the last slice after which a cheaper one follows, -1: none. */
    private static int lastWaiting(List<Slice> slices) {
        for (int s = slices.size() - 2; s >= 0; s--) {
            Slice slice = slices.get(s);
            if (slices.subList(s + 1, slices.size()).stream()
                    .anyMatch(later -> later.pricePerKwh().compareTo(slice.pricePerKwh()) < 0)) {
                return slice.fromMinute();
            }
        }
        return -1;
    }

    /** Pays for more demand while loads are late, then for less or more as it pays; says whether anything changed. */
    private boolean improveDemand() {
        boolean changed = false;
        double step = FIRST_STEP;
        for (int i = 0; i < MOST_STEPS && step >= LAST_STEP; i++) {
            boolean better = tryDemand(1 - step) || tryDemand(1 + step);
            changed |= better;
            step = better ? step : step / 2;
        }
        return changed;
    }

    /** Pays for a share of a charger, the least with which nothing is late. */
    private void payForCharger() {
        if (best.lateWh() <= LATE_ROUNDING) {
            return;
        }
        double kilowatts = problem.chargers().stream()
                        .filter(option -> best.plan().chargers().stream().anyMatch(charger -> charger.chargerType()
                                .equals(option.type().id())))
                        .mapToDouble(option -> option.type().plateWatts())
                        .max()
                        .orElse(0)
                / 1000;
        List<DayPlan> before = best.plan().days();
        double late = 0;
        for (double share : OF_A_CHARGER) {
            if (best.lateWh() > LATE_ROUNDING) {
                late = share;
                tryDemand(before, paid -> paid + share * kilowatts);
            }
        }
        double inTime = late;
        late -= OF_A_CHARGER[0];
        for (int i = 0; i < HALVINGS && best.lateWh() <= LATE_ROUNDING; i++) {
            double share = (late + inTime) / 2;
            if (tryDemand(before, paid -> paid + share * kilowatts)) {
                inTime = share;
            } else {
                late = share;
            }
        }
    }

    private boolean tryDemand(double factor) {
        return tryDemand(best.plan().days(), paid -> paid * factor);
    }

    private boolean tryDemand(List<DayPlan> from, DoubleUnaryOperator change) {
        List<DayPlan> days = from.stream()
                .map(day -> new DayPlan(
                        day.occurrences(),
                        day.daysPerYear(),
                        day.startMinute(),
                        day.trips(),
                        day.loads(),
                        day.feeds(),
                        day.energy(),
                        change.applyAsDouble(day.demandKw())))
                .toList();
        MeasuredDays tried = measured(days);
        if (better(tried)) {
            best = tried;
            return true;
        }
        return false;
    }

    private boolean better(MeasuredDays tried) {
        if (Math.abs(tried.lateWh() - best.lateWh()) > 1e-6) {
            return tried.lateWh() < best.lateWh();
        }
        return tried.broken() != best.broken() ? tried.broken() < best.broken() : cost(tried) < cost(best) - 1e-6;
    }

    private double cost(MeasuredDays days) {
        return lines(MeasuredPlan.of(problem, phase, days.plan(), before, days.energy())
                .costs());
    }

    private static double lines(List<CostLine> costs) {
        return costs.stream().mapToDouble(CostLine::presentCost).sum();
    }
}
