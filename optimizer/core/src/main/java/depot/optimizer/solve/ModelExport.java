package depot.optimizer.solve;

import depot.optimizer.mip.MipModel;
import depot.optimizer.mip.ModelFormat;
import depot.optimizer.problem.DepotProblems;
import depot.optimizer.problem.DepotRollout;
import depot.optimizer.problem.QuantityPrices;
import depot.optimizer.problem.SharedLimits;
import depot.optimizer.scenario.Scenario;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Writes the whole model, every kind of day in full, for any other solver. */
public final class ModelExport {

    private ModelExport() {}

    /** Writes one model for all depots of a scenario. Names begin with their depot's key. */
    public static void write(Scenario scenario, Path file, ModelFormat format) throws IOException {
        Files.writeString(file, format.write(model(scenario)));
    }

    /** The model of all depots, with the limits that they share. */
    public static MipModel model(Scenario scenario) {
        DepotProblems problems = new DepotProblems(scenario);
        List<DepotRollout> rollouts =
                scenario.depots().stream().map(problems::rollout).toList();
        return new WholeFleet(
                        scenario.name(),
                        rollouts,
                        SharedLimits.of(scenario),
                        new QuantityPrices(scenario),
                        rollouts.stream().map(WholeFleet::terms).toList())
                .model();
    }
}
