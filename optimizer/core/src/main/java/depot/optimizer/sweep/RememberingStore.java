package depot.optimizer.sweep;

import depot.optimizer.plan.Plan;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/** Remembers plans for as long as a sweep runs, beside another store. */
final class RememberingStore implements CaseStore {

    private final CaseStore other;
    private final Map<String, Plan> plans = new ConcurrentHashMap<>();

    RememberingStore(CaseStore other) {
        this.other = other;
    }

    @Override
    public Optional<Plan> find(String key) {
        Optional<Plan> remembered = Optional.ofNullable(plans.get(key));
        return remembered.isPresent() ? remembered : other.find(key);
    }

    @Override
    public void keep(String key, Plan plan) {
        plans.put(key, plan);
        other.keep(key, plan);
    }
}
