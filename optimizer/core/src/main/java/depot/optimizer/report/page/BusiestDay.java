package depot.optimizer.report.page;

import depot.optimizer.replay.DayReplay;
import depot.optimizer.replay.DayReplay.Peak;
import depot.optimizer.replay.DepotReplay;
import depot.optimizer.report.text.Figures;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The day on which a circuit or supply is nearest to its limit. */
record BusiestDay(String depot, DayReplay replay, Peak peak) {

    /** Load per limit; without a limit to load, 0 without load and very large with it. */
    double share() {
        return share(peak);
    }

    /** As a percentage, "-" without a limit to load. */
    String shareWords() {
        return peak.limitAmps() <= 0 ? "-" : Figures.percent(share());
    }

    private static double share(Peak peak) {
        if (peak.limitAmps() <= 0) {
            return peak.amps() <= 0 ? 0 : Double.MAX_VALUE;
        }
        return peak.amps() / peak.limitAmps();
    }

    /** One entry per circuit in use, in the order of the replay, the supply last. */
    static List<BusiestDay> of(DepotReplay depot) {
        Map<String, BusiestDay> busiest = new LinkedHashMap<>();
        for (DayReplay day : depot.days()) {
            for (Peak peak : day.peaks()) {
                busiest.merge(
                        peak.circuit(),
                        new BusiestDay(depot.depot(), day, peak),
                        (before, now) -> now.share() > before.share() ? now : before);
            }
        }
        List<BusiestDay> ordered = new ArrayList<>(busiest.values());
        ordered.sort((a, b) -> Boolean.compare(isSupply(a), isSupply(b)));
        return ordered;
    }

    static boolean isSupply(BusiestDay day) {
        return day.peak().circuit().equals(DayReplay.SUPPLY);
    }
}
