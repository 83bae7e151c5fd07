package depot.optimizer;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Who may import whom. The folder list reads like the flow of data, and these rules keep it so. */
class ArchitectureTest {

    private static final String ROOT = "depot.optimizer.";

    private static final JavaClasses PRODUCTION = new ClassFileImporter().importPath(Path.of("target", "classes"));

    /** For each stage the other stages that it may import. The command line may import all and is left out. */
    private static final Map<String, Set<String>> STAGES = Map.ofEntries(
            Map.entry("scenario", Set.of()),
            Map.entry("plan", Set.of("scenario")),
            Map.entry("dictionary", Set.of("scenario")),
            Map.entry("read", Set.of("dictionary")),
            Map.entry("check", Set.of("read", "dictionary", "scenario")),
            Map.entry("tariff", Set.of("check", "read", "dictionary", "scenario")),
            Map.entry("generate", Set.of("scenario", "dictionary")),
            Map.entry("finance", Set.of("scenario", "plan")),
            Map.entry("problem", Set.of("scenario", "plan", "finance")),
            Map.entry("mip", Set.of()),
            Map.entry("model", Set.of("mip", "problem", "plan", "scenario", "finance")),
            Map.entry("solve", Set.of("model", "mip", "problem", "plan", "scenario", "finance")),
            Map.entry("replay", Set.of("scenario", "plan")),
            Map.entry("fleet", Set.of("solve", "model", "mip", "problem", "plan", "scenario", "finance", "replay")),
            Map.entry(
                    "sweep",
                    Set.of(
                            "fleet",
                            "solve",
                            "mip",
                            "problem",
                            "plan",
                            "scenario",
                            "replay",
                            "check",
                            "read",
                            "dictionary",
                            "generate")),
            Map.entry(
                    "rerun",
                    Set.of(
                            "sweep",
                            "fleet",
                            "solve",
                            "mip",
                            "problem",
                            "plan",
                            "scenario",
                            "finance",
                            "replay",
                            "read",
                            "dictionary")),
            Map.entry(
                    "advice", Set.of("fleet", "solve", "problem", "plan", "scenario", "replay", "sweep", "dictionary")),
            Map.entry(
                    "report",
                    Set.of("scenario", "plan", "replay", "finance", "sweep", "rerun", "advice", "dictionary")));

    /** Libraries and the only stages that may import them. */
    private static final Map<String, List<String>> LIBRARIES = Map.of(
            "com.google.ortools..", List.of("mip"),
            "com.google.protobuf..", List.of("mip"),
            "com.fasterxml.jackson..", List.of("read", "report"),
            "gg.jte..", List.of("report"),
            "org.dhatim..", List.of("report"),
            "picocli..", List.of("cli"));

    static Stream<Arguments> stages() {
        return STAGES.entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .map(stage -> Arguments.of(stage.getKey(), stage.getValue()));
    }

    static Stream<Arguments> libraries() {
        return LIBRARIES.entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .map(library -> Arguments.of(library.getKey(), library.getValue()));
    }

    @ParameterizedTest
    @MethodSource("stages")
    void aStageImportsOnlyTheStagesItBuildsOn(String stage, Set<String> allowed) {
        DescribedPredicate<JavaClass> foreign = resideInAPackage(ROOT + ".")
                .and(DescribedPredicate.not(resideInAnyPackage(Stream.concat(Stream.of(stage), allowed.stream())
                        .map(ArchitectureTest::within)
                        .toArray(String[]::new))))
                .as("reside in another stage than %s and %s", stage, allowed);
        noClasses()
                .that()
                .resideInAPackage(within(stage))
                .should()
                .dependOnClassesThat(foreign)
                .allowEmptyShould(true)
                .check(PRODUCTION);
    }

    @ParameterizedTest
    @MethodSource("libraries")
    void aLibraryStaysBehindItsStages(String library, List<String> stages) {
        noClasses()
                .that(DescribedPredicate.not(resideInAnyPackage(
                        stages.stream().map(ArchitectureTest::within).toArray(String[]::new))))
                .should()
                .dependOnClassesThat()
                .resideInAPackage(library)
                .check(PRODUCTION);
    }

    @Test
    void theReplaySharesNothingWithTheModel() {
        classes()
                .that()
                .resideInAPackage(within("replay"))
                .should()
                .onlyDependOnClassesThat()
                .resideInAnyPackage(
                        within("replay"),
                        within("scenario"),
                        within("plan"),
                        "org.apache.commons.math3..",
                        "java..",
                        "")
                .allowEmptyShould(true)
                .check(PRODUCTION);
    }

    @Test
    void noPackagesImportEachOther() {
        slices().matching(ROOT + "(**)").should().beFreeOfCycles().check(PRODUCTION);
    }

    @Test
    void everyStageHasItsRule() {
        Set<String> found = PRODUCTION.stream()
                .map(type -> type.getPackageName().substring(ROOT.length()).split("\\.", -1)[0])
                .collect(Collectors.toSet());
        found.remove("cli");
        assertThat(STAGES.keySet()).containsAll(found);
    }

    private static String within(String stage) {
        return ROOT + stage + "..";
    }
}
