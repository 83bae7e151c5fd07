package depot.optimizer.cli;

import depot.optimizer.fleet.FleetPlanner;
import depot.optimizer.fleet.FleetPlanner.Method;
import depot.optimizer.fleet.FleetResult;
import depot.optimizer.fleet.ProgressListener;
import depot.optimizer.fleet.RunControl;
import depot.optimizer.mip.ModelFormat;
import depot.optimizer.plan.ExplainedShortage;
import depot.optimizer.plan.Plan;
import depot.optimizer.replay.ReplayReport;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.solve.ModelExport;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;

/**
 * The stages that solve, as the commands need them; tests put others in their place.
 *
 * @param planner makes and proves a plan
 * @param exporter writes the model for other solvers
 */
record Stages(Planner planner, Exporter exporter) {

    /** Makes a plan for the whole fleet and replays it. */
    @FunctionalInterface
    interface Planner {
        /**
         * Plans a fleet.
         *
         * @throws depot.optimizer.solve.NoPlanException if the limits leave a depot without any plan
         */
        Outcome plan(
                Scenario scenario,
                SortedMap<String, String> inputHashes,
                Method method,
                ProgressListener progress,
                RunControl control);
    }

    /** Writes the model of every depot of a scenario to a file. */
    @FunctionalInterface
    interface Exporter {
        void write(Scenario scenario, Path file, ModelFormat format) throws IOException;
    }

    /** A plan, its replay, and why it falls short where it does. */
    record Outcome(Plan plan, ReplayReport replay, List<ExplainedShortage> shortages) {}

    /** The real ones. */
    static Stages standard() {
        return new Stages(
                (scenario, hashes, method, progress, control) -> {
                    FleetResult result = new FleetPlanner(progress, control).plan(scenario, hashes, method);
                    return new Outcome(result.plan(), result.replay(), result.shortages());
                },
                ModelExport::write);
    }
}
