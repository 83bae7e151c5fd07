package depot.optimizer.cli;

import depot.optimizer.check.Finding;
import depot.optimizer.check.LoadedScenario;
import depot.optimizer.check.ScenarioLoader;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.Plan;
import depot.optimizer.report.PlanJson;
import depot.optimizer.report.RunExtras;
import depot.optimizer.report.compare.RunStanding;
import depot.optimizer.report.compare.RunStore;
import depot.optimizer.rerun.EarlierRun;
import depot.optimizer.scenario.Depot;
import depot.optimizer.scenario.Scenario;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A run that another one starts from, read from its folder.
 *
 * @param folder of the run
 * @param asked folder of the tables that it was asked for
 */
record EarlierRunInput(Path folder, Path asked, EarlierRun run) {

    /**
     * Reads a run.
     *
     * @param named its folder, or its plan.json
     * @param scenario that is to be planned from it
     * @param carriedOut the last of its phases that has been carried out; empty: its first
     * @throws UserError if it is a run of something else, or its folder is not whole
     * @throws IOException if its plan cannot be used; the message says why
     */
    static EarlierRunInput load(Path named, Scenario scenario, Optional<String> carriedOut) throws IOException {
        Path folder =
                named.endsWith(PlanJson.FILE_NAME) ? named.toAbsolutePath().getParent() : named;
        Plan plan = PlanJson.read(folder.resolve(PlanJson.FILE_NAME));
        requireSameFleet(named, plan, scenario);
        Path inputs = folder.resolve(RunExtras.INPUTS);
        Scenario then = tables(named, inputs, plan);
        requireFit(named, plan, then);
        Path asked = folder.resolve(RunExtras.ASKED);
        return new EarlierRunInput(
                folder,
                Files.isDirectory(asked) ? asked : inputs,
                new EarlierRun(
                        plan, then, RunStore.read(folder), phase(named, plan, carriedOut), RunStanding.read(folder)));
    }

    private static String phase(Path named, Plan plan, Optional<String> carriedOut) {
        String phase = carriedOut.orElse(plan.phases().get(0));
        if (!plan.phases().contains(phase)) {
            throw bad(
                    "%s has no phase \"%s\"".formatted(named, phase),
                    "Its phases are %s; --carried-out names the last of them that has been carried out."
                            .formatted(String.join(", ", plan.phases())));
        }
        return phase;
    }

    private static void requireSameFleet(Path named, Plan plan, Scenario scenario) {
        if (!plan.scenario().equals(scenario.name())) {
            throw bad(
                    "%s is a run of \"%s\", and this scenario is \"%s\""
                            .formatted(named, plan.scenario(), scenario.name()),
                    "Give a run of the same scenario; its name stands in scenario.json.");
        }
        String currency = scenario.currency().getCurrencyCode();
        if (!plan.currency().equals(currency)) {
            throw bad(
                    "%s is in %s, and the scenario now is in %s".formatted(named, plan.currency(), currency),
                    "Amounts of two currencies do not add up: plan the scenario without --from.");
        }
    }

    private static Scenario tables(Path named, Path inputs, Plan plan) {
        if (!Files.isDirectory(inputs)) {
            throw bad(
                    "%s has no folder %s with the tables that it was made from".formatted(named, RunExtras.INPUTS),
                    "Runs of older versions lack it: plan the tables as they were once more, and start from that run.");
        }
        LoadedScenario loaded = ScenarioLoader.load(inputs);
        List<String> changed = loaded.inputHashes().entrySet().stream()
                .filter(file -> !file.getValue().equals(plan.inputHashes().get(file.getKey())))
                .map(Map.Entry::getKey)
                .toList();
        if (!changed.isEmpty()
                || loaded.inputHashes().size() != plan.inputHashes().size()) {
            String which = changed.isEmpty() ? "a table is missing" : "changed: " + String.join(", ", changed);
            throw bad(
                    "the tables in %s are not those that the run was made from; %s".formatted(inputs, which),
                    "Leave the folders of runs as they are; the tables to change are the scenario's own.");
        }
        return loaded.scenario()
                .orElseThrow(
                        () -> bad(
                                loaded.findings().stream()
                                        .findFirst()
                                        .map(finding -> words(inputs, finding))
                                        .orElse("the tables in " + inputs + " cannot be used"),
                                "This version no longer takes the run's tables: plan them once more, and start from that run."));
    }

    private static String words(Path inputs, Finding finding) {
        return ScenarioInput.describe(inputs, finding);
    }

    /** A plan that was edited by hand may name what its own tables do not have. */
    private static void requireFit(Path named, Plan plan, Scenario then) {
        Set<String> depots = then.depots().stream().map(Depot::id).collect(Collectors.toSet());
        for (DepotPlan depot : plan.depots()) {
            if (!depots.contains(depot.depot())) {
                throw bad(
                        "%s plans depot \"%s\", which its own tables do not have".formatted(named, depot.depot()),
                        "Leave the files of runs as they are.");
            }
            List<String> unknown = EarlierRun.unknownItems(depot, then);
            if (!unknown.isEmpty()) {
                throw bad(
                        "%s plans %s in depot \"%s\", which its own tables do not have"
                                .formatted(named, String.join(", ", unknown), depot.depot()),
                        "Leave the files of runs as they are.");
            }
        }
    }

    private static UserError bad(String message, String hint) {
        return new UserError(ExitStatus.BAD_INPUT, message + "; nothing was written", hint);
    }
}
