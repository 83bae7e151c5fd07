package depot.optimizer.model;

import depot.optimizer.problem.ChargeLevel;
import depot.optimizer.problem.ChargerOption;
import depot.optimizer.problem.ChargerOption.Fit;
import depot.optimizer.problem.DayKind;
import depot.optimizer.problem.Trip;
import java.util.ArrayList;
import java.util.List;

/**
 * The batch spans worth offering. A later collection that lets no charger fill one more pack is left out: the earlier one frees the bays and
 * returns the packs sooner, and on a plain circuit it costs the same. Behind a unit the end of the cycle stays on the menu, because waiting may
 * be cheaper.
 */
final class SpanMenu {

    /** A span from one handover to a later one. */
    record Span(int from, int to) {}

    private final DayKind day;
    private final int end;
    private final int firstArrival;

    SpanMenu(DayKind day) {
        this.day = day;
        end = day.handovers().get(day.handovers().size() - 1);
        firstArrival = day.trips().stream().mapToInt(Trip::arrival).min().orElse(end);
    }

    List<Span> plainSpans(ChargerOption charger) {
        return spans(charger, false);
    }

    List<Span> sharedSpans(ChargerOption charger) {
        return spans(charger, true);
    }

    private List<Span> spans(ChargerOption charger, boolean keepEnd) {
        List<Span> spans = new ArrayList<>();
        for (int from : day.handovers()) {
            if (from >= firstArrival && from < end) {
                addFrom(charger, from, keepEnd, spans);
            }
        }
        return spans;
    }

    private void addFrom(ChargerOption charger, int from, boolean keepEnd, List<Span> spans) {
        List<Integer> before = capability(charger, 0);
        for (int to : day.handovers()) {
            if (to > from) {
                List<Integer> now = capability(charger, to - from);
                boolean useful = now.stream().anyMatch(slots -> slots > 0);
                if (useful && (!now.equals(before) || (keepEnd && to == end))) {
                    spans.add(new Span(from, to));
                }
                before = now;
            }
        }
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

    /** Whether charging to the level makes sense in a span: 80 % only where a full charge holds fewer packs. */
    static int usefulSlots(ChargerOption charger, Fit fit, ChargeLevel level, int minutes) {
        int slots = charger.slots(fit, level, minutes);
        boolean fullAsGood = level == ChargeLevel.EIGHTY && charger.slots(fit, ChargeLevel.FULL, minutes) >= slots;
        return fullAsGood ? 0 : slots;
    }
}
