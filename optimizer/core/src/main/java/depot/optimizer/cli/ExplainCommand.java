package depot.optimizer.cli;

import depot.optimizer.advice.Advice;
import depot.optimizer.advice.AdviceRun;
import depot.optimizer.advice.AdviceSettings;
import depot.optimizer.advice.AdviceSettings.Part;
import depot.optimizer.advice.thumb.ThumbSettings;
import depot.optimizer.advice.thumb.ThumbSettings.Breaker;
import depot.optimizer.plan.Plan;
import depot.optimizer.plan.PlanSettings;
import depot.optimizer.report.AdviceWriter;
import depot.optimizer.report.PlanJson;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.scenario.SolveSettings;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code optimizer explain}: why a plan is as it is. */
@Command(
        name = "explain",
        header = "Says why a plan buys what it buys, what rules of thumb would do, and what would be next best.",
        description =
                "%nAnswers four questions about each depot of a plan: how it compares with what is usual without a model "
                        + "(thumb), what each purchase is for and what happens without it (why), what one more ampere, outlet, "
                        + "place, bay or a longer lunch would save (worth), and which other plans cost little more (next). Each "
                        + "answer is a plan of its own, solved again and replayed, so that this takes many times as long as the "
                        + "plan itself: ask about few depots at first. Where depots share limits, or there are several phases, one "
                        + "depot is solved again while the others are held, and what the change costs the whole fleet at least "
                        + "and at most is told; the page also says what more of each budget would be worth at most. For a plan "
                        + "made with --method whole the whole fleet is planned anew for each answer to worth.%n",
        footer = {
            "%nExamples:",
            "  optimizer explain inputs/starter outputs/starter/plan",
            "  optimizer explain inputs/fennmoor outputs/fennmoor/plan --depot ash-lane --ask why --ask next",
            "  optimizer explain inputs/fennmoor outputs/fennmoor/plan --ask thumb --spare 10%% --breaker usable"
        })
final class ExplainCommand implements Callable<Integer> {

    private final Terminal terminal;

    @Parameters(index = "0", paramLabel = "SCENARIO", description = "Folder with the scenario's tables.")
    private Path folder;

    @Parameters(
            index = "1",
            paramLabel = "PLAN",
            description = "Folder of a run made from these tables, or its plan.json.")
    private Path planFile;

    @Option(
            names = "--depot",
            paramLabel = "D",
            description = "Only this depot; may be given several times. Usually all.")
    private List<String> depots = List.of();

    @Option(
            names = "--ask",
            paramLabel = "QUESTION",
            description = "Only this question: thumb, why, worth or next; may be given several times. Usually all.")
    private Set<Part> parts = EnumSet.allOf(Part.class);

    @Option(
            names = "--within",
            paramLabel = "SHARE",
            converter = Converters.Share.class,
            description = "Plans that cost at most this much more are next best. Usually 10%%.")
    private double within = AdviceSettings.USUAL_WITHIN;

    @Option(
            names = "--spare",
            paramLabel = "SHARE",
            converter = Converters.Share.class,
            description = "Rules of thumb: spare packs, as a share of those that the hours ask for. Usually 20%%.")
    private double spare = ThumbSettings.USUAL.spareShare();

    @Option(
            names = "--breaker",
            paramLabel = "WHICH",
            description =
                    "Rules of thumb: a circuit is full at the breaker's rating (full), or at what it may carry for "
                            + "hours beside what it feeds already (usable). Usually full.")
    private Breaker breaker = ThumbSettings.USUAL.breaker();

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "Folder of the answers. Usually outputs/<scenario>/<run> in the program's folder.")
    private Path out;

    @Option(names = "--run", paramLabel = "NAME", description = "Name of the answers. Usually \"explained\".")
    private String run = "explained";

    @Mixin
    private SolveOptions options;

    ExplainCommand(Terminal terminal) {
        this.terminal = terminal;
        this.options = new SolveOptions();
    }

    @Override
    public Integer call() throws IOException {
        Path answers = OutputPlace.ofRun(Optional.ofNullable(out), folder, run);
        AdviceWriter.requireReplaceable(answers);
        ScenarioInput input = ScenarioInput.load(folder, terminal);
        Path file = Files.isDirectory(planFile) ? planFile.resolve(PlanJson.FILE_NAME) : planFile;
        Plan plan = PlanJson.read(file);
        AskedPlan asked = new AskedPlan(input, plan, planFile);
        asked.requireSameTables();
        List<String> chosen = asked.depots(depots);
        Scenario scenario = options.applyTo(asPlanned(input.scenario(), plan));
        asked.requirePrices(scenario, parts);
        asked.requireProven(scenario, chosen);
        AdviceSettings settings = new AdviceSettings(parts, new ThumbSettings(spare, breaker), within);
        Advice advice = AdviceRun.of(
                scenario,
                plan,
                chosen,
                settings,
                (what, done, total) -> terminal.progress("Answered %d of %d: %s".formatted(done, total, what)));
        terminal.progress("Writing " + answers);
        AdviceWriter.write(answers, advice);
        new AdviceSummary(advice).lines().forEach(terminal::result);
        terminal.result(PlanSummary.line(
                "Report",
                answers.resolve(AdviceWriter.PAGE).toAbsolutePath().normalize().toString()));
        return ExitStatus.PROVEN.code();
    }

    /** Solved as the plan was, so that differences are those of the question. */
    private static Scenario asPlanned(Scenario scenario, Plan plan) {
        PlanSettings settings = plan.settings();
        SolveSettings own = scenario.solve();
        return scenario.withSolve(new SolveSettings(
                settings.relativeGap(),
                settings.nodeLimit(),
                own.timeLimitSeconds(),
                settings.threads(),
                settings.seed(),
                settings.handoverMinutes()));
    }
}
