package depot.optimizer.cli;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.browser.Check;
import depot.optimizer.browser.Chromium;
import depot.optimizer.browser.Findings;
import depot.optimizer.browser.NeedsChromium;
import depot.optimizer.browser.PageAudit;
import depot.optimizer.browser.Paper;
import depot.optimizer.fixture.TwoDepots;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Every page of a run, of a sweep and of a comparison of the small example, and of one in phases with its rerun and explanation, in a real browser. */
@NeedsChromium
class PagesInBrowserTest {

    private static final Path STARTER = Path.of("..", "..", "inputs", "starter");

    @TempDir
    private static Path folder;

    /** What may be hung up at a depot: both sides of a sheet. */
    private static final int WALL_PAGES = 2;

    private static List<Path> pages;
    private static Findings findings;
    private static int wallPages;

    @BeforeAll
    static void look() throws IOException {
        run("plan", STARTER.toString(), "--out", at("run"), "--trials", "20");
        run("plan", STARTER.toString(), "--out", at("other"));
        run("sweep", STARTER.toString(), STARTER.resolve("sweep.json").toString(), "--out", at("sweep"));
        run("compare", at("run"), at("other"), "--out", at("comparison"));
        String phases = TwoDepots.inPhases("first,0,1000", "second,2,")
                .write(folder.resolve("phases"))
                .toString();
        run("plan", phases, "--out", at("rollout"));
        run("sweep", phases, frontier().toString(), "--out", at("frontier"));
        run("compare", at("rollout"), at("rollout"), "--out", at("rollouts"));
        run("sweep", STARTER.toString(), cash().toString(), "--out", at("cash"));
        run("explain", phases, at("rollout"), "--out", at("explained"));
        String changed = TwoDepots.inPhases("first,0,1000", "second,2,")
                .replace("work.csv", "crew-2,2,trimmer,3", "crew-2,2,trimmer,4")
                .write(folder.resolve("changed"))
                .toString();
        run("plan", changed, "--from", at("rollout"), "--out", at("rerun"));
        pages = pages("run", "sweep", "comparison", "rollout", "frontier", "rollouts", "cash", "explained", "rerun");
        try (Chromium chromium = Chromium.start()) {
            findings = PageAudit.of(chromium, pages);
            wallPages = Paper.pages(chromium, folder.resolve("run").resolve("wall-yard.html"));
        }
    }

    private static Path frontier() throws IOException {
        return Files.writeString(folder.resolve("frontier.json"), """
                {"name": "money", "frontiers": [
                  {"name": "first", "change": "budget", "of": "first", "values": [0, 1000, 1500]},
                  {"name": "all", "change": "all_budgets", "values": [0.5, 1, 2]}]}
                """);
    }

    /** Budgets of which the first ones are too small. */
    private static Path cash() throws IOException {
        return Files.writeString(folder.resolve("cash.json"), """
                {"name": "cash", "frontiers": [{"name": "cash", "change": "budget", "values": [1000, 2000, 3000]}]}
                """);
    }

    @Test
    void allKindsOfPagesAreThere() {
        assertThat(pages)
                .extracting(page -> page.getFileName().toString())
                .contains(
                        "report.html",
                        "depot-yard.html",
                        "wall-yard.html",
                        "crews-yard.html",
                        "circuits-yard.html",
                        "sweep.html",
                        "compare.html",
                        "explain.html",
                        "rerun.html");
    }

    @Test
    void theWallsSheetFitsOnOneSheetOfPaper() {
        assertThat(wallPages).isBetween(1, WALL_PAGES);
    }

    @ParameterizedTest
    @EnumSource
    void nothingIsWrong(Check check) {
        // Not every page has a chart; every page has some of everything else.
        int fewest = check == Check.CHARTS ? pages.size() / 2 : pages.size();
        assertThat(findings.looked(check)).as("things looked at").isGreaterThanOrEqualTo(fewest);
        assertThat(findings.faults(check)).isEmpty();
    }

    private static List<Path> pages(String... runs) throws IOException {
        List<Path> found = new ArrayList<>();
        for (String run : runs) {
            try (var files = Files.list(folder.resolve(run))) {
                files.filter(file -> file.toString().endsWith(".html")).sorted().forEach(found::add);
            }
        }
        return found;
    }

    private static String at(String run) {
        return folder.resolve(run).toString();
    }

    private static void run(String... arguments) {
        CommandRun run = CommandRun.of(arguments);
        assertThat(run.status()).as(run.err()).isZero();
    }
}
