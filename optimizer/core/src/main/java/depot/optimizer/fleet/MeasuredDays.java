package depot.optimizer.fleet;

import depot.optimizer.plan.DayPlan;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.EnergyUse;
import depot.optimizer.replay.DayReplay;
import depot.optimizer.replay.DepotDays;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A depot's plan and how its days go in the replay.
 *
 * @param days one for each day of the plan
 */
record MeasuredDays(DepotPlan plan, List<Measured> days) {

    private static final double ROUNDING = 1e-6;

    /**
     * How a day goes.
     *
     * @param lateWh energy that loads behind units still need when they are collected
     * @param broken rules broken
     * @param energyCost of a year, without growth of prices
     * @param runs one for each group of season days that run alike
     */
    record Measured(double lateWh, int broken, double energyCost, List<DayReplay> runs) {

        static Measured of(List<DayReplay> runs) {
            double late = 0;
            int broken = 0;
            double cost = 0;
            for (DayReplay run : runs) {
                for (double missing : run.missingWhByCircuit().values()) {
                    late += missing;
                }
                broken += run.violations().size();
                cost += run.energyCost().doubleValue() * run.daysPerYear();
            }
            return new Measured(late, broken, cost, runs);
        }

        /** Less is late, or as much with fewer rules broken, or with as many at less cost. */
        boolean betterThan(Measured other) {
            if (Math.abs(lateWh - other.lateWh) > ROUNDING) {
                return lateWh < other.lateWh;
            }
            return broken != other.broken ? broken < other.broken : energyCost < other.energyCost - ROUNDING;
        }
    }

    static MeasuredDays of(DepotDays depot, DepotPlan plan) {
        List<DayReplay> all = depot.run(plan);
        List<Measured> days = new ArrayList<>();
        for (int d = 0; d < plan.days().size(); d++) {
            int day = d;
            days.add(Measured.of(all.stream().filter(run -> run.day() == day).toList()));
        }
        return new MeasuredDays(plan, List.copyOf(days));
    }

    /** Of each day the better one; the demand paid for must be the same in both. */
    MeasuredDays bestOf(MeasuredDays other) {
        List<DayPlan> plans = new ArrayList<>();
        List<Measured> best = new ArrayList<>();
        for (int d = 0; d < days.size(); d++) {
            MeasuredDays from = other.days.get(d).betterThan(days.get(d)) ? other : this;
            plans.add(from.plan.days().get(d));
            best.add(from.days.get(d));
        }
        return new MeasuredDays(plan.with(plans, plan.costs()), List.copyOf(best));
    }

    double lateWh() {
        return days.stream().mapToDouble(Measured::lateWh).sum();
    }

    int broken() {
        return days.stream().mapToInt(Measured::broken).sum();
    }

    /** Energy drawn on each day, by price. */
    Map<Integer, List<EnergyUse>> energy() {
        Map<Integer, List<EnergyUse>> energy = new TreeMap<>();
        for (int d = 0; d < days.size(); d++) {
            energy.put(d, mean(days.get(d).runs()));
        }
        return energy;
    }

    /** Mean energy of a day of the plan by span of one price: season days that it stands for may run differently. */
    static List<EnergyUse> mean(List<DayReplay> runs) {
        double all = Math.max(
                Double.MIN_NORMAL,
                runs.stream().mapToDouble(DayReplay::daysPerYear).sum());
        Map<Integer, EnergyUse> spans = new TreeMap<>();
        for (DayReplay run : runs) {
            for (DayReplay.EnergySpan span : run.energy()) {
                EnergyUse part = new EnergyUse(
                        span.fromMinute(), span.toMinute(), span.kwh() * run.daysPerYear() / all, span.pricePerKwh());
                spans.merge(span.fromMinute(), part, EnergyUse::plus);
            }
        }
        return spans.values().stream().filter(use -> use.kwh() > 0).toList();
    }
}
