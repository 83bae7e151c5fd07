package depot.optimizer.model;

import depot.optimizer.problem.ChargeLevel;
import depot.optimizer.problem.ChargerOption;
import depot.optimizer.problem.ChargerOption.Fit;
import depot.optimizer.problem.DayKind;
import depot.optimizer.problem.Trip;
import java.util.ArrayList;
import java.util.List;

/**
 * The batch spans worth offering.
 *
 * <ul>
 *   <li>A later collection that lets no charger fill one more pack is left out: the earlier one frees the bays and returns the packs sooner, and on a
 *       plain circuit it costs the same. Behind a unit the end of the cycle stays on the menu, because waiting may be cheaper.
 *   <li>A loading for the night is left out when a later one fills as many packs in every charger and no pack costs more in it: by then more packs
 *       are back and the bays were free for longer. Behind a unit, night loadings are kept an hour apart, since an earlier one leaves more hours to
 *       draw in.
 * </ul>
 */
final class SpanMenu {

    private static final int NIGHT_STEP_MINUTES = 60;

    /** A span from one handover to a later one. */
    record Span(int from, int to) {}

    private final DayKind day;
    private final int end;
    private final List<Integer> loadings;
    private final PlainPrice price;

    SpanMenu(DayKind day) {
        this.day = day;
        end = day.handovers().get(day.handovers().size() - 1);
        int firstArrival = day.trips().stream().mapToInt(Trip::arrival).min().orElse(end);
        loadings = day.handovers().stream()
                .filter(h -> h >= firstArrival && h < end)
                .toList();
        price = new PlainPrice(day);
    }

    List<Span> plainSpans(ChargerOption charger) {
        List<Span> spans = new ArrayList<>();
        for (int from : loadings) {
            for (int to : usefulEnds(charger, from)) {
                if (to < end || plainNight(charger, from)) {
                    spans.add(new Span(from, to));
                }
            }
        }
        return spans;
    }

    /** Behind a unit, collected before the end of the cycle. */
    List<Span> prioritySpans(ChargerOption charger) {
        List<Span> spans = new ArrayList<>();
        for (int from : loadings) {
            usefulEnds(charger, from).stream().filter(to -> to < end).forEach(to -> spans.add(new Span(from, to)));
        }
        return spans;
    }

    /** Behind a unit until the end of the cycle. */
    List<Span> waitingSpans(ChargerOption charger) {
        return loadings.stream()
                .filter(from -> capable(charger, from) && waitingNight(charger, from))
                .map(from -> new Span(from, end))
                .toList();
    }

    private boolean capable(ChargerOption charger, int from) {
        return capability(charger, end - from).stream().anyMatch(slots -> slots > 0);
    }

    /** The ends after which some charger fills one more pack than before. */
    private List<Integer> usefulEnds(ChargerOption charger, int from) {
        List<Integer> ends = new ArrayList<>();
        List<Integer> before = capability(charger, 0);
        for (int to : day.handovers()) {
            if (to > from) {
                List<Integer> now = capability(charger, to - from);
                if (!now.equals(before)) {
                    ends.add(to);
                }
                before = now;
            }
        }
        return ends;
    }

    private int lastReturn() {
        return day.trips().stream().mapToInt(Trip::arrival).max().orElse(end);
    }

    private boolean plainNight(ChargerOption charger, int from) {
        for (int later : loadings) {
            if (later > from
                    && later <= lastReturn()
                    && capability(charger, end - later).equals(capability(charger, end - from))
                    && noDearer(charger, from, later)) {
                return false;
            }
        }
        return from <= lastReturn() || cheaperThanAtReturn(charger, from);
    }

    /** A handover of a staffed depot after the last return: loading can wait for cheap hours. */
    private boolean cheaperThanAtReturn(ChargerOption charger, int from) {
        return !noDearer(charger, from, lastReturn());
    }

    /** Whether no turn of any pack costs more when the charger is loaded later. */
    private boolean noDearer(ChargerOption charger, int from, int later) {
        for (Fit fit : charger.fits()) {
            int turns = -Math.floorDiv(-charger.type().bays(), charger.type().chargingAtOnce());
            for (int r = 0; r < turns; r++) {
                int wait = r * fit.minutesToFull();
                double early = price.ofPack(fit, ChargeLevel.FULL, from + wait);
                if (price.ofPack(fit, ChargeLevel.FULL, later + wait) > early + 1e-9) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Going back from the last return, loadings at least an hour apart, and those that fill more packs than the one kept after them. */
    private boolean waitingNight(ChargerOption charger, int from) {
        int kept = Integer.MAX_VALUE;
        for (int i = loadings.size() - 1; i >= 0; i--) {
            int at = loadings.get(i);
            if (at > lastReturn()) {
                continue;
            }
            boolean keep = kept == Integer.MAX_VALUE
                    || kept - at >= NIGHT_STEP_MINUTES
                    || !capability(charger, end - at).equals(capability(charger, end - kept));
            if (keep) {
                kept = at;
            }
            if (at == from) {
                return keep;
            }
        }
        return false;
    }

    private static List<Integer> capability(ChargerOption charger, int minutes) {
        List<Integer> slots = new ArrayList<>();
        for (Fit fit : charger.fits()) {
            for (ChargeLevel level : ChargeLevel.values()) {
                slots.add(charger.slots(fit, level, minutes));
            }
        }
        return slots;
    }
}
