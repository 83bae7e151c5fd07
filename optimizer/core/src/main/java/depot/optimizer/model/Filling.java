package depot.optimizer.model;

import depot.optimizer.mip.Var;
import java.util.List;

/**
 * What one charger of a batch holds, and the order in which it charges.
 *
 * @param slots class of the batch: packs that each of its chargers may hold
 * @param order kinds of packs, first to charge first
 * @param energyCost of a day, in the order given
 * @param chargers how many chargers are loaded like that
 */
record Filling(int slots, List<PackKind> order, double energyCost, Var chargers) {

    int count(PackKind kind) {
        return (int) order.stream().filter(kind::equals).count();
    }
}
