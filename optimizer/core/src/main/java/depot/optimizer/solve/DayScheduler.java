package depot.optimizer.solve;

import depot.optimizer.model.DayDecision;
import depot.optimizer.model.DayDecision.LoadDecision;
import depot.optimizer.model.DayDecision.SpanDecision;
import depot.optimizer.plan.ChargerLoad;
import depot.optimizer.plan.ChargerLoad.Level;
import depot.optimizer.plan.ChargerLoad.Loaded;
import depot.optimizer.plan.ChargerPlacement;
import depot.optimizer.problem.ChargeLevel;
import depot.optimizer.problem.DepotProblem;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Puts the packs of a day's batches into single chargers. */
final class DayScheduler {

    private final DepotProblem problem;
    private final List<ChargerPlacement> chargers;
    private final Map<String, Integer> freeFrom = new HashMap<>();
    private final List<ChargerLoad> loads = new ArrayList<>();

    DayScheduler(DepotProblem problem, List<ChargerPlacement> chargers) {
        this.problem = problem;
        this.chargers = chargers;
    }

    /** Every loading of a charger, in order of time and place. */
    List<ChargerLoad> schedule(DayDecision day) {
        List<SpanDecision> spans = new ArrayList<>(day.spans());
        spans.sort(Comparator.comparingInt(SpanDecision::from).thenComparingInt(SpanDecision::to));
        spans.forEach(this::scheduleSpan);
        loads.sort(Comparator.comparingInt(ChargerLoad::loadMinute).thenComparing(ChargerLoad::charger));
        return List.copyOf(loads);
    }

    private void scheduleSpan(SpanDecision span) {
        List<Integer> slots = new ArrayList<>(span.slots());
        Collections.sort(slots);
        for (List<Loaded> packs : new BatchSplit(span, problem, slots).split()) {
            if (!packs.isEmpty()) {
                String charger = take(span);
                freeFrom.put(charger, span.to());
                loads.add(new ChargerLoad(charger, span.from(), span.to(), packs));
            }
        }
    }

    /**
     * A free charger. Batches collected before the end of the cycle need a priority outlet behind a unit; the others leave those free while they
     * can. Any free charger will do beside that: the model keeps the number of batches at a time within the number of chargers.
     */
    private String take(SpanDecision span) {
        boolean early = !span.plain() && span.to() < problem.endMinute();
        String type = problem.chargers().get(span.charger()).type().id();
        return chargers.stream()
                .filter(c -> c.chargerType().equals(type))
                .filter(c -> span.plain()
                        ? !c.shared()
                        : c.circuit()
                                .equals(problem.circuits()
                                        .get(span.circuit())
                                        .circuit()
                                        .id()))
                .filter(c -> !early || c.priority())
                .filter(c -> freeFrom.getOrDefault(c.id(), Integer.MIN_VALUE) <= span.from())
                .min(Comparator.comparing(ChargerPlacement::priority).thenComparing(ChargerPlacement::id))
                .map(ChargerPlacement::id)
                .orElseThrow(() -> new IllegalStateException("no free charger of type " + type + " for a batch from "
                        + span.from() + " to " + span.to() + " in depot "
                        + problem.depot().id()));
    }

    static Loaded loaded(DepotProblem problem, LoadDecision load, int count) {
        return new Loaded(
                load.fit().pack().id(),
                problem.pools().get(load.pool()),
                load.level() == ChargeLevel.FULL ? Level.FULL : Level.EIGHTY,
                count);
    }
}
