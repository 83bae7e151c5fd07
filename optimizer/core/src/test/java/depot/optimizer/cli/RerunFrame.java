package depot.optimizer.cli;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.fixture.DescribedTables;
import depot.optimizer.fixture.ScenarioText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Reruns in a test's folder: changed tables are written, planned from an earlier run, and the new run is read.
 *
 * @param folder of the test
 * @param run folder of the rerun
 */
record RerunFrame(Path folder, Path run) {

    /** With the rerun in a folder of its usual name. */
    static RerunFrame in(Path folder) {
        return new RerunFrame(folder, folder.resolve("rerun"));
    }

    /** The same tables and another folder for the rerun. */
    RerunFrame again(String name) {
        return new RerunFrame(folder, folder.resolve(name));
    }

    /** Plans tables from nothing; gives the run's folder. */
    static Path plan(ScenarioText tables, Path folder) {
        Path plan = folder.resolve("plan");
        CommandRun done =
                CommandRun.of("plan", tables.write(folder.resolve("planned")).toString(), "--out", plan.toString());
        assertThat(done.status()).as(done.err()).isZero();
        return plan;
    }

    Path tables() {
        return folder.resolve("tables");
    }

    /** Plans changed tables from an earlier run. */
    CommandRun from(Path earlier, ScenarioText changed, String... more) {
        changed.write(tables());
        return from(earlier, tables(), more);
    }

    /** The same for tables that are written already. */
    CommandRun from(Path earlier, Path tables, String... more) {
        List<String> line = new ArrayList<>(
                List.of("plan", tables.toString(), "--from", earlier.toString(), "--out", run.toString()));
        line.addAll(List.of(more));
        return CommandRun.of(line.toArray(new String[0]));
    }

    /** The plan is proven on some tables by themselves, and every table of the run is as described. */
    void assertSoundOn(Path tables) throws IOException {
        CommandRun replay = CommandRun.of("replay", tables.toString(), run.toString());
        assertThat(replay.status()).as(replay.out() + replay.err()).isZero();
        assertThat(DescribedTables.faults(run)).isEmpty();
    }

    /** The same on the run's own tables, and cost and bound add up. */
    void assertSound() throws IOException {
        Path inputs = run.resolve("inputs");
        assertSoundOn(inputs);
        CommandRun verify = CommandRun.of("verify", inputs.toString(), run.toString());
        assertThat(verify.status()).as(verify.out() + verify.err()).isZero();
    }

    List<String> rows(String table) throws IOException {
        return Files.readAllLines(run.resolve(table));
    }

    /** The first row that begins like this. */
    String row(String table, String start) throws IOException {
        return rows(table).stream()
                .filter(line -> line.startsWith(start))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no row " + start));
    }
}
