package depot.optimizer.replay;

import depot.optimizer.plan.DepotPlan;
import depot.optimizer.replay.Violation.Kind;
import java.util.Set;
import java.util.TreeSet;

/** One crew that mows from 08:30 to 12:00 with four packs, and variations of its day. */
final class Replays {
    static final String SCENARIO = """
            depot D places=1
            circuit C breaker=10 outlets=2
            pack P wh=100 kg=1
            charger Q bays=4 at_once=1 plate=75
            fits Q P 64 80
            tool T watts=100
            crew A places=4 payload=4
            stop A 1 D 08:00
            stop A 2 lawn 08:30 12:00
            stop A 3 D 12:30
            work A 2 T hours=4
            """;

    static final String PLAN = """
            stock D P 4
            charger Q-1 C Q
            trip A 1 08:00 12:30 P:4
            load Q-1 12:30 32:00 P:4
            energy 08:00 32:00 kwh=0.4
            """;

    private Replays() {}

    static DepotReplay run(String scenario, String plan) {
        return FleetReplay.runDepot(ScenarioText.read(scenario), PlanText.read(plan));
    }

    /** Kinds of rules that a plan breaks, costs left out. */
    static Set<Kind> broken(String scenario, String plan) {
        return kinds(run(scenario, plan));
    }

    /** The same after changing some words of {@link #SCENARIO}. */
    static Set<Kind> brokenWithScenario(String from, String to) {
        return broken(change(SCENARIO, from, to), PLAN);
    }

    /** The same after changing some words of {@link #PLAN}. */
    static Set<Kind> brokenWithPlan(String from, String to) {
        return broken(SCENARIO, change(PLAN, from, to));
    }

    static Set<Kind> kinds(DepotReplay replay) {
        Set<Kind> kinds = new TreeSet<>();
        replay.allViolations().forEach(v -> kinds.add(v.kind()));
        return kinds;
    }

    /** Refuses to change what is not there, so that a test never passes because of a misspelling. */
    static String change(String text, String from, String to) {
        if (!text.contains(from)) {
            throw new IllegalArgumentException("\"" + from + "\" is not in the fixture");
        }
        return text.replace(from, to);
    }

    static DepotPlan plan(String text) {
        return PlanText.read(text);
    }
}
