package depot.optimizer.advice.thumb;

import depot.optimizer.plan.ChargerLoad;
import depot.optimizer.plan.ChargerLoad.Level;
import depot.optimizer.plan.ChargerLoad.Loaded;
import depot.optimizer.problem.ChargeLevel;
import depot.optimizer.problem.ChargerOption;
import depot.optimizer.problem.ChargerOption.Fit;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;

/**
 * The chargers of a depot over one day. Crews put packs in when they come back: at lunch in chargers that can be done before they leave again, in the
 * evening each pack in a bay of its own until the day starts anew. A charger with several bays is switched on when its last pack is in.
 */
final class ChargerDay {

    private final List<FamilyCharger> chargers;
    private final int endMinute;
    private final List<ChargerLoad> loads = new ArrayList<>();
    private final List<Waiting> waiting = new ArrayList<>();

    /** Packs of a crew that wait for the evening. */
    private record Waiting(String family, int minute, String pool, int count) {}

    /** A span in which a crew is back at the depot. */
    record Stay(int fromMinute, int toMinute) {
        int length() {
            return toMinute - fromMinute;
        }
    }

    /**
     * @param endMinute start of the next day
     */
    ChargerDay(List<FamilyCharger> chargers, int endMinute) {
        this.chargers = chargers;
        this.endMinute = endMinute;
    }

    /** Puts packs in for the time of a stay; says how many of them will be done, which is as many as found a bay. */
    int atLunch(String family, FamilyChoice choice, String pool, int count, Stay stay, ChargeLevel level) {
        int left = count;
        for (FamilyCharger charger : chargers) {
            boolean fast = choice.lunch().map(charger.option()::equals).orElse(false);
            if (left > 0 && fast && charger.family().equals(family) && free(charger, stay)) {
                Fit fit = FamilyChoice.fit(charger.option(), choice.pack()).orElseThrow();
                int packs = Math.min(left, charger.option().slots(fit, level, stay.length()));
                if (packs > 0) {
                    Level to = level == ChargeLevel.FULL ? Level.FULL : Level.EIGHTY;
                    Loaded loaded = new Loaded(choice.pack().id(), pool, to, packs);
                    add(charger, stay, List.of(loaded));
                    left -= packs;
                }
            }
        }
        return count - left;
    }

    /** Notes packs that are to be full when the next day starts. */
    void overnight(String family, int minute, String pool, int count) {
        if (count > 0) {
            waiting.add(new Waiting(family, minute, pool, count));
        }
    }

    private boolean free(FamilyCharger charger, Stay stay) {
        return loads.stream()
                .filter(load -> load.charger().equals(charger.placement().id()))
                .allMatch(load -> load.collectMinute() <= stay.fromMinute() || load.loadMinute() >= stay.toMinute());
    }

    private void add(FamilyCharger charger, Stay stay, List<Loaded> packs) {
        loads.add(new ChargerLoad(charger.placement().id(), stay.fromMinute(), stay.toMinute(), packs));
    }

    /** Every loading of the day, those of the night made now, for the packs of one family after the other. */
    List<ChargerLoad> loads(List<String> families, List<FamilyChoice> choices) {
        for (int f = 0; f < families.size(); f++) {
            loadForTheNight(families.get(f), choices.get(f));
        }
        loads.sort(Comparator.comparingInt(ChargerLoad::loadMinute).thenComparing(ChargerLoad::charger));
        return List.copyOf(loads);
    }

    private void loadForTheNight(String family, FamilyChoice choice) {
        Deque<Waiting> queue = new ArrayDeque<>(waiting.stream()
                .filter(packs -> packs.family().equals(family))
                .sorted(Comparator.comparingInt(Waiting::minute))
                .toList());
        for (FamilyCharger charger : chargers) {
            if (charger.family().equals(family)) {
                fill(charger, queue, choice);
            }
        }
    }

    private void fill(FamilyCharger charger, Deque<Waiting> queue, FamilyChoice choice) {
        ChargerOption option = charger.option();
        List<Waiting> taken = new ArrayList<>();
        int room = option.type().bays();
        while (room > 0 && !queue.isEmpty()) {
            Waiting next = queue.poll();
            int packs = Math.min(room, next.count());
            taken.add(new Waiting(next.family(), next.minute(), next.pool(), packs));
            room -= packs;
            if (packs < next.count()) {
                queue.addFirst(new Waiting(next.family(), next.minute(), next.pool(), next.count() - packs));
            }
        }
        int last = taken.stream().mapToInt(Waiting::minute).max().orElse(endMinute);
        // What came at lunch waits until the charger's last lunch is over.
        Stay night = new Stay(Math.max(last, lastCollected(charger)), endMinute);
        if (!taken.isEmpty() && night.length() > 0) {
            add(charger, night, merged(taken, choice));
        } else {
            // Back to the front, in the order in which they came.
            for (int i = taken.size() - 1; i >= 0; i--) {
                queue.addFirst(taken.get(i));
            }
        }
    }

    private int lastCollected(FamilyCharger charger) {
        return loads.stream()
                .filter(load -> load.charger().equals(charger.placement().id()))
                .mapToInt(ChargerLoad::collectMinute)
                .max()
                .orElse(0);
    }

    private static List<Loaded> merged(List<Waiting> taken, FamilyChoice choice) {
        List<Loaded> loaded = new ArrayList<>();
        for (Waiting packs : taken) {
            int last = loaded.size() - 1;
            if (last >= 0 && loaded.get(last).pool().equals(packs.pool())) {
                int count = loaded.remove(last).count() + packs.count();
                loaded.add(new Loaded(choice.pack().id(), packs.pool(), Level.FULL, count));
            } else {
                loaded.add(new Loaded(choice.pack().id(), packs.pool(), Level.FULL, packs.count()));
            }
        }
        return List.copyOf(loaded);
    }
}
