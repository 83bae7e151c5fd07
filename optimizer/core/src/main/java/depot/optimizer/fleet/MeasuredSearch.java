package depot.optimizer.fleet;

import depot.optimizer.plan.ChargerLoad;
import depot.optimizer.plan.DayPlan;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.UnitFeed;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.Slice;
import depot.optimizer.replay.DayReplay;
import depot.optimizer.replay.LoadTiming;
import depot.optimizer.scenario.Scenario;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * Tries a depot's purchases with other schedules behind its load-sharing units in the replay, and keeps what measures cheapest: the model takes
 * charging behind a unit for a fluid, so that many schedules look alike to it which the replay tells apart.
 *
 * <p>The search ends when nothing is late and the plan costs no more than the model took it to cost. Once the demand paid for is given, the days are apart:
 * each keeps the best of what was tried. Then more and less demand is paid for, and packs are exchanged at random; the scenario's seed decides how, so that
 * it repeats.
 */
final class MeasuredSearch {

    /** Chargers with time to spare that take work off the one that is ready last. */
    private static final int MOST_HELPERS = 6;

    /** Shares of a unit's energy that it may draw before the cheap hours in addition to what the model has it draw there. */
    private static final double[] EARLIER = {0.01, 0.03, 0.1};

    /** More such shares, for days that are late whatever room they are given. */
    private static final double[] MUCH_EARLIER = {0.2, 0.4};

    /** Exchanges of packs at random, and how many of them in a row may be in vain. */
    private static final int MOST_SHUFFLES = 80;

    private static final int PATIENCE = 15;

    private final DepotProblem problem;
    private final LoadDealing dealing;
    private final BestDays best;
    private final DemandTrials demand;

    /**
     * @param phase number of the plan's phase, from 1
     * @param before plan of the phase before
     */
    MeasuredSearch(Scenario scenario, DepotProblem problem, int phase, Optional<DepotPlan> before, DepotPlan plan) {
        this.problem = problem;
        dealing = new LoadDealing(problem, plan.chargers());
        best = new BestDays(scenario, problem, phase, before, plan);
        demand = new DemandTrials(problem, best);
    }

    /** The plan with the best schedules found; what it says of energy and costs is what it said before. */
    DepotPlan improved() {
        improveDays();
        if (best.goodEnough()) {
            return best.plan();
        }
        if (problem.tariff().billsDemand() && demand.improve()) {
            improveDays();
        }
        shuffle();
        if (problem.tariff().billsDemand()) {
            demand.improve();
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
            demand.payForCharger();
        }
        for (double share : MUCH_EARLIER) {
            if (best.late()) {
                tryEarlier(share);
            }
        }
        return best.plan();
    }

    private void improveDays() {
        List<Runnable> trials = new ArrayList<>();
        trials.add(() -> best.tryEach(dealing::evenly));
        trials.add(() -> best.tryEach(day -> dealing.turnedRound(day, 1)));
        trials.add(() -> best.tryEach(day -> dealing.turnedRound(day, 2)));
        for (int helper = 0; helper < MOST_HELPERS; helper++) {
            int place = helper;
            trials.add(() -> tryRelief(place));
        }
        for (double share : EARLIER) {
            trials.add(() -> tryEarlier(share));
        }
        for (Runnable trial : trials) {
            if (best.goodEnough()) {
                return;
            }
            trial.run();
        }
    }

    /** Exchanges packs at random, while that still finds something. */
    private void shuffle() {
        SplittableRandom random = new SplittableRandom(problem.settings().seed());
        int inVain = 0;
        for (int i = 0; i < MOST_SHUFFLES && inVain < PATIENCE && !best.goodEnough(); i++) {
            List<DayPlan> days = best.days();
            best.tryEach(day -> dealing.shuffled(day, random));
            inVain = best.days().equals(days) ? inVain + 1 : 0;
        }
    }

    private void tryRelief(int helper) {
        best.tryEach(IntStream.range(0, best.days().size())
                .mapToObj(d -> relieved(d, helper))
                .toList());
    }

    /** Of a day's loads the one that is ready last gives work to another; the helpers are those of its group that are ready first. */
    private DayPlan relieved(int d, int helper) {
        DayPlan day = best.days().get(d);
        Map<String, Integer> ready = ready(best.measured(d).runs());
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
        best.tryEach(IntStream.range(0, best.days().size())
                .mapToObj(d -> earlier(d, share))
                .toList());
    }

    /** More energy in the last slice in which waiting pays. */
    private DayPlan earlier(int d, double share) {
        DayPlan day = best.days().get(d);
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
        return day.withFeeds(feeds);
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
}
