package depot.optimizer.rerun;

import depot.optimizer.scenario.Scenario;
import java.util.Set;
import java.util.TreeSet;

/** Keys of everything that can be owned. */
final class Items {
    private Items() {}

    /** Those that a scenario lists. */
    static Set<String> of(Scenario scenario) {
        Set<String> items = new TreeSet<>();
        scenario.packTypes().forEach(type -> items.add(type.id()));
        scenario.chargerTypes().forEach(type -> items.add(type.id()));
        scenario.sharingUnitTypes().forEach(type -> items.add(type.id()));
        scenario.powerBankTypes().forEach(type -> items.add(type.id()));
        return items;
    }
}
