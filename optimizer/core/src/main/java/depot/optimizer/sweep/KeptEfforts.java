package depot.optimizer.sweep;

import depot.optimizer.fleet.AnswerStore;
import depot.optimizer.plan.Certificate;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.Plan;
import java.util.Optional;

/**
 * What the efforts for one depot came to, kept among a sweep's plans.
 *
 * @param store of the sweep
 * @param job the depot
 * @param key of the job
 */
record KeptEfforts(CaseStore store, DepotJob job, String key) implements AnswerStore {

    @Override
    public Optional<Answer> find(String question) {
        return store.find(JobKey.of(key, question))
                .filter(plan -> plan.depots().size() == 1
                        && plan.depots()
                                .get(0)
                                .depot()
                                .equals(job.problem().depot().id()))
                .map(plan -> new Answer(plan.depots(), plan.certificate().bound()));
    }

    @Override
    public void keep(String question, Answer answer) {
        DepotPlan plan = answer.phases().get(0);
        double cost = plan.stop().certificate().cost();
        Certificate known = Certificate.of(
                cost, Math.min(cost, answer.bound()), job.problem().settings().relativeGap());
        Plan file = job.file(plan);
        store.keep(JobKey.of(key, question), file.with(known, file.fleetCosts(), file.depots()));
    }
}
