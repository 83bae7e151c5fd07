package depot.optimizer.report;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.browser.Check;
import depot.optimizer.browser.Chromium;
import depot.optimizer.browser.Findings;
import depot.optimizer.browser.NeedsChromium;
import depot.optimizer.browser.PageAudit;
import depot.optimizer.plan.Plan;
import depot.optimizer.scenario.Scenario;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Pages with hostile names, load-sharing units, shortages and broken rules, in a real browser. */
@NeedsChromium
class HostilePagesInBrowserTest {

    @TempDir
    private static Path outputs;

    private static Findings findings;

    @BeforeAll
    static void look() throws IOException {
        Scenario scenario = ScenarioFixture.hostile();
        Plan plan = PlanFixture.of(scenario);
        Path run = outputs.resolve("run");
        RunWriter.write(run, scenario, plan, ReplayFixture.of(plan), PlanFixture.shortages(scenario));
        try (var files = Files.list(run);
                Chromium chromium = Chromium.start()) {
            List<Path> pages = files.filter(file -> file.toString().endsWith(".html"))
                    .sorted()
                    .toList();
            findings = PageAudit.of(chromium, pages);
        }
    }

    @ParameterizedTest
    @EnumSource
    void nothingIsWrong(Check check) {
        assertThat(findings.looked(check)).as("things looked at").isPositive();
        assertThat(findings.faults(check)).isEmpty();
    }
}
