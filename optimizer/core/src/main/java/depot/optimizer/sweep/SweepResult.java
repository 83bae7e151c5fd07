package depot.optimizer.sweep;

import depot.optimizer.scenario.Scenario;
import depot.optimizer.sweep.spec.Sweep;
import java.util.List;
import java.util.SortedMap;

/**
 * Everything that a sweep found.
 *
 * @param scenario as in its tables
 * @param inputHashes SHA-256 of each input file, the sweep's own included, by name
 * @param base outcome without any change; where neither losses nor kept purchases are asked about, plans of cases that serve it better are in it
 * @param cases in the order of {@link CaseList}
 * @param losses depot by depot
 */
public record SweepResult(
        Sweep sweep,
        Scenario scenario,
        SortedMap<String, String> inputHashes,
        FleetOutcome base,
        List<CaseResult> cases,
        List<LossResult> losses) {}
