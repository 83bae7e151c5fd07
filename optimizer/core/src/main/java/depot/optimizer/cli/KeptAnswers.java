package depot.optimizer.cli;

import depot.optimizer.fleet.AnswerStore;
import depot.optimizer.fleet.FleetPlanner.Method;
import depot.optimizer.mip.Engine;
import depot.optimizer.plan.Plan;
import depot.optimizer.report.AnswerFiles;
import depot.optimizer.scenario.Scenario;
import java.nio.file.Path;
import java.util.Optional;
import java.util.SortedMap;

/** Answers of depots in files, for a run that may be broken off. */
record KeptAnswers(AnswerFiles files) implements AnswerStore {

    /** Those of a run: its inputs, how it solves, and with what. */
    static KeptAnswers open(Path runFolder, Scenario scenario, SortedMap<String, String> inputHashes, Method method) {
        String inputs = String.join(
                "\n",
                inputHashes.toString(),
                scenario.solve().toString(),
                method.toString(),
                Engine.libraryVersion(),
                Integer.toString(Plan.FORMAT_VERSION));
        return new KeptAnswers(AnswerFiles.open(runFolder, inputs));
    }

    @Override
    public Optional<Answer> find(String question) {
        return files.find(question).map(kept -> new Answer(kept.phases(), kept.bound()));
    }

    @Override
    public void keep(String question, Answer answer) {
        files.keep(new AnswerFiles.Kept(question, answer.bound(), answer.phases()));
    }
}
