package depot.optimizer.replay;

import depot.optimizer.plan.ChargerLoad;
import depot.optimizer.plan.ChargerLoad.Loaded;
import depot.optimizer.plan.DayPlan;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.EnergyUse;
import depot.optimizer.plan.PackStock;
import depot.optimizer.plan.TripPlan;
import depot.optimizer.plan.TripPlan.RoadCharge;
import depot.optimizer.replay.DayReplay.EnergySpan;
import depot.optimizer.scenario.PackType;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Amounts a year that the plan states and that follow from the rest of it: prices of energy, packs worn out. */
final class PlanRates {
    /** Share by which the stated wear may stay below the reckoned one: solver feasibility. */
    private static final double WEAR_SHARE = 1e-6;

    private PlanRates() {}

    /** Each slice of energy lies in one price band of the tariff and has its price. */
    static void energyPrices(DepotPlan plan, List<DayReplay> days, List<String> differences) {
        for (DayReplay day : days) {
            for (EnergyUse use : plan.days().get(day.day()).energy()) {
                boolean right = use.kwh() == 0 || day.energy().stream().anyMatch(span -> covers(span, use));
                if (!right) {
                    differences.add("day " + day.day() + ": energy from " + Violations.clock(use.fromMinute()) + " to "
                            + Violations.clock(use.toMinute()) + " does not cost " + use.pricePerKwh()
                            + " throughout");
                }
            }
        }
    }

    private static boolean covers(EnergySpan span, EnergyUse use) {
        return span.fromMinute() <= use.fromMinute()
                && use.toMinute() <= span.toMinute()
                && span.pricePerKwh().compareTo(use.pricePerKwh()) == 0;
    }

    /** Packs are replaced at the faster of wear by age, N / calendar years, and by use, loads a year / cycle life. */
    static void wear(DepotTables tables, DepotPlan plan, List<String> differences) {
        Map<String, Double> stated = new TreeMap<>();
        Map<String, Integer> counts = new TreeMap<>();
        for (PackStock stock : plan.packs()) {
            stated.merge(stock.packType(), stock.replacedPerYear(), Double::sum);
            counts.merge(stock.packType(), stock.count(), Integer::sum);
        }
        Map<String, Double> loads = loadsPerYear(tables, plan);
        stated.forEach((type, worn) -> {
            PackType pack = tables.packTypes().get(type);
            if (pack != null) {
                double age = counts.get(type) / pack.calendarYears();
                double use = loads.getOrDefault(type, 0.0) / pack.cycleLife();
                double least = Math.max(age, use);
                if (worn < least * (1 - WEAR_SHARE) - WEAR_SHARE) {
                    differences.add(Violations.number(least) + " packs " + type + " wear out a year, the plan says "
                            + Violations.number(worn));
                }
            }
        });
    }

    /** Packs of guests wear at their home. */
    private static Map<String, Double> loadsPerYear(DepotTables tables, DepotPlan plan) {
        Map<String, Double> loads = new TreeMap<>();
        for (DayPlan day : plan.days()) {
            for (ChargerLoad load : day.loads()) {
                for (Loaded item : load.packs()) {
                    int own = tables.ownPool(item.pool()) ? item.count() : 0;
                    loads.merge(item.packType(), own * day.daysPerYear(), Double::sum);
                }
            }
            for (TripPlan trip : day.trips()) {
                for (RoadCharge charge : trip.roadCharges()) {
                    loads.merge(charge.packType(), charge.packs() * day.daysPerYear(), Double::sum);
                }
            }
        }
        return loads;
    }
}
