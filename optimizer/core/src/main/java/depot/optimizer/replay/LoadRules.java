package depot.optimizer.replay;

import depot.optimizer.plan.ChargerLoad;
import depot.optimizer.plan.ChargerLoad.Loaded;
import depot.optimizer.plan.ChargerPlacement;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.replay.Violation.Kind;
import depot.optimizer.scenario.ChargerType;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Loads go into chargers that exist, take their packs, have bays for them and are free, and are moved only at handovers. */
final class LoadRules {
    private final DepotTables tables;
    private final DayCase day;
    private final Violations violations;
    private final Map<String, ChargerPlacement> chargers = new HashMap<>();

    private LoadRules(DepotTables tables, DepotPlan plan, DayCase day, Violations violations) {
        this.tables = tables;
        this.day = day;
        this.violations = violations;
        plan.chargers().forEach(c -> chargers.put(c.id(), c));
    }

    static void check(DepotTables tables, DepotPlan plan, DayCase day, Violations violations) {
        LoadRules rules = new LoadRules(tables, plan, day, violations);
        Map<String, ChargerLoad> last = new HashMap<>();
        List<ChargerLoad> inOrder = day.plan().loads().stream()
                .sorted(Comparator.comparingInt(ChargerLoad::loadMinute))
                .toList();
        for (ChargerLoad load : inOrder) {
            if (rules.ofGuests(load)) {
                rules.visit(load);
            } else {
                rules.handover(load, load.loadMinute(), "loaded");
                rules.handover(load, load.collectMinute(), "collected");
            }
            rules.order(load, last.put(load.charger(), load));
            ChargerPlacement charger = rules.chargers.get(load.charger());
            if (charger == null) {
                violations.missing("charger", load.charger(), "a load of day " + day.index());
            } else {
                rules.bays(load, charger);
                rules.priority(load, charger);
            }
        }
    }

    private boolean ofGuests(ChargerLoad load) {
        return load.packs().stream().anyMatch(packs -> !tables.ownPool(packs.pool()));
    }

    /** A visiting crew moves its own packs, when it comes and when it goes, and nobody else's. */
    private void visit(ChargerLoad load) {
        String crew = load.packs().stream()
                .map(Loaded::pool)
                .filter(pool -> !tables.ownPool(pool))
                .findFirst()
                .orElseThrow();
        boolean alone = load.packs().stream().allMatch(packs -> packs.pool().equals(crew));
        boolean there = day.guests().stream()
                .anyMatch(visit -> visit.crew().equals(crew)
                        && load.loadMinute() == visit.fromMinute()
                        && load.collectMinute() == visit.toMinute());
        if (!alone || !there) {
            violations.add(
                    Kind.HANDOVER,
                    load.charger(),
                    load.loadMinute(),
                    load.loadMinute(),
                    load.collectMinute(),
                    load.charger() + " holds packs of " + crew + " from " + Violations.clock(load.loadMinute()) + " to "
                            + Violations.clock(load.collectMinute())
                            + (there
                                    ? ", together with packs of others"
                                    : ", but that crew does not come and go then"));
        }
    }

    private void handover(ChargerLoad load, int minute, String what) {
        if (!day.handovers().contains(minute)) {
            violations.add(
                    Kind.HANDOVER,
                    load.charger(),
                    minute,
                    minute,
                    0,
                    load.charger() + " is " + what + " at " + Violations.clock(minute)
                            + ", when nobody moves packs; handovers are "
                            + day.handovers().stream().map(Violations::clock).toList());
        }
    }

    private void order(ChargerLoad load, ChargerLoad before) {
        if (load.collectMinute() <= load.loadMinute()) {
            violations.add(
                    Kind.HANDOVER,
                    load.charger(),
                    load.loadMinute(),
                    load.collectMinute(),
                    load.loadMinute(),
                    load.charger() + " is collected at " + Violations.clock(load.collectMinute())
                            + ", not after its loading at " + Violations.clock(load.loadMinute()));
        }
        if (before != null && load.loadMinute() < before.collectMinute()) {
            violations.add(
                    Kind.CHARGER_BUSY,
                    load.charger(),
                    load.loadMinute(),
                    load.loadMinute(),
                    before.collectMinute(),
                    load.charger() + " is loaded at " + Violations.clock(load.loadMinute())
                            + " while it holds a load until " + Violations.clock(before.collectMinute()));
        }
    }

    private void bays(ChargerLoad load, ChargerPlacement charger) {
        ChargerType type = tables.chargerTypes().get(charger.chargerType());
        int packs = load.packs().stream().mapToInt(Loaded::count).sum();
        if (type != null && packs > type.bays()) {
            violations.add(
                    Kind.BAYS,
                    load.charger(),
                    load.loadMinute(),
                    packs,
                    type.bays(),
                    load.charger() + " is loaded with " + Violations.packs(packs) + " at "
                            + Violations.clock(load.loadMinute()) + ", but has " + type.bays() + " bays");
        }
        for (Loaded item : load.packs()) {
            if (!tables.packTypes().containsKey(item.packType())) {
                violations.missing("pack type", item.packType(), "a load of charger " + load.charger());
            } else if (type != null
                    && !tables.chargeTimes().containsKey(new DepotTables.Pair(type.id(), item.packType()))) {
                violations.add(
                        Kind.FIT,
                        load.charger(),
                        "packs " + item.packType() + " do not fit charger " + load.charger() + " of type " + type.id());
            }
        }
    }

    /** Behind a unit only a priority outlet can promise to be ready before the end of the cycle. */
    private void priority(ChargerLoad load, ChargerPlacement charger) {
        if (charger.shared() && !charger.priority() && load.collectMinute() < tables.endMinute()) {
            violations.add(
                    Kind.PRIORITY,
                    load.charger(),
                    load.collectMinute(),
                    load.collectMinute(),
                    tables.endMinute(),
                    load.charger() + " is collected at " + Violations.clock(load.collectMinute())
                            + ", before the end of the cycle, but is not on a priority outlet");
        }
    }
}
