package depot.optimizer.solve;

import depot.optimizer.mip.MipModel;
import depot.optimizer.mip.ModelFormat;
import depot.optimizer.model.DayTerms;
import depot.optimizer.model.ShortagePolicy;
import depot.optimizer.model.Tightening;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.DepotProblems;
import depot.optimizer.scenario.Depot;
import depot.optimizer.scenario.Scenario;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Writes the whole model, every kind of day in full, for any other solver. */
public final class ModelExport {

    private ModelExport() {}

    /** Writes one model for all depots of a scenario. Names begin with their depot's key. */
    public static void write(Scenario scenario, Path file, ModelFormat format) throws IOException {
        Files.writeString(file, format.write(model(scenario)));
    }

    /** The model of all depots. */
    public static MipModel model(Scenario scenario) {
        MipModel model = new MipModel(scenario.name());
        DepotProblems problems = new DepotProblems(scenario);
        for (Depot depot : scenario.depots()) {
            model.scope(depot.id() + ":");
            addDepot(model, problems.of(depot));
        }
        return model;
    }

    private static void addDepot(MipModel model, DepotProblem problem) {
        TreeSet<Integer> all = new TreeSet<>();
        for (int d = 0; d < problem.days().size(); d++) {
            all.add(d);
        }
        ShortagePolicy shortage = problem.shortageForbidden() ? ShortagePolicy.REFUSE : ShortagePolicy.ALLOW;
        List<DayTerms> terms = Collections.nCopies(problem.days().size(), new DayTerms(Tightening.NONE, shortage));
        new MasterProblem(model, problem, all, List.of(), terms, Set.of());
    }
}
